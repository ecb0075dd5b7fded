package facetwright.fold.solve;

import java.util.List;

/**
 * A point lies on the line through two others: how the ends of a short side lie along a longer one.
 *
 * @param a one point of the line
 * @param b another, not in the same place
 * @param p the point
 */
public record OnLine(int a, int b, int p) implements Equation {
  @Override
  public List<Integer> points() {
    return List.of(a, b, p);
  }

  @Override
  public int rows() {
    return 3;
  }

  /**
   * The miss is r = d − u·(u·d), with u the direction from a to b and d from a to p. Its change is
   * (1 − u·uᵀ)(δd − (u·d/|ab|)·δe) − u·(r·δe)/|ab|, with δe that of b less that of a.
   */
  @Override
  public void at(double[] x, double[] miss, double[] slope) {
    double[] u = Crease.between(x, a, b);
    double[] d = Crease.between(x, a, p);
    double length = Math.max(Math.sqrt(Crease.dot(u, u)), Double.MIN_NORMAL);
    for (int i = 0; i < 3; i++) {
      u[i] /= length;
    }
    double along = Crease.dot(u, d);
    double part = along / length;
    for (int i = 0; i < 3; i++) {
      miss[i] = d[i] - along * u[i];
    }
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        double across = (i == j ? 1 : 0) - u[i] * u[j];
        double atB = -part * across - u[i] * miss[j] / length;
        slope[9 * i + j] = -across - atB;
        slope[9 * i + 3 + j] = atB;
        slope[9 * i + 6 + j] = across;
      }
    }
  }
}
