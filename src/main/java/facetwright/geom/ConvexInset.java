package facetwright.geom;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A convex outline drawn in by a border of even width: what lies that far to the left of every
 * side. Each side's line cuts off what is beyond it (Sutherland and Hodgman's clipping, "Reentrant
 * polygon clipping", Communications of the ACM 17, 1974; from memory).
 */
final class ConvexInset {
  private ConvexInset() {}

  /**
   * @param by 0 or more, in mm
   * @return empty where the border takes all
   */
  static Optional<Polygon2> of(Polygon2 convex, double by) {
    List<Vec2> left = convex.corners();
    for (int i = 0; i < convex.size() && !left.isEmpty(); i++) {
      Segment2 side = convex.side(i);
      left = cut(left, side.from(), side.direction().left(), by);
    }
    return Polygon2.wide(left);
  }

  /**
   * The middle of what is left of a convex outline by the widest border that leaves something,
   * found by halving: the place with the most room about it, or the middle of such places where
   * there are more, as between parallel sides.
   *
   * @param within how much less room than the most it may have, in mm; more than 0
   */
  static Vec2 inmost(Polygon2 convex, double within) {
    Polygon2 left = convex;
    double leaves = 0;
    // No circle in it has a greater radius than half the shorter side of its box.
    double takesAll = Math.min(convex.box().width(), convex.box().height()) / 2 + within;
    while (takesAll - leaves > within) {
      double by = (leaves + takesAll) / 2;
      Optional<Polygon2> next = of(convex, by);
      if (next.isPresent()) {
        left = next.get();
        leaves = by;
      } else {
        takesAll = by;
      }
    }
    return left.centroid();
  }

  /** What lies at least so far along a direction from a place. */
  private static List<Vec2> cut(List<Vec2> corners, Vec2 place, Vec2 inward, double by) {
    List<Vec2> kept = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      Vec2 a = corners.get(i);
      Vec2 b = corners.get((i + 1) % corners.size());
      double da = a.minus(place).dot(inward) - by;
      double db = b.minus(place).dot(inward) - by;
      if (da >= 0) {
        kept.add(a);
      }
      if (da >= 0 != db >= 0) {
        kept.add(a.toward(b, da / (da - db)));
      }
    }
    return kept;
  }
}
