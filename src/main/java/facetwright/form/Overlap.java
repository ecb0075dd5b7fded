package facetwright.form;

import facetwright.geom.Planar;
import facetwright.geom.Polygon2;

/** Whether two outlines share more area than rounding accounts for. */
final class Overlap {
  /** Area that rounding may make two touching outlines share, in mm². */
  static final double TOLERANCE = 1e-6;

  private Overlap() {}

  static boolean between(Polygon2 a, Polygon2 b) {
    return Planar.sharedArea(a, b) > TOLERANCE;
  }

  /** Whether one outline lies inside another, rounding aside. */
  static boolean inside(Polygon2 inner, Polygon2 outer) {
    return inner.area() - Planar.sharedArea(inner, outer) <= TOLERANCE;
  }
}
