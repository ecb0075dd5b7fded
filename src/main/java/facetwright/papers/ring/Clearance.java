package facetwright.papers.ring;

import facetwright.fold.pose.FoldedForm;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion3;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.Net;
import facetwright.pace.Pace;
import java.util.List;

/** The free circle in the middle of a ring, seen from above. */
final class Clearance {
  private Clearance() {}

  /** How far the nearest panel of a body stays from the ring axis, in mm. */
  static double round(Net net, FoldedForm form, List<Integer> body, Motion3 motion) {
    double least = Double.POSITIVE_INFINITY;
    for (int p : body) {
      Pace.step();
      List<Vec2> seen =
          form.corners(net, p).stream()
              .map(motion::apply)
              .map(c -> new Vec2(c.x(), c.y()))
              .toList();
      for (int i = 0; i < seen.size(); i++) {
        Segment2 side = new Segment2(seen.get(i), seen.get((i + 1) % seen.size()));
        least = Math.min(least, side.distance(Vec2.ZERO));
      }
      if (hasArea(seen) && Polygon2.ofEitherSense(seen).contains(Vec2.ZERO)) {
        return 0;
      }
    }
    return least;
  }

  private static boolean hasArea(List<Vec2> corners) {
    double twice = 0;
    Vec2 o = corners.getFirst();
    for (int i = 1; i + 1 < corners.size(); i++) {
      twice += corners.get(i).minus(o).cross(corners.get(i + 1).minus(o));
    }
    return Math.abs(twice) > LengthTolerance.FINE.mm();
  }
}
