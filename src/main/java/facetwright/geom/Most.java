package facetwright.geom;

import java.util.function.DoublePredicate;

/** The greatest measure that still does, found by halving what lies between. */
public final class Most {
  private static final int HALVINGS = 40;

  private Most() {}

  /**
   * The greatest under one that does not do; 0 where none was found.
   *
   * @param can whether a measure does: if it does, a smaller one is taken to do as well
   */
  public static double under(double tooMuch, DoublePredicate can) {
    double low = 0;
    double high = tooMuch;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (can.test(middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
