package facetwright.measure;

import facetwright.words.Decimals;
import java.io.Serializable;

/**
 * A length that a maker writes as text.
 *
 * @param mm finite, in millimetres
 */
public record Length(double mm) implements Serializable {
  /** Written numbers have no more than nine places, which holds every 1/512 of an inch. */
  private static final double WRITTEN = 1e9;

  public Length {
    if (!Double.isFinite(mm)) {
      throw new IllegalArgumentException("a length needs a finite number, not " + mm);
    }
  }

  public static Length of(double amount, Unit unit) {
    return new Length(amount * unit.mm());
  }

  /**
   * Reads "1 7/8 in", "1-7/8", "1⅞", "48 mm", "4.8cm", "7/8\"" or a plain number in the given unit;
   * blanks may be such as no line breaks at.
   *
   * @throws IllegalArgumentException when the text is no length; the message quotes it and says
   *     what is wanted
   */
  public static Length parse(String text, Unit plain) {
    return LengthText.parse(text, plain);
  }

  /**
   * The unit that text which {@link #parse} reads is written in.
   *
   * @throws IllegalArgumentException as {@link #parse}
   */
  public static Unit unit(String text, Unit plain) {
    return LengthText.unit(text, plain);
  }

  /** How many of a unit it is: exactly what was written where that was a short number of it. */
  public double in(Unit unit) {
    double many = mm / unit.mm();
    double written = Math.rint(many * WRITTEN) / WRITTEN;
    return Math.abs(written - many) <= 4 * Math.ulp(many) ? written : many;
  }

  /**
   * As words tell a size or an error, off any ruler: "120.07 mm", "0.031 in"; to a hundredth of a
   * millimetre, or a thousandth of other units.
   */
  public String text(Unit unit) {
    return number(unit) + " " + unit.symbol();
  }

  /**
   * As sizes are told in a unit: "120.1 mm", "4 3/4 in", "about 4 1/2 in"; see {@link
   * Ruler#forSizes} and {@link Ruler.Reading#about}.
   */
  public String read(Unit unit) {
    return Ruler.forSizes(unit).read(this).about();
  }

  /**
   * As sizes are told at a glance: "about 120 mm", "4 3/4 in"; see {@link Ruler#atAGlance} and
   * {@link Ruler.Reading#about}.
   */
  public String atAGlance(Unit unit) {
    return Ruler.atAGlance(unit).read(this).about();
  }

  /** As {@link #text}, without the unit. */
  public String number(Unit unit) {
    return Decimals.places(in(unit), unit.places());
  }
}
