package facetwright.fold.walk;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A smooth curve through points that are taken at even parts from 0 to 1: a cubic between each two,
 * its slopes at them by differences over five points (of fourth order; elementary, from memory).
 */
final class Evenly {
  /** For the first, the second and any inner point: where five neighbours begin, their factors. */
  private static final double[][] FACTORS = {
    {-25, 48, -36, 16, -3}, {-3, -10, 18, -6, 1}, {1, -8, 0, 8, -1}
  };

  private final List<double[]> points;
  private final List<double[]> slopes;

  /**
   * @param points at least five, each with as many coordinates as the others
   */
  Evenly(List<double[]> points) {
    this.points = List.copyOf(points);
    this.slopes = IntStream.range(0, points.size()).mapToObj(this::slope).toList();
  }

  int steps() {
    return points.size() - 1;
  }

  List<double[]> points() {
    return points;
  }

  /** By how much the coordinates change from one point to the next, at point k. */
  private double[] slope(int k) {
    int n = points.size() - 1;
    boolean late = k > n - 2;
    int edge = late ? n - k : k;
    double[] factors = FACTORS[Math.min(edge, 2)];
    int from = edge >= 2 ? k - 2 : late ? n : 0;
    int step = late ? -1 : 1;
    double[] sum = new double[points.getFirst().length];
    for (int i = 0; i < factors.length; i++) {
      double[] point = points.get(from + step * i);
      for (int c = 0; c < sum.length; c++) {
        sum[c] += step * factors[i] * point[c] / 12;
      }
    }
    return sum;
  }

  /** The coordinates at t, 0 to 1. */
  double[] at(double t) {
    int n = steps();
    int k = Math.min((int) (t * n), n - 1);
    double u = t * n - k;
    double v = 1 - u;
    double[] a = points.get(k);
    double[] b = points.get(k + 1);
    double[] da = slopes.get(k);
    double[] db = slopes.get(k + 1);
    double[] x = new double[a.length];
    for (int c = 0; c < x.length; c++) {
      x[c] = v * v * ((1 + 2 * u) * a[c] + u * da[c]) + u * u * ((1 + 2 * v) * b[c] - v * db[c]);
    }
    return x;
  }
}
