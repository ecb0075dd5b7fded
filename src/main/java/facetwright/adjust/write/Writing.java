package facetwright.adjust.write;

import facetwright.geom.RoundOff;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.net.sheet.SheetSize;
import facetwright.net.sheet.SheetSizes;
import facetwright.papers.chart.Measure;
import facetwright.script.design.Dial;
import facetwright.script.design.DialText;
import facetwright.script.text.Call;
import facetwright.script.text.Edit;
import facetwright.script.text.Reading;
import facetwright.script.text.Span;
import facetwright.script.text.Stretch;
import facetwright.script.text.Token.Kind;
import facetwright.words.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What can be written into a script, as edits of its text; no script is run for it. */
public final class Writing {
  /**
   * How far what is written may be off the value, in the dial's own numbers: four decimals are
   * written.
   */
  private static final double TYPED = 1e-5;

  private static final Set<String> BOOLEANS = Set.of("true", "false");

  private Writing() {}

  /**
   * The dials' own values so that they stand as wanted with nothing set.
   *
   * @param dials as they stand
   * @param values where they go, by name, in the design's unit; those not named stay
   * @param ruler fractions of it are written as such
   * @return empty where a dial's value is not written plainly in the script
   */
  static Optional<List<Edit>> dials(
      String source, List<Dial> dials, Map<String, Double> values, Ruler ruler, Unit unit) {
    List<Edit> edits = new ArrayList<>();
    Reading reading = Reading.of(source);
    for (Dial dial : dials) {
      double value = values.getOrDefault(dial.name(), dial.value());
      if (!isSame(value, dial.usual())) {
        boolean isTurned = !isSame(value, dial.value());
        Optional<Edit> edit = dial(reading, dial.name(), typed(dial, value, isTurned, ruler, unit));
        if (edit.isEmpty()) {
          return Optional.empty();
        }
        edits.add(edit.get());
      }
    }
    return Optional.of(edits);
  }

  /** Whether dials stand where others, turned so, would. */
  static boolean stand(List<Dial> dials, List<Dial> before, Map<String, Double> values) {
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
    return Math.abs(a - b) <= RoundOff.PART * Math.max(1, Math.abs(a));
  }

  /** A dial's new value as a script writes it. */
  private static String typed(Dial dial, double value, boolean isTurned, Ruler ruler, Unit unit) {
    switch (dial.kind()) {
      case SWITCH -> {
        return Boolean.toString(value == 1);
      }
      case CHOICE -> {
        return Edit.inQuotes(DialText.text(dial, value, unit));
      }
      case ANGLE, WHOLE -> {
        return Decimals.places(value, 6);
      }
      case LENGTH, NUMBER -> {}
    }
    Measure reads = Measure.of(facetwright.measure.Length.of(value, unit).mm(), ruler);
    boolean isForeign = isTurned && ruler.unit() != unit;
    boolean isFraction = dial.kind() == Dial.Kind.LENGTH && unit.isInFractions();
    return reads.isOnRuler() && (isForeign || isFraction)
        ? '"' + reads.reading().text() + '"'
        : Decimals.places(value, 6);
  }

  private static Optional<Edit> dial(Reading reading, String dial, String text) {
    return Call.of(reading, "dial").stream()
        .map(c -> c.arguments(reading))
        .filter(
            a -> a.size() > 1 && isText(reading, a.getFirst(), dial) && isPlain(reading, a.get(1)))
        .map(a -> Edit.replace(a.get(1).stretch(reading), text))
        .findFirst();
  }

  private static boolean isText(Reading reading, Span span, String said) {
    return span.is(reading, Kind.TEXT) && reading.said(span.first()).equals(Optional.of(said));
  }

  private static boolean isPlain(Reading reading, Span span) {
    boolean isSigned = span.first() + 1 == span.last() && reading.is(span.first(), '-');
    return span.is(reading, Kind.TEXT)
        || (span.first() == span.last() && BOOLEANS.contains(reading.word(span.first())))
        || span.is(reading, Kind.NUMBER)
        || (isSigned && reading.is(span.last(), Kind.NUMBER));
  }

  /**
   * Another sheet in the script's sheet call; a call at its end where it has none.
   *
   * @return empty where the script does not write its sheet plainly
   */
  public static Optional<Edit> sheet(String source, SheetSize sheet) {
    boolean isNamed = SheetSizes.list().contains(sheet);
    Reading reading = Reading.of(source);
    List<Call> calls = Call.of(reading, "sheet");
    String size = isNamed ? '"' + sheet.name() + '"' : "{ " + sides(sheet) + " }";
    if (calls.isEmpty()) {
      return Optional.of(Edit.append(source, "sheet(" + size + ");"));
    }
    List<Span> arguments = calls.getLast().arguments(reading);
    if (calls.size() > 1 || arguments.isEmpty() || !arguments.getFirst().is(reading, Kind.TEXT)) {
      return Optional.empty();
    }
    Stretch name = arguments.getFirst().stretch(reading);
    if (isNamed || arguments.size() == 1) {
      return Optional.of(Edit.replace(name, size));
    }
    Span options = arguments.get(1);
    boolean isSized =
        Stream.of("width", "height").anyMatch(o -> options.option(reading, o).isPresent());
    boolean isEmpty = Span.parts(reading, options.first()).isEmpty();
    if (!options.isBetween(reading, '{') || isSized || isEmpty) {
      return Optional.empty();
    }
    int first = reading.token(reading.forth(options.first())).start();
    return Optional.of(Edit.replace(name.start(), first, "{ " + sides(sheet) + ", "));
  }

  private static String sides(SheetSize sheet) {
    return "width: \""
        + Decimals.places(sheet.width(), 4)
        + " mm\", height: \""
        + Decimals.places(sheet.height(), 4)
        + " mm\"";
  }

  /** The script's own aim as a comment, so that it no longer turns the dials. */
  static List<Edit> withoutAim(String source) {
    Reading reading = Reading.of(source);
    List<Edit> edits = new ArrayList<>();
    for (Call call : Call.of(reading, "aim")) {
      Span span = call.span();
      Span whole =
          reading.is(call.close() + 1, ';') ? new Span(span.first(), call.close() + 1) : span;
      String text = whole.text(reading).replace("*/", "* /");
      edits.add(Edit.replace(whole.stretch(reading), "/* " + text + " */"));
    }
    return edits;
  }

  /** In which line of the script its aim stands, from 1; 0 where it has none. */
  public static int lineOfAim(String source) {
    Reading reading = Reading.of(source);
    return Call.of(reading, "aim").stream()
        .findFirst()
        .map(c -> reading.line(reading.token(c.name()).start()))
        .orElse(0);
  }
}
