package facetwright.aim;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as messages show them. */
final class Amount {
  private Amount() {}

  /** Rounded to so many decimals, without trailing zeros; never "-0". */
  static String decimals(double value, int places) {
    return plain(BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP));
  }

  /** Rounded to so many digits, without trailing zeros. */
  static String digits(double value, int digits) {
    return plain(BigDecimal.valueOf(value).round(new MathContext(digits, RoundingMode.HALF_UP)));
  }

  /** A knob's value, to a millionth. */
  static String knob(double value) {
    return decimals(value, 6);
  }

  private static String plain(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }
}
