package facetwright.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers as text for people and files: a point, no exponent, no trailing zeros, no −0, halves
 * rounded away from 0. What is no number is told as it is.
 */
public final class Decimals {
  private Decimals() {}

  /** Rounded to so many decimals. */
  public static String places(double number, int places) {
    return Double.isFinite(number)
        ? plain(BigDecimal.valueOf(number).setScale(places, RoundingMode.HALF_UP))
        : String.valueOf(number);
  }

  /** Rounded to so many significant digits. */
  public static String digits(double number, int digits) {
    return Double.isFinite(number)
        ? plain(BigDecimal.valueOf(number).round(new MathContext(digits, RoundingMode.HALF_UP)))
        : String.valueOf(number);
  }

  /** A number as a person writes it: whole ones whole, the rest to seven digits. */
  public static String plain(double number) {
    return number == Math.rint(number) && Math.abs(number) < 1e15
        ? Long.toString((long) number)
        : digits(number, 7);
  }

  private static String plain(BigDecimal number) {
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }
}
