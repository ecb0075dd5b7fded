package facetwright.workbench.card.text;

import facetwright.geom.LengthTolerance;
import facetwright.geom.RoundOff;
import facetwright.measure.Length;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.words.Decimals;
import facetwright.words.Mend;
import java.util.List;
import java.util.Optional;

/** A length of a script written anew, in the way it was written, as a figure a ruler has. */
final class TidyLength {
  /** A finding tells lengths to so much at least. */
  private static final LengthTolerance SAME = new LengthTolerance(1e-4);

  private static final List<Ruler> INCHES =
      List.of(
          Ruler.SIXTEENTHS, Ruler.THIRTY_SECONDS, Ruler.SIXTY_FOURTHS, new Ruler(Unit.INCH, 1000));
  private static final List<Ruler> MILLIMETRES =
      List.of(Ruler.HALF_MM, Ruler.TENTH_MM, new Ruler(Unit.MM, 100));

  private TidyLength() {}

  /**
   * What to write in place of a literal.
   *
   * @param literal as it stands, a number or a text in quotes
   * @param plain what a number counts
   * @return empty where the literal does not say what the mend takes it to say, or no ruler has a
   *     figure that does
   */
  static Optional<String> write(String literal, Unit plain, Mend.Length mend) {
    boolean isText = "\"'`".indexOf(literal.charAt(0)) >= 0;
    String words = isText ? literal.substring(1, literal.length() - 1) : literal;
    Length now;
    try {
      now = Length.parse(words, plain);
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
    if (!SAME.same(now.mm(), mend.from())) {
      return Optional.empty();
    }
    Unit written = Length.unit(words, plain);
    for (Ruler ruler : written.isInFractions() ? INCHES : MILLIMETRES) {
      double step = ruler.divisionMm();
      double marks = mend.near() / step;
      boolean isUp = mend.far() >= mend.near();
      long mark = (long) (isUp ? RoundOff.ceil(marks) : RoundOff.floor(marks));
      if (isUp ? mark * step <= mend.far() : mark * step >= mend.far()) {
        Length then = Length.of((double) mark / ruler.parts(), ruler.unit());
        return Optional.of(
            isText
                ? '"' + ruler.read(then).text() + '"'
                : Decimals.places(then.in(plain), 2 * plain.places()));
      }
    }
    return Optional.empty();
  }
}
