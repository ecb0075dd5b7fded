package facetwright.form;

import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Whether two outlines share area: a fast filter by separating sides, then the certain overlay. */
final class Overlap {
  /** Area that rounding may make two touching outlines share, in mm². */
  static final double TOLERANCE = 1e-6;

  private static final double TOUCHING = 1e-9;

  private Overlap() {}

  static boolean between(Polygon2 a, Polygon2 b) {
    return !isApart(a, b) && !isApart(b, a) && sharedArea(a, b) > TOLERANCE;
  }

  static double sharedArea(Polygon2 a, Polygon2 b) {
    Geometry shared =
        OverlayNGRobust.overlay(Planar.polygon(a), Planar.polygon(b), OverlayNG.INTERSECTION);
    return shared.getArea();
  }

  /** Whether one outline lies inside another, rounding aside. */
  static boolean inside(Polygon2 inner, Polygon2 outer) {
    return inner.area() - sharedArea(inner, outer) <= TOLERANCE;
  }

  /** Whether the line of a side of a has all of a on its left and all of b on its right. */
  private static boolean isApart(Polygon2 a, Polygon2 b) {
    for (int i = 0; i < a.size(); i++) {
      Vec2 from = a.corner(i);
      Vec2 along = a.corner(i + 1).minus(from);
      double slack = TOUCHING * along.length();
      if (b.corners().stream().allMatch(c -> along.cross(c.minus(from)) <= slack)
          && a.corners().stream().allMatch(c -> along.cross(c.minus(from)) >= -slack)) {
        return true;
      }
    }
    return false;
  }
}
