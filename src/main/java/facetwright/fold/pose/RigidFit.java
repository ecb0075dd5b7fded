package facetwright.fold.pose;

import facetwright.geom.Motion3;
import facetwright.geom.RoundOff;
import facetwright.geom.Vec3;
import java.util.ArrayList;
import java.util.List;

/**
 * The rigid motion that brings points nearest to their partners, in the sense of least squares. By
 * the unit quaternion that is the eigenvector of the largest eigenvalue of a symmetric 4 by 4
 * matrix: B. K. P. Horn, Closed-form solution of absolute orientation using unit quaternions, J.
 * Opt. Soc. Am. A 4 (1987) 629-642 (from memory).
 */
public final class RigidFit {
  private static final int DIMENSION = 4;
  private static final int SWEEPS = 60;

  /** What is smaller than this, as part of the whole, is nothing to turn for. */
  private static final double NOTHING = 1e-20;

  private final List<Vec3> from = new ArrayList<>();
  private final List<Vec3> onto = new ArrayList<>();

  public void pair(Vec3 point, Vec3 partner) {
    from.add(point);
    onto.add(partner);
  }

  boolean isEmpty() {
    return from.isEmpty();
  }

  /** Whether the points leave a turn open: all on one line, or one point. */
  boolean isLoose() {
    Vec3 start = from.getFirst();
    Vec3 far = start;
    for (Vec3 p : from) {
      if (p.distance(start) > far.distance(start)) {
        far = p;
      }
    }
    double length = far.distance(start);
    if (length == 0) {
      return true;
    }
    Vec3 along = far.minus(start).unit();
    double off = 0;
    for (Vec3 p : from) {
      off = Math.max(off, p.minus(start).cross(along).length());
    }
    return off <= RoundOff.SOLVED * length;
  }

  /** The best motion; needs at least one pair. */
  public Motion3 motion() {
    Vec3 a = mean(from);
    Vec3 b = mean(onto);
    double[][] s = new double[3][3];
    for (int i = 0; i < from.size(); i++) {
      double[] p = parts(from.get(i).minus(a));
      double[] q = parts(onto.get(i).minus(b));
      for (int r = 0; r < 3; r++) {
        for (int c = 0; c < 3; c++) {
          s[r][c] += p[r] * q[c];
        }
      }
    }
    double[][] n = {
      {s[0][0] + s[1][1] + s[2][2], s[1][2] - s[2][1], s[2][0] - s[0][2], s[0][1] - s[1][0]},
      {s[1][2] - s[2][1], s[0][0] - s[1][1] - s[2][2], s[0][1] + s[1][0], s[2][0] + s[0][2]},
      {s[2][0] - s[0][2], s[0][1] + s[1][0], s[1][1] - s[0][0] - s[2][2], s[1][2] + s[2][1]},
      {s[0][1] - s[1][0], s[2][0] + s[0][2], s[1][2] + s[2][1], s[2][2] - s[0][0] - s[1][1]}
    };
    Motion3 turn = turn(largest(n));
    return new Motion3(turn.ex(), turn.ey(), turn.ez(), b.minus(turn.direction(a)));
  }

  private static Motion3 turn(double[] q) {
    double w = q[0];
    double x = q[1];
    double y = q[2];
    double z = q[3];
    return new Motion3(
        new Vec3(w * w + x * x - y * y - z * z, 2 * (x * y + w * z), 2 * (x * z - w * y)).unit(),
        new Vec3(2 * (x * y - w * z), w * w - x * x + y * y - z * z, 2 * (y * z + w * x)).unit(),
        new Vec3(2 * (x * z + w * y), 2 * (y * z - w * x), w * w - x * x - y * y + z * z).unit(),
        Vec3.ZERO);
  }

  /** Jacobi's rotations: the eigenvector of the largest eigenvalue; changes the matrix. */
  private static double[] largest(double[][] m) {
    double[][] v = new double[DIMENSION][DIMENSION];
    for (int i = 0; i < DIMENSION; i++) {
      v[i][i] = 1;
    }
    double least = NOTHING * (Math.abs(m[0][0]) + Math.abs(m[1][1]) + Math.abs(m[2][2]));
    boolean turned = true;
    for (int sweep = 0; sweep < SWEEPS && turned; sweep++) {
      turned = false;
      for (int p = 0; p < DIMENSION; p++) {
        for (int q = p + 1; q < DIMENSION; q++) {
          if (Math.abs(m[p][q]) > least) {
            rotate(m, v, p, q);
            turned = true;
          }
        }
      }
    }
    int best = 0;
    for (int i = 1; i < DIMENSION; i++) {
      if (m[i][i] > m[best][best]) {
        best = i;
      }
    }
    return new double[] {v[0][best], v[1][best], v[2][best], v[3][best]};
  }

  private static void rotate(double[][] m, double[][] v, int p, int q) {
    double theta = (m[q][q] - m[p][p]) / (2 * m[p][q]);
    double t = Math.copySign(1, theta) / (Math.abs(theta) + Math.hypot(theta, 1));
    double c = 1 / Math.hypot(t, 1);
    double s = t * c;
    for (int k = 0; k < DIMENSION; k++) {
      double kp = m[k][p];
      double kq = m[k][q];
      m[k][p] = c * kp - s * kq;
      m[k][q] = s * kp + c * kq;
    }
    for (int k = 0; k < DIMENSION; k++) {
      double pk = m[p][k];
      double qk = m[q][k];
      m[p][k] = c * pk - s * qk;
      m[q][k] = s * pk + c * qk;
      double vp = v[k][p];
      double vq = v[k][q];
      v[k][p] = c * vp - s * vq;
      v[k][q] = s * vp + c * vq;
    }
    m[p][q] = 0;
    m[q][p] = 0;
  }

  private static Vec3 mean(List<Vec3> points) {
    Vec3 sum = Vec3.ZERO;
    for (Vec3 p : points) {
      sum = sum.plus(p);
    }
    return sum.times(1.0 / points.size());
  }

  private static double[] parts(Vec3 v) {
    return new double[] {v.x(), v.y(), v.z()};
  }
}
