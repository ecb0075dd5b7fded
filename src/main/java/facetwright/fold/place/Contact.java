package facetwright.fold.place;

import facetwright.fold.pose.Standing;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Vec3;
import java.util.List;

/**
 * How far something may move up until it touches what is above it: faces of card without thickness,
 * moved straight along z. Faces that stand along z are met at their edges only.
 */
final class Contact {
  private static final double LEAST = LengthTolerance.UNSEEN.mm();

  private double way = Double.POSITIVE_INFINITY;

  private Contact() {}

  /**
   * The way to the first touch, in mm; infinite where nothing is above it. All of it is taken to
   * come from below, so that the way is below 0 where it lies too high.
   */
  static double way(List<List<Vec3>> moving, List<List<Vec3>> still) {
    Contact contact = new Contact();
    List<Flat> above = still.stream().map(Flat::of).toList();
    for (List<Vec3> face : moving) {
      Flat below = Flat.of(face);
      for (Flat one : above) {
        if (below.meets(one)) {
          contact.meet(below, one);
        }
      }
    }
    return contact.way;
  }

  /** A face with the box it fills seen along z. */
  @SuppressWarnings("ArrayRecordComponent") // Read alone, and never told apart.
  private record Flat(double[] x, double[] y, double[] z, Vec3 normal, double[] box) {
    static Flat of(List<Vec3> face) {
      int n = face.size();
      double[] x = new double[n];
      double[] y = new double[n];
      double[] z = new double[n];
      double[] box = {Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
      for (int i = 0; i < n; i++) {
        x[i] = face.get(i).x();
        y[i] = face.get(i).y();
        z[i] = face.get(i).z();
        box[0] = Math.min(box[0], x[i]);
        box[1] = Math.min(box[1], y[i]);
        box[2] = Math.max(box[2], x[i]);
        box[3] = Math.max(box[3], y[i]);
      }
      Vec3 normal = Standing.normal(face);
      return new Flat(x, y, z, normal, box);
    }

    boolean meets(Flat other) {
      return box[0] <= other.box[2] + LEAST
          && other.box[0] <= box[2] + LEAST
          && box[1] <= other.box[3] + LEAST
          && other.box[1] <= box[3] + LEAST;
    }

    /** Whether it stands along z. */
    boolean stands() {
      return Math.abs(normal.z()) <= LEAST * normal.length();
    }

    double height(double px, double py) {
      return z[0] - (normal.x() * (px - x[0]) + normal.y() * (py - y[0])) / normal.z();
    }

    /** Whether a place lies in it, or on its edge, seen along z. */
    boolean holds(double px, double py) {
      boolean within = false;
      int n = x.length;
      for (int i = 0, j = n - 1; i < n; j = i++) {
        double dx = x[i] - x[j];
        double dy = y[i] - y[j];
        double long2 = dx * dx + dy * dy;
        double part =
            long2 == 0 ? 0 : Math.clamp(((px - x[j]) * dx + (py - y[j]) * dy) / long2, 0, 1);
        if (Math.hypot(px - x[j] - part * dx, py - y[j] - part * dy) <= LEAST) {
          return true;
        }
        if (y[j] > py != y[i] > py && px - x[j] < dx * (py - y[j]) / dy) {
          within = !within;
        }
      }
      return within;
    }
  }

  private void meet(Flat below, Flat above) {
    if (!above.stands()) {
      for (int i = 0; i < below.x.length; i++) {
        if (above.holds(below.x[i], below.y[i])) {
          way = Math.min(way, above.height(below.x[i], below.y[i]) - below.z[i]);
        }
      }
    }
    if (!below.stands()) {
      for (int i = 0; i < above.x.length; i++) {
        if (below.holds(above.x[i], above.y[i])) {
          way = Math.min(way, above.z[i] - below.height(above.x[i], above.y[i]));
        }
      }
    }
    for (int i = 0, h = below.x.length - 1; i < below.x.length; h = i++) {
      for (int k = 0, j = above.x.length - 1; k < above.x.length; j = k++) {
        cross(below, h, i, above, j, k);
      }
    }
  }

  /** Two edges that cross seen along z. */
  private void cross(Flat a, int a0, int a1, Flat b, int b0, int b1) {
    double ux = a.x[a1] - a.x[a0];
    double uy = a.y[a1] - a.y[a0];
    double vx = b.x[b1] - b.x[b0];
    double vy = b.y[b1] - b.y[b0];
    double turn = ux * vy - uy * vx;
    if (Math.abs(turn) <= LEAST * (Math.hypot(ux, uy) * Math.hypot(vx, vy))) {
      return;
    }
    double wx = b.x[b0] - a.x[a0];
    double wy = b.y[b0] - a.y[a0];
    double s = (wx * vy - wy * vx) / turn;
    double t = (wx * uy - wy * ux) / turn;
    if (s >= 0 && s <= 1 && t >= 0 && t <= 1) {
      double low = a.z[a0] + s * (a.z[a1] - a.z[a0]);
      double high = b.z[b0] + t * (b.z[b1] - b.z[b0]);
      way = Math.min(way, high - low);
    }
  }
}
