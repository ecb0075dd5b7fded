package facetwright.fold.solve;

import java.util.List;

/**
 * A linear combination of points is nothing. It holds the further corners of a panel to its first
 * three, in their plane, and brings points together.
 *
 * @param points the points
 * @param factors one for each; they sum to 0
 */
public record Combined(List<Integer> points, List<Double> factors) implements Equation {
  public Combined {
    points = List.copyOf(points);
    factors = List.copyOf(factors);
  }

  /**
   * Two points meet.
   *
   * @param weight how much it counts against what else the points have to satisfy, over 0
   */
  public static Combined meet(int p, int q, double weight) {
    return new Combined(List.of(p, q), List.of(weight, -weight));
  }

  @Override
  public int rows() {
    return 3;
  }

  @Override
  public void at(double[] x, double[] miss, double[] slope) {
    int width = 3 * points.size();
    for (int i = 0; i < 3; i++) {
      double sum = 0;
      for (int k = 0; k < points.size(); k++) {
        double factor = factors.get(k);
        sum += factor * x[3 * points.get(k) + i];
        for (int j = 0; j < 3; j++) {
          slope[i * width + 3 * k + j] = i == j ? factor : 0;
        }
      }
      miss[i] = sum;
    }
  }
}
