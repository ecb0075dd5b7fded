package facetwright.fold.pose;

import facetwright.geom.Box2;
import facetwright.geom.Motion3;
import facetwright.geom.Planar;
import facetwright.geom.RoundOff;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import java.util.List;
import org.locationtech.jts.algorithm.MinimumAreaRectangle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** Stands a form on the table, squared up and centred. */
public final class Standing {
  /** A rectangle has to be smaller by this part before the form is turned for it. */
  private static final double WORTH_TURNING = RoundOff.PART;

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
   * The turn about z that gives the least rectangle and turns what faces the reader the least;
   * where two ways turn it as much, its longer side comes to lie along x.
   */
  private static Motion3 square(List<Vec3> points) {
    Box2 now = seenFromAbove(points);
    Vec2 side = new Vec2(1, 0);
    Coordinate[] shadow =
        points.stream()
            .map(p -> Planar.coordinate(new Vec2(p.x(), p.y())))
            .toArray(Coordinate[]::new);
    Geometry least =
        MinimumAreaRectangle.getMinimumRectangle(
            Planar.factory().createMultiPointFromCoords(shadow));
    if (least.getArea() < now.width() * now.height() * (1 - WORTH_TURNING)) {
      Coordinate[] ring = least.getCoordinates();
      Vec2 edge = new Vec2(ring[1].x - ring[0].x, ring[1].y - ring[0].y);
      if (edge.length() > 0) {
        side = edge.unit();
      }
    }
    Vec2 nearest = side;
    for (int quarter = 1; quarter < 4; quarter++) {
      side = side.left();
      boolean asNear = Math.abs(side.x() - nearest.x()) <= RoundOff.SOLVED;
      if (asNear
          ? width(points, side) > width(points, nearest) * (1 + WORTH_TURNING)
          : side.x() > nearest.x()) {
        nearest = side;
      }
    }
    return turnOnto(nearest);
  }

  private static double width(List<Vec3> points, Vec2 along) {
    Motion3 turn = turnOnto(along);
    return seenFromAbove(points.stream().map(turn::apply).toList()).width();
  }

  /** The turn about z that carries a direction of the table onto x. */
  private static Motion3 turnOnto(Vec2 side) {
    return new Motion3(
        new Vec3(side.x(), -side.y(), 0), new Vec3(side.y(), side.x(), 0), Vec3.Z, Vec3.ZERO);
  }
}
