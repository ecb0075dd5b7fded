package facetwright.export;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as files write them: a point, no exponent, no trailing zeros, no −0. */
final class Num {
  private Num() {}

  static String text(double number, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
