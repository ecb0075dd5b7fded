package facetwright.fold.place;

import facetwright.fold.pose.Standing;
import facetwright.geom.Vec3;
import java.util.List;

/** How near faces come to each other: flat ones, of whatever outline, without thickness. */
final class Near {
  /** Lines that lean this little toward each other, as a squared sine, run alongside. */
  private static final double ALONGSIDE = 1e-12;

  private Near() {}

  /** The distance from a place to the nearest of some faces, in mm. */
  static double of(Vec3 place, List<List<Vec3>> faces) {
    double least = Double.POSITIVE_INFINITY;
    for (List<Vec3> face : faces) {
      least = Math.min(least, toFace(place, face));
      for (int i = 0, j = face.size() - 1; i < face.size(); j = i++) {
        least = Math.min(least, lines(place, place, face.get(j), face.get(i)));
      }
    }
    return least;
  }

  /** The distance between two faces, in mm: 0 where they pass through each other. */
  static double of(List<Vec3> a, List<Vec3> b) {
    double least = Double.POSITIVE_INFINITY;
    for (Vec3 corner : a) {
      least = Math.min(least, toFace(corner, b));
    }
    for (Vec3 corner : b) {
      least = Math.min(least, toFace(corner, a));
    }
    for (int i = 0, h = a.size() - 1; i < a.size(); h = i++) {
      for (int k = 0, j = b.size() - 1; k < b.size(); j = k++) {
        least = Math.min(least, lines(a.get(h), a.get(i), b.get(j), b.get(k)));
      }
    }
    return pierces(a, b) || pierces(b, a) ? 0 : least;
  }

  /** Whether the boxes that two faces fill lie farther apart than this. */
  static boolean areApart(List<Vec3> a, List<Vec3> b, double mm) {
    return apart(a, b, Vec3.X) > mm || apart(a, b, Vec3.Y) > mm || apart(a, b, Vec3.Z) > mm;
  }

  private static double apart(List<Vec3> a, List<Vec3> b, Vec3 axis) {
    double[] one = reach(a, axis);
    double[] two = reach(b, axis);
    return Math.max(two[0] - one[1], one[0] - two[1]);
  }

  private static double[] reach(List<Vec3> face, Vec3 axis) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Vec3 c : face) {
      double at = c.dot(axis);
      low = Math.min(low, at);
      high = Math.max(high, at);
    }
    return new double[] {low, high};
  }

  /** The way straight onto a face; infinite where it lands beside it. */
  private static double toFace(Vec3 place, List<Vec3> face) {
    Vec3 normal = Standing.normal(face).unit();
    double high = place.minus(face.getFirst()).dot(normal);
    return holds(face, normal, place) ? Math.abs(high) : Double.POSITIVE_INFINITY;
  }

  /** Whether a place seen along the face's normal lies inside it. */
  private static boolean holds(List<Vec3> face, Vec3 normal, Vec3 place) {
    Vec3 x = face.get(1).minus(face.get(0)).unit();
    Vec3 y = normal.cross(x);
    double px = place.dot(x);
    double py = place.dot(y);
    boolean within = false;
    for (int i = 0, j = face.size() - 1; i < face.size(); j = i++) {
      double ax = face.get(j).dot(x);
      double ay = face.get(j).dot(y);
      double bx = face.get(i).dot(x);
      double by = face.get(i).dot(y);
      if (ay > py != by > py && px < (ax - bx) * (py - by) / (ay - by) + bx) {
        within = !within;
      }
    }
    return within;
  }

  /** Whether a side of the one goes through the inside of the other. */
  private static boolean pierces(List<Vec3> a, List<Vec3> b) {
    Vec3 normal = Standing.normal(b).unit();
    for (int i = 0, h = a.size() - 1; i < a.size(); h = i++) {
      double from = a.get(h).minus(b.getFirst()).dot(normal);
      double to = a.get(i).minus(b.getFirst()).dot(normal);
      if (from * to < 0 && holds(b, normal, a.get(h).toward(a.get(i), from / (from - to)))) {
        return true;
      }
    }
    return false;
  }

  /** The distance between two stretches of lines (closest points clamped, from memory). */
  private static double lines(Vec3 a, Vec3 b, Vec3 c, Vec3 d) {
    Vec3 u = b.minus(a);
    Vec3 v = d.minus(c);
    Vec3 w = a.minus(c);
    double uu = u.dot(u);
    double vv = v.dot(v);
    double uv = u.dot(v);
    double uw = u.dot(w);
    double vw = v.dot(w);
    double turn = uu * vv - uv * uv;
    double s = turn > ALONGSIDE * uu * vv ? Math.clamp((uv * vw - vv * uw) / turn, 0, 1) : 0;
    double t = vv > 0 ? Math.clamp((uv * s + vw) / vv, 0, 1) : 0;
    s = uu > 0 ? Math.clamp((uv * t - uw) / uu, 0, 1) : 0;
    return a.plus(u.times(s)).distance(c.plus(v.times(t)));
  }
}
