package facetwright.fold.solve;

import java.util.List;

/**
 * What a few points have to satisfy. Points are numbered; point i has its coordinates at 3i, 3i + 1
 * and 3i + 2.
 */
public sealed interface Equation permits Apart, Combined, Crease, InPlane, OnLine {
  /** The points it ties together, each once. */
  List<Integer> points();

  /** How many numbers it asks to be zero. */
  int rows();

  /** Whether it only shows the way; see {@link LevenbergMarquardt}. */
  default boolean isPull() {
    return false;
  }

  /**
   * How far it misses, and how that changes.
   *
   * @param x coordinates of all points, in mm
   * @param miss filled with the misses in mm, one a row
   * @param slope filled with the derivatives, row by row, three for each of {@link #points}
   */
  void at(double[] x, double[] miss, double[] slope);
}
