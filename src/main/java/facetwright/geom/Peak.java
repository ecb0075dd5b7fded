package facetwright.geom;

import java.util.function.DoubleUnaryOperator;

/** Where a value that first rises and then falls is greatest. */
public final class Peak {
  private Peak() {}

  /**
   * The place of the greatest value, by ternary search: each step leaves two thirds of the range.
   *
   * @param steps how often the range is made smaller
   */
  public static double between(double from, double to, int steps, DoubleUnaryOperator value) {
    double low = from;
    double high = to;
    for (int i = 0; i < steps; i++) {
      double one = (2 * low + high) / 3;
      double two = (low + 2 * high) / 3;
      if (value.applyAsDouble(one) < value.applyAsDouble(two)) {
        low = one;
      } else {
        high = two;
      }
    }
    return (low + high) / 2;
  }
}
