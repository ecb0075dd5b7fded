package facetwright.net.panel;

import facetwright.geom.Arc;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Most;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.net.Clearance;
import java.util.ArrayList;
import java.util.List;

/** The shape of a notch in a free edge. */
public enum NotchShape {
  /** To a point. */
  V,
  /** With square corners. */
  SQUARE,
  /**
   * Half an ellipse, drawn with 24 short sides; half a circle, a true arc, where it is half as deep
   * as wide.
   */
  ROUND;

  private static final int STEPS = 24;

  /** Whether it is half a circle. */
  boolean isCircle(double width, double depth) {
    return this == ROUND && LengthTolerance.FINE.same(depth, width / 2);
  }

  /**
   * The depth to which such a notch leaves a border of a panel that holds, or where there is no
   * room for one the depth to which it does not reach across; in mm.
   *
   * @param panel without the notch, its mouth from corner to corner
   * @param tooDeep a depth with which it reaches across
   */
  double deepest(Polygon2 panel, Vec2 from, Vec2 to, double tooDeep) {
    int start = panel.corners().indexOf(from);
    double most =
        Most.under(
            tooDeep,
            mm -> {
              List<Vec2> cut = new ArrayList<>(panel.corners());
              cut.addAll(start + 1, corners(from, to, mm));
              return new Polygon2(cut).isSimple();
            });
    return most > 2 * Clearance.FROM_EDGE ? most - Clearance.FROM_EDGE : most;
  }

  /** The corners between the ends of the notch's mouth, from one to the other. */
  List<Vec2> corners(Vec2 from, Vec2 to, double depth) {
    Vec2 in = to.minus(from).unit().left().times(depth);
    return switch (this) {
      case V -> List.of(from.toward(to, 0.5).plus(in));
      case SQUARE -> List.of(from.plus(in), to.plus(in));
      case ROUND -> {
        List<Vec2> arc = new ArrayList<>();
        boolean isCircle = isCircle(from.distance(to), depth);
        int steps = isCircle ? Math.max(STEPS, Arc.sides(depth, Math.PI)) : STEPS;
        for (int i = 1; i < steps; i++) {
          double angle = Math.PI * i / steps;
          arc.add(from.toward(to, (1 - Math.cos(angle)) / 2).plus(in.times(Math.sin(angle))));
        }
        yield arc;
      }
    };
  }
}
