package facetwright.fold.solve;

import java.util.List;

/**
 * Two points keep their distance: (|p − q|² − d²)/(2d), which near the distance is how far it
 * misses, and is smooth where the points meet.
 *
 * @param d the distance, over 0 mm
 */
public record Apart(int p, int q, double d) implements Equation {
  @Override
  public List<Integer> points() {
    return List.of(p, q);
  }

  @Override
  public int rows() {
    return 1;
  }

  @Override
  public void at(double[] x, double[] miss, double[] slope) {
    double square = 0;
    for (int i = 0; i < 3; i++) {
      double along = x[3 * p + i] - x[3 * q + i];
      square += along * along;
      slope[i] = along / d;
      slope[3 + i] = -along / d;
    }
    miss[0] = (Math.sqrt(square) - d) * (Math.sqrt(square) + d) / (2 * d);
  }
}
