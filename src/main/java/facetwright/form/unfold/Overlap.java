package facetwright.form.unfold;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;

/** Whether two outlines share more area than rounding accounts for. */
final class Overlap {
  /** Area that rounding may make two touching outlines share, in mm². */
  static final double TOLERANCE = 1e-6;

  /** Corners no farther beyond a convex outline leave less area outside than rounding. */
  private static final LengthTolerance HARDLY = LengthTolerance.ROUNDING;

  /** A corner so far beyond a convex outline, in mm, leaves more area outside than rounding. */
  private static final double CLEARLY = 0.01;

  private Overlap() {}

  static boolean between(Polygon2 a, Polygon2 b) {
    return Planar.sharedArea(a, b) > TOLERANCE;
  }

  /**
   * Whether one outline lies inside another, rounding aside.
   *
   * @param convex whether the other is convex
   */
  static boolean inside(Polygon2 inner, Polygon2 outer, boolean convex) {
    if (convex) {
      double out = farthestOut(inner, outer);
      if (out <= HARDLY.mm() || out > CLEARLY) {
        return out <= HARDLY.mm();
      }
    }
    return inner.area() - Planar.sharedArea(inner, outer) <= TOLERANCE;
  }

  /** How far the farthest corner lies beyond the lines of a convex outline's sides, in mm. */
  private static double farthestOut(Polygon2 inner, Polygon2 outer) {
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < outer.size(); i++) {
      Vec2 from = outer.corner(i);
      Vec2 along = outer.corner(i + 1).minus(from).unit();
      for (Vec2 corner : inner.corners()) {
        most = Math.max(most, -along.cross(corner.minus(from)));
      }
    }
    return most;
  }
}
