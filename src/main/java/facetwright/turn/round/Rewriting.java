package facetwright.turn.round;

import facetwright.geom.Decimals;
import facetwright.geom.Unit;
import facetwright.papers.chart.Measure;
import facetwright.script.Dial;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** Writes what a rounding came to into the script. */
public final class Rewriting {
  private static final double SAME = 1e-9;
  private static final double TYPED = 1e-5;

  private Rewriting() {}

  /**
   * A place of a script to be written anew.
   *
   * @param start index of its first character
   * @param length how many characters are replaced
   */
  record Edit(int start, int length, String text) {}

  /**
   * The script with its dials' own values as a rounding leaves them.
   *
   * @param dials all dials as they stand before it
   * @param withConstants whether to change the constants, too
   * @return empty where a dial's value is not written plainly in the script
   */
  public static Optional<String> of(
      String source, List<Dial> dials, Rounding rounding, Unit unit, boolean withConstants) {
    List<Edit> edits = new ArrayList<>();
    for (Dial dial : dials) {
      double value = value(dial, rounding);
      if (Math.abs(value - dial.usual()) > SAME * Math.max(1, Math.abs(value))) {
        Optional<Edit> edit = edit(source, dial.name(), typed(dial, value, rounding, unit));
        if (edit.isEmpty()) {
          return Optional.empty();
        }
        edits.add(edit.get());
      }
    }
    if (withConstants) {
      for (Constant c : rounding.constants()) {
        edits.add(new Edit(c.start(), c.text().length(), c.becomes()));
      }
    }
    return Optional.of(apply(source, edits));
  }

  /** Whether a design's dials stand where a rounding of another design leaves that one's. */
  public static boolean isAsRounded(List<Dial> dials, List<Dial> before, Rounding rounding) {
    return dials.size() == before.size()
        && IntStream.range(0, dials.size())
            .allMatch(
                i -> Math.abs(dials.get(i).value() - value(before.get(i), rounding)) <= TYPED);
  }

  private static double value(Dial dial, Rounding rounding) {
    return rounding.turns().stream()
        .filter(t -> t.knob().name().equals(dial.name()))
        .mapToDouble(Rounding.Turn::value)
        .findFirst()
        .orElse(dial.value());
  }

  /** A dial's new value as a script writes it. */
  private static String typed(Dial dial, double value, Rounding rounding, Unit unit) {
    boolean isTurned =
        rounding.turns().stream()
            .anyMatch(t -> t.isTurned() && t.knob().name().equals(dial.name()));
    Measure reads = Measure.of(value * unit.mm(), rounding.ruler());
    boolean isForeign = isTurned && rounding.ruler().unit() != unit;
    boolean isFraction = dial.kind() == Dial.Kind.LENGTH && unit == Unit.INCH;
    return reads.isOnRuler() && (isForeign || isFraction)
        ? '"' + reads.text() + '"'
        : Decimals.places(value, 6);
  }

  private static Optional<Edit> edit(String source, String dial, String text) {
    Matcher call =
        Pattern.compile("\\bdial\\s*\\(\\s*([\"'])" + Pattern.quote(dial) + "\\1\\s*,\\s*")
            .matcher(source);
    if (!call.find()) {
      return Optional.empty();
    }
    Matcher value =
        Pattern.compile("\"[^\"\\n]*\"|'[^'\\n]*'|[\\d.]+")
            .matcher(source)
            .region(call.end(), source.length());
    return value.lookingAt()
        ? Optional.of(new Edit(value.start(), value.end() - value.start(), text))
        : Optional.empty();
  }

  /** The text with all edits, none of which overlap. */
  static String apply(String source, List<Edit> edits) {
    StringBuilder text = new StringBuilder(source);
    edits.stream()
        .sorted(Comparator.comparingInt(Edit::start).reversed())
        .forEach(e -> text.replace(e.start, e.start + e.length, e.text));
    return text.toString();
  }
}
