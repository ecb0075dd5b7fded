package facetwright.fold.pose;

import facetwright.geom.Box2;
import facetwright.geom.ConvexOutline;
import facetwright.geom.Motion3;
import facetwright.geom.RoundOff;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import java.util.ArrayList;
import java.util.List;

/** Stands a form on the table, squared up and centred. */
public final class Standing {
  /** A rectangle has to be smaller by this part before the form is turned for it. */
  private static final double WORTH_TURNING = RoundOff.SOLVED;

  private Standing() {}

  /**
   * The direction square to a ring of points, counter-clockwise about it, with twice the ring's
   * area as its length (Newell's method, from memory).
   */
  public static Vec3 normal(List<Vec3> ring) {
    Vec3 sum = Vec3.ZERO;
    Vec3 o = ring.getFirst();
    for (int i = 1; i + 1 < ring.size(); i++) {
      sum = sum.plus(ring.get(i).minus(o).cross(ring.get(i + 1).minus(o)));
    }
    return sum;
  }

  /**
   * The motion that stands the points on the table.
   *
   * @param up turned to +z; not zero
   * @param along turned to +x as far as {@code up} allows
   */
  public static Motion3 of(List<Vec3> points, Vec3 up, Vec3 along) {
    Vec3 z = up.unit();
    Vec3 x = along.minus(z.times(z.dot(along)));
    if (x.length() <= RoundOff.SOLVED * along.length()) {
      Vec3 least = Math.abs(z.x()) < 0.6 ? Vec3.X : Vec3.Y;
      x = least.minus(z.times(z.dot(least)));
    }
    Motion3 upright = Motion3.carrying(Vec3.ZERO, x, z, Vec3.ZERO, Vec3.X, Vec3.Z);
    Motion3 squared = upright.then(square(points.stream().map(upright::apply).toList()));
    List<Vec3> stood = points.stream().map(squared::apply).toList();
    Vec2 centre = seenFromAbove(stood).centre();
    double lowest = stood.stream().mapToDouble(Vec3::z).min().orElse(0);
    return squared.then(shift(new Vec3(-centre.x(), -centre.y(), -lowest)));
  }

  public static Motion3 shift(Vec3 by) {
    return new Motion3(Vec3.X, Vec3.Y, Vec3.Z, by);
  }

  public static Box2 seenFromAbove(List<Vec3> points) {
    return Box2.around(points.stream().map(p -> new Vec2(p.x(), p.y())).toList());
  }

  /**
   * The turn about z that gives the least rectangle, which lies along a side of the convex hull (H.
   * Freeman, R. Shapira 1975, from memory), and of rectangles as small the one that turns what
   * faces the reader the least; where two ways turn it as much, its longer side comes to lie along
   * x, and else it turns to the left.
   */
  private static Motion3 square(List<Vec3> points) {
    List<Vec2> hull = ConvexOutline.of(points.stream().map(p -> new Vec2(p.x(), p.y())).toList());
    List<Side> sides = new ArrayList<>();
    Box2 now = seenFromAbove(points);
    sides.add(new Side(0, now.width() * now.height(), now.width()));
    for (int i = 0; i < hull.size(); i++) {
      Vec2 edge = hull.get((i + 1) % hull.size()).minus(hull.get(i));
      if (edge.length() > 0) {
        sides.addAll(Side.along(hull, edge.unit()));
      }
    }
    double least = sides.stream().mapToDouble(Side::area).min().orElseThrow();
    Side nearest = null;
    for (Side side : sides) {
      if (side.area * (1 - WORTH_TURNING) <= least && (nearest == null || side.isBefore(nearest))) {
        nearest = side;
      }
    }
    return turnOnto(new Vec2(Math.cos(nearest.turn), Math.sin(nearest.turn)));
  }

  /**
   * A direction that may come to lie along x.
   *
   * @param turn from x, in radians, −π/4 to π/4
   * @param area of the rectangle along it
   * @param width of the rectangle along it
   */
  private record Side(double turn, double area, double width) {

    /** The directions along an edge and square to it, as near to x as may be: two at 45°. */
    private static List<Side> along(List<Vec2> hull, Vec2 edge) {
      double turn = Math.atan2(edge.y(), edge.x());
      double near = turn - Math.PI / 2 * Math.rint(turn / (Math.PI / 2));
      List<Side> sides = new ArrayList<>();
      sides.add(of(hull, near));
      if (Math.abs(Math.abs(near) - Math.PI / 4) <= RoundOff.SOLVED) {
        sides.add(of(hull, -near));
      }
      return sides;
    }

    private static Side of(List<Vec2> hull, double turn) {
      double cos = Math.cos(turn);
      double sin = Math.sin(turn);
      Box2 box =
          Box2.around(
              hull.stream()
                  .map(c -> new Vec2(c.x() * cos + c.y() * sin, c.y() * cos - c.x() * sin))
                  .toList());
      return new Side(turn, box.width() * box.height(), box.width());
    }

    private boolean isBefore(Side other) {
      double more = Math.abs(turn) - Math.abs(other.turn);
      if (Math.abs(more) > RoundOff.SOLVED) {
        return more < 0;
      }
      double wider = width - other.width;
      return Math.abs(wider) > WORTH_TURNING * width ? wider > 0 : turn > other.turn;
    }
  }

  /** The turn about z that carries a direction of the table onto x. */
  private static Motion3 turnOnto(Vec2 side) {
    return new Motion3(
        new Vec3(side.x(), -side.y(), 0), new Vec3(side.y(), side.x(), 0), Vec3.Z, Vec3.ZERO);
  }
}
