package facetwright.net.panel;

import facetwright.geom.Vec2;
import java.util.ArrayList;
import java.util.List;

/** The shape of a notch in a free edge. */
public enum NotchShape {
  /** To a point. */
  V,
  /** With square corners. */
  SQUARE,
  /** Half an ellipse; half a circle where it is half as deep as wide. Drawn with 24 short sides. */
  ROUND;

  private static final int STEPS = 24;

  /** The corners between the ends of the notch's mouth, from one to the other. */
  List<Vec2> corners(Vec2 from, Vec2 to, double depth) {
    Vec2 in = to.minus(from).unit().left().times(depth);
    return switch (this) {
      case V -> List.of(from.toward(to, 0.5).plus(in));
      case SQUARE -> List.of(from.plus(in), to.plus(in));
      case ROUND -> {
        List<Vec2> arc = new ArrayList<>();
        for (int i = 1; i < STEPS; i++) {
          double angle = Math.PI * i / STEPS;
          arc.add(from.toward(to, (1 - Math.cos(angle)) / 2).plus(in.times(Math.sin(angle))));
        }
        yield arc;
      }
    };
  }
}
