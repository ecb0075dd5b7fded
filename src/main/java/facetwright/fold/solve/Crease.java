package facetwright.fold.solve;

import java.util.List;

/**
 * Two panels fold by an angle over a score. The slopes are those of the angle between two triangles
 * with a common side: each wing turns by what it moves square to its triangle over its height
 * (elementary, from memory).
 *
 * @param from where the score starts, its one panel to the left
 * @param to where it ends
 * @param left a corner of the panel to the left
 * @param right a corner of the panel to the right
 * @param angle in radians, mountain positive
 * @param reach by which the angle counts, in mm
 * @param isPull whether it only shows the way
 */
public record Crease(
    int from, int to, int left, int right, double angle, double reach, boolean isPull)
    implements Equation {
  @Override
  public List<Integer> points() {
    return List.of(from, to, left, right);
  }

  @Override
  public int rows() {
    return 1;
  }

  /** The same crease at another angle. */
  public Crease folded(double radians) {
    return new Crease(from, to, left, right, radians, reach, isPull);
  }

  /** The same crease, its angle counting so much more or less. */
  public Crease counting(double weight) {
    return new Crease(from, to, left, right, angle, weight * reach, isPull);
  }

  /** The same crease as a pull or not. */
  public Crease asPull(boolean pull) {
    return new Crease(from, to, left, right, angle, reach, pull);
  }

  /** The angle now, −π to π. */
  public double angle(double[] x) {
    return measure(x, new double[12]);
  }

  @Override
  public void at(double[] x, double[] miss, double[] slope) {
    miss[0] = reach * Math.IEEEremainder(measure(x, slope) - angle, 2 * Math.PI);
    for (int i = 0; i < 12; i++) {
      slope[i] *= reach;
    }
  }

  private double measure(double[] x, double[] slope) {
    double[] e = between(x, from, to);
    double[] l = between(x, from, left);
    double[] r = between(x, from, right);
    double[] a = cross(e, l);
    double[] b = cross(r, e);
    double ee = dot(e, e);
    double length = Math.sqrt(ee);
    double leftPart = dot(e, l) / ee;
    double rightPart = dot(e, r) / ee;
    double aa = dot(a, a);
    double bb = dot(b, b);
    for (int i = 0; i < 3; i++) {
      double atLeft = aa == 0 ? 0 : -length * a[i] / aa;
      double atRight = bb == 0 ? 0 : -length * b[i] / bb;
      slope[i] = -(1 - leftPart) * atLeft - (1 - rightPart) * atRight;
      slope[3 + i] = -leftPart * atLeft - rightPart * atRight;
      slope[6 + i] = atLeft;
      slope[9 + i] = atRight;
    }
    return Math.atan2(dot(cross(a, b), e) / length, dot(a, b));
  }

  static double[] between(double[] x, int p, int q) {
    return new double[] {
      x[3 * q] - x[3 * p], x[3 * q + 1] - x[3 * p + 1], x[3 * q + 2] - x[3 * p + 2]
    };
  }

  static double[] cross(double[] a, double[] b) {
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }

  static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }
}
