package facetwright.adjust.write;

import facetwright.measure.Length;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.papers.chart.Measure;
import facetwright.script.text.Edit;
import facetwright.script.text.Reading;
import facetwright.script.text.Span;
import facetwright.script.text.Token.Kind;
import facetwright.words.Decimals;
import java.util.Optional;

/**
 * A length as a script writes it out: a number, with a sign at the most, or a text.
 *
 * @param start index of its first character, a sign included
 * @param end index after its last
 * @param text as it is written, quotes and all
 * @param said without quotes, and without blanks behind a sign
 * @param isArgument whether a function takes it as a length, so that a number may become a text:
 *     with a text, a script can't reckon
 */
public record Literal(int start, int end, String text, String said, boolean isArgument) {

  /** What is written out there; empty where that is no number and no text that says a length. */
  static Optional<Literal> of(Reading reading, Span span, boolean isArgument) {
    boolean isSigned = span.first() + 1 == span.last() && reading.is(span.first(), '-');
    boolean isOne = span.first() == span.last();
    boolean isNumber = (isOne || isSigned) && reading.is(span.last(), Kind.NUMBER);
    Optional<String> said =
        isNumber
            ? Optional.of((isSigned ? "-" : "") + reading.word(span.last()))
            : isOne ? reading.said(span.first()).map(String::strip) : Optional.empty();
    return said.filter(Literal::isLength)
        .map(
            s ->
                new Literal(
                    span.stretch(reading).start(),
                    span.stretch(reading).end(),
                    span.text(reading),
                    s,
                    isArgument));
  }

  private static boolean isLength(String said) {
    try {
      return Double.isFinite(Length.parse(said, Unit.MM).mm());
    } catch (IllegalArgumentException _) {
      return false;
    }
  }

  public boolean isText() {
    return "\"'`".indexOf(text.charAt(0)) >= 0;
  }

  /** Whether it says its unit itself. */
  boolean hasUnit() {
    return length(Unit.MM).equals(length(Unit.INCH));
  }

  /**
   * What it comes to.
   *
   * @param plain what a number counts in the script
   */
  public Length length(Unit plain) {
    return Length.parse(said, plain);
  }

  /**
   * What to write in its place for another length: a text as a text; a number by a ruler's mark
   * where the length lies on one and the number would not show it, for the ruler is of another unit
   * or has fractions; but a plain number where the script may reckon with it.
   *
   * @param plain what a number counts in the script
   */
  public String written(Length length, Ruler ruler, Unit plain) {
    Measure reads = Measure.of(length.mm(), ruler);
    boolean isTold = ruler.unit() != plain || plain.isInFractions();
    return isText() || (isArgument && reads.isOnRuler() && isTold)
        ? '"'
            + (reads.isOnRuler() ? reads.reading().text() : Decimals.places(length.mm(), 4) + " mm")
            + '"'
        : Decimals.places(length.in(plain), 6);
  }

  /** The change of the script that writes something else in its place. */
  public Edit edit(String by) {
    return Edit.replace(start, end, by);
  }
}
