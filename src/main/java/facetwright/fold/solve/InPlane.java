package facetwright.fold.solve;

import java.util.List;

/**
 * A point stands a given way over the plane of three others: how a lap lies on its panel.
 *
 * @param a first of three corners, counter-clockwise seen from outside
 * @param b the second
 * @param c the third
 * @param p the point
 * @param over how far it is outside the plane, in mm; negative inside
 * @param isPull whether it only shows the way
 */
public record InPlane(int a, int b, int c, int p, double over, boolean isPull) implements Equation {
  @Override
  public List<Integer> points() {
    return List.of(a, b, c, p);
  }

  @Override
  public int rows() {
    return 1;
  }

  @Override
  public void at(double[] x, double[] miss, double[] slope) {
    double[] u = Crease.between(x, a, b);
    double[] v = Crease.between(x, a, c);
    double[] d = Crease.between(x, a, p);
    double[] n = Crease.cross(u, v);
    double length = Math.max(Math.sqrt(Crease.dot(n, n)), Double.MIN_NORMAL);
    double[] q = new double[3];
    for (int i = 0; i < 3; i++) {
      n[i] /= length;
    }
    double off = Crease.dot(n, d);
    for (int i = 0; i < 3; i++) {
      q[i] = (d[i] - off * n[i]) / length;
    }
    double[] atB = Crease.cross(v, q);
    double[] atC = Crease.cross(q, u);
    for (int i = 0; i < 3; i++) {
      slope[i] = -n[i] - atB[i] - atC[i];
      slope[3 + i] = atB[i];
      slope[6 + i] = atC[i];
      slope[9 + i] = n[i];
    }
    miss[0] = off - over;
  }
}
