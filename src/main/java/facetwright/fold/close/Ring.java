package facetwright.fold.close;

import facetwright.fold.pose.Standing;
import facetwright.geom.Vec3;
import java.util.List;

/**
 * The ring of corners that a form stands on, where they came to lie.
 *
 * @param corners in order; none where it stands on one panel
 */
record Ring(List<Vec3> corners) {
  /** Turns add up to 360° for every time round; half a turn off is another number of times. */
  private static final double ONCE = 2 * Math.PI;

  /** The points of these numbers, of the coordinates of all points. */
  static Ring at(List<Integer> points, double[] x) {
    return new Ring(
        points.stream().map(i -> new Vec3(x[3 * i], x[3 * i + 1], x[3 * i + 2])).toList());
  }

  /**
   * Whether it goes round once, as a curve without crossings has to: seen square to its plane, its
   * turns add up to 360° (H. Hopf, Compositio Math. 2 (1935) 50-62; from memory).
   */
  boolean turnsOnce() {
    int n = corners.size();
    if (n < 3) {
      return true;
    }
    Vec3 normal = Standing.normal(corners);
    if (normal.length() == 0) {
      return false;
    }
    Vec3 up = normal.unit();
    double turned = 0;
    for (int i = 0; i < n; i++) {
      Vec3 in = level(corners.get(i).minus(corners.get((i + n - 1) % n)), up);
      Vec3 out = level(corners.get((i + 1) % n).minus(corners.get(i)), up);
      turned += Math.atan2(in.cross(out).dot(up), in.dot(out));
    }
    return Math.abs(turned - ONCE) < ONCE / 2;
  }

  private static Vec3 level(Vec3 way, Vec3 up) {
    return way.minus(up.times(way.dot(up)));
  }

  /** How far its corners are from level, in mm; three always are. */
  double slant() {
    if (corners.size() <= 3) {
      return 0;
    }
    Vec3 normal = Standing.normal(corners);
    if (normal.length() == 0) {
      return Double.POSITIVE_INFINITY;
    }
    Vec3 up = normal.unit();
    double low = corners.stream().mapToDouble(up::dot).min().orElse(0);
    double high = corners.stream().mapToDouble(up::dot).max().orElse(0);
    return high - low;
  }
}
