package facetwright.check.finding;

import facetwright.fold.touch.Collision;
import facetwright.words.Decimals;

/** How lengths and areas stand in a message, and what counts as a miss. */
public final class Mm {
  /** What a steady hand holds when cutting and scoring, in mm. */
  public static final double HAIR = Collision.HELD;

  /** A thickness of card that no pressing makes up, in mm; common practice, no source. */
  public static final double MISFIT = 2;

  /** What reads as 0 with two decimals. */
  public static final double LEAST = 0.005;

  private Mm() {}

  /** "12.5 mm": two decimals at most, and never 0 for what is not 0. */
  public static String text(double mm) {
    return number(mm) + " mm";
  }

  /** A length that is enough: rounded up, so that who follows the message is done. */
  public static String atLeast(double mm) {
    return text(Math.ceil(100 * mm - 1e-6) / 100);
  }

  /** A length that is not too much: rounded down. */
  public static String atMost(double mm) {
    return text(Math.floor(100 * mm + 1e-6) / 100);
  }

  public static String area(double square) {
    return number(square) + " mm²";
  }

  /** "0.12 %": two decimals at most, and never 0 for what is not 0. */
  public static String percent(double part) {
    return number(100 * part) + " %";
  }

  /** A part over what is allowed: rounded up, so that it reads as over. */
  public static String percentOver(double part) {
    return number(Math.ceil(1e4 * part - 1e-6) / 100) + " %";
  }

  public static String number(double value) {
    if (value != 0 && Math.abs(value) < LEAST) {
      return "less than 0.01";
    }
    return Decimals.places(value, 2);
  }

  /** Three decimals at most. */
  public static String fine(double value) {
    return Decimals.places(value, 3);
  }
}
