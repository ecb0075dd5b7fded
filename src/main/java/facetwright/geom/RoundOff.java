package facetwright.geom;

/**
 * What arithmetic with doubles leaves over where numbers have no unit: parts, counts, cosines and
 * values of dials. Lengths and angles have tolerances of their own, {@link LengthTolerance} and
 * {@link AngleTolerance}.
 */
public final class RoundOff {
  /**
   * Numbers that differ by no more of their size are one: far more than the 1.1e-16 by which IEEE
   * 754 lets each operation be off leaves after all that a design takes, and far less than anybody
   * sets.
   */
  public static final double PART = 1e-9;

  /** What a search by steps leaves over, as a part: it stops before rounding does. */
  public static final double SOLVED = 1e-6;

  private RoundOff() {}

  /** The whole number below, or the one that the number is but for rounding. */
  public static double floor(double number) {
    return Math.floor(number + PART);
  }

  /** The whole number above, or the one that the number is but for rounding. */
  public static double ceil(double number) {
    return Math.ceil(number - PART);
  }
}
