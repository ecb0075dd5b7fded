package facetwright.geom;

import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;

/** Where a value that first rises and then falls is greatest. */
public final class Peak {
  private Peak() {}

  /**
   * The place of the greatest value, by ternary search: each step leaves two thirds of the range.
   *
   * @param steps how often the range is made smaller
   */
  static double between(double from, double to, int steps, DoubleUnaryOperator value) {
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

  /**
   * The greatest value of a concave function of two numbers, each of which lies within the reach on
   * either side of 0.
   *
   * @param steps how often the range of each is made smaller
   */
  public static double within(double reach, int steps, DoubleBinaryOperator value) {
    double x = between(-reach, reach, steps, at -> above(at, reach, steps, value));
    return above(x, reach, steps, value);
  }

  private static double above(double x, double reach, int steps, DoubleBinaryOperator value) {
    double y = between(-reach, reach, steps, at -> value.applyAsDouble(x, at));
    return value.applyAsDouble(x, y);
  }
}
