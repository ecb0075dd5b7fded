package facetwright.geom;

import java.util.List;

/** Whether two outlines share a place, by a side that parts them. */
public final class PartingSides {
  /** Distance that still counts as touching, in mm: rounding, not overlap. */
  private static final LengthTolerance TOUCHING = LengthTolerance.ROUNDING;

  private PartingSides() {}

  /**
   * Whether a side of one outline has all of it on its left and all of the other on its right: a
   * quick sign that they share nothing. Outlines that share nothing may still fail it. Who asks it
   * of many pairs asks first whether their boxes meet.
   */
  public static boolean isApart(Polygon2 a, Polygon2 b) {
    return hasPartingSide(a, b, TOUCHING.mm()) || hasPartingSide(b, a, TOUCHING.mm());
  }

  /**
   * Whether a side of the first has all of it on its left and the other on its right.
   *
   * @param over how far the other may reach over to the left, in mm; below 0 where it has to keep
   *     off
   */
  private static boolean hasPartingSide(Polygon2 a, Polygon2 b, double over) {
    for (int i = 0; i < a.size(); i++) {
      Vec2 from = a.corner(i);
      Vec2 to = a.corner(i + 1);
      if (isWithin(from, to, b, 1, over) && isWithin(from, to, a, -1, TOUCHING.mm())) {
        return true;
      }
    }
    return false;
  }

  /**
   * Whether two outlines share a place, be it a single one of their borders. Two convex outlines
   * that share none are parted by a side of one of them (separating axis theorem; from memory), so
   * that a look at the sides settles all but a touch.
   */
  public static boolean meet(Polygon2 a, Polygon2 b) {
    if (hasPartingSide(a, b, -TOUCHING.mm()) || hasPartingSide(b, a, -TOUCHING.mm())) {
      return false;
    }
    double parted = Math.max(farthestOff(a, b), farthestOff(b, a));
    boolean convex = a.isConvex() && b.isConvex();
    if (convex && Math.abs(parted) > TOUCHING.mm()) {
      return parted < 0;
    }
    return Planar.polygon(a).intersects(Planar.polygon(b));
  }

  /** How far the side that parts them most keeps the other off, in mm; below 0 where none does. */
  private static double farthestOff(Polygon2 a, Polygon2 b) {
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < a.size(); i++) {
      most = Math.max(most, -farthestLeft(a.corner(i), a.corner(i + 1), b));
    }
    return most;
  }

  /** Whether an outline lies in a convex one or on its border, by the sure orientation test. */
  public static boolean isInConvex(Polygon2 inner, Polygon2 convex) {
    for (int i = 0; i < convex.size(); i++) {
      for (Vec2 corner : inner.corners()) {
        if (Planar.orientation(convex.corner(i), convex.corner(i + 1), corner) < 0) {
          return false;
        }
      }
    }
    return true;
  }

  /**
   * Whether an outline reaches over to the left of a line by no more than so much, in mm: asked of
   * so many pairs that it looks no farther than to the first corner that does.
   *
   * @param sign −1 for the right in place of the left
   */
  private static boolean isWithin(Vec2 from, Vec2 to, Polygon2 outline, int sign, double over) {
    double x = to.x() - from.x();
    double y = to.y() - from.y();
    double length = Math.sqrt(x * x + y * y);
    List<Vec2> corners = outline.corners();
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < corners.size(); i++) {
      Vec2 c = corners.get(i);
      double left = sign * (x * (c.y() - from.y()) - y * (c.x() - from.x()));
      if (left > most) {
        most = left;
        if (most / length > over) {
          return false;
        }
      }
    }
    return most / length <= over;
  }

  /**
   * How far an outline reaches over to the left of a line, in mm; below 0 where it lies wholly to
   * the right.
   */
  private static double farthestLeft(Vec2 from, Vec2 to, Polygon2 outline) {
    double x = to.x() - from.x();
    double y = to.y() - from.y();
    double most = Double.NEGATIVE_INFINITY;
    for (Vec2 c : outline.corners()) {
      most = Math.max(most, x * (c.y() - from.y()) - y * (c.x() - from.x()));
    }
    return most / Math.sqrt(x * x + y * y);
  }
}
