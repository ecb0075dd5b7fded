package facetwright.turn.write;

import facetwright.geom.Decimals;
import facetwright.geom.Ruler;
import facetwright.geom.Unit;
import facetwright.net.SheetSize;
import facetwright.net.SheetSizes;
import facetwright.papers.chart.Measure;
import facetwright.script.Dial;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** What can be written into a script, as edits of its text; no script is run for it. */
public final class Writing {
  private static final double SAME = 1e-9;
  private static final double TYPED = 1e-5;
  private static final Pattern QUOTED = Pattern.compile("\\s*(\"[^\"\\n]*\"|'[^'\\n]*')");
  private static final Pattern OPTION = Pattern.compile("\\b(?:width|height)\\s*:");

  private Writing() {}

  /**
   * The dials' own values so that they stand as wanted with nothing set.
   *
   * @param dials as they stand
   * @param values where they go, by name, in the design's unit; those not named stay
   * @param ruler fractions of it are written as such
   * @return empty where a dial's value is not written plainly in the script
   */
  public static Optional<List<ScriptEdit>> dials(
      String source, List<Dial> dials, Map<String, Double> values, Ruler ruler, Unit unit) {
    List<ScriptEdit> edits = new ArrayList<>();
    for (Dial dial : dials) {
      double value = values.getOrDefault(dial.name(), dial.value());
      if (!isSame(value, dial.usual())) {
        boolean isTurned = !isSame(value, dial.value());
        Optional<ScriptEdit> edit =
            dial(source, dial.name(), typed(dial, value, isTurned, ruler, unit));
        if (edit.isEmpty()) {
          return Optional.empty();
        }
        edits.add(edit.get());
      }
    }
    return Optional.of(edits);
  }

  /** Whether dials stand where others, turned so, would. */
  public static boolean stand(List<Dial> dials, List<Dial> before, Map<String, Double> values) {
    Map<String, Double> now =
        dials.stream().collect(Collectors.toMap(Dial::name, Dial::value, (a, _) -> a));
    return dials.size() == before.size()
        && before.stream()
            .allMatch(
                d ->
                    now.containsKey(d.name())
                        && Math.abs(now.get(d.name()) - values.getOrDefault(d.name(), d.value()))
                            <= TYPED);
  }

  private static boolean isSame(double a, double b) {
    return Math.abs(a - b) <= SAME * Math.max(1, Math.abs(a));
  }

  /** A dial's new value as a script writes it. */
  private static String typed(Dial dial, double value, boolean isTurned, Ruler ruler, Unit unit) {
    Measure reads = Measure.of(facetwright.geom.Length.of(value, unit).mm(), ruler);
    boolean isForeign = isTurned && ruler.unit() != unit;
    boolean isFraction = dial.kind() == Dial.Kind.LENGTH && unit == Unit.INCH;
    return reads.isOnRuler() && (isForeign || isFraction)
        ? '"' + reads.text() + '"'
        : Decimals.places(value, 6);
  }

  private static Optional<ScriptEdit> dial(String source, String dial, String text) {
    Pattern value =
        Pattern.compile(
            "\\s*([\"'])"
                + Pattern.quote(dial)
                + "\\1\\s*,\\s*(\"[^\"\\n]*\"|'[^'\\n]*'|[\\d.]+)"
                + "(?=\\s*[,)])");
    for (ScriptCall call : ScriptCall.of(source, "dial")) {
      Matcher m = value.matcher(source).region(call.arguments(), call.end());
      if (m.lookingAt()) {
        return Optional.of(new ScriptEdit(m.start(2), m.end(2) - m.start(2), text));
      }
    }
    return Optional.empty();
  }

  /**
   * Another sheet in the script's sheet call; a call at its end where it has none.
   *
   * @return empty where the script does not write its sheet plainly
   */
  public static Optional<ScriptEdit> sheet(String source, SheetSize sheet) {
    boolean isNamed = SheetSizes.list().contains(sheet);
    List<ScriptCall> calls = ScriptCall.of(source, "sheet");
    if (calls.isEmpty()) {
      String before = source.endsWith("\n") || source.isEmpty() ? "" : "\n";
      String size = isNamed ? '"' + sheet.name() + '"' : "{ " + sides(sheet) + " }";
      return Optional.of(new ScriptEdit(source.length(), 0, before + "sheet(" + size + ");\n"));
    }
    ScriptCall call = calls.getLast();
    Matcher name = QUOTED.matcher(source).region(call.arguments(), call.end());
    if (calls.size() > 1 || !name.lookingAt()) {
      return Optional.empty();
    }
    if (isNamed) {
      return Optional.of(
          new ScriptEdit(name.start(1), name.end(1) - name.start(1), '"' + sheet.name() + '"'));
    }
    String rest = source.substring(name.end(), call.end() - 1);
    Matcher options = Pattern.compile("\\s*,\\s*\\{\\s*").matcher(rest);
    if (rest.isBlank()) {
      return Optional.of(
          new ScriptEdit(
              name.start(1), call.end() - 1 - name.start(1), "{ " + sides(sheet) + " }"));
    }
    return options.lookingAt() && !OPTION.matcher(rest).find()
        ? Optional.of(
            new ScriptEdit(
                name.start(1),
                name.end() + options.end() - name.start(1),
                "{ " + sides(sheet) + ", "))
        : Optional.empty();
  }

  private static String sides(SheetSize sheet) {
    return "width: \""
        + Decimals.places(sheet.width(), 4)
        + " mm\", height: \""
        + Decimals.places(sheet.height(), 4)
        + " mm\"";
  }

  /** The script's own aim as a comment, so that it no longer turns the dials. */
  public static List<ScriptEdit> withoutAim(String source) {
    List<ScriptEdit> edits = new ArrayList<>();
    for (ScriptCall call : ScriptCall.of(source, "aim")) {
      int end = call.end();
      end = end < source.length() && source.charAt(end) == ';' ? end + 1 : end;
      String text = source.substring(call.start(), end).replace("*/", "* /");
      edits.add(new ScriptEdit(call.start(), end - call.start(), "/* " + text + " */"));
    }
    return edits;
  }

  /** In which line of the script its aim stands, from 1; 0 where it has none. */
  public static int lineOfAim(String source) {
    List<ScriptCall> calls = ScriptCall.of(source, "aim");
    return calls.isEmpty() ? 0 : calls.getFirst().line(source);
  }
}
