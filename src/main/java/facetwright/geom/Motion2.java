package facetwright.geom;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;

/**
 * A turn about the origin followed by a shift: how a flat piece is moved on a sheet. It never
 * mirrors.
 *
 * @param cos cosine of the turn
 * @param sin sine of the turn, counter-clockwise
 * @param shift the shift after the turn, in mm
 */
public record Motion2(double cos, double sin, Vec2 shift) implements Serializable {
  public static final Motion2 NONE = new Motion2(1, 0, Vec2.ZERO);

  /**
   * @throws IllegalArgumentException when cos and sin are not those of one angle
   */
  public Motion2 {
    if (!(Math.abs(cos * cos + sin * sin - 1) < RoundOff.PART)) {
      throw new IllegalArgumentException("cos and sin do not belong to one angle");
    }
  }

  public static Motion2 shift(Vec2 shift) {
    return new Motion2(1, 0, shift);
  }

  /** A turn about the origin; whole quarter turns are exact. */
  public static Motion2 turn(double radians) {
    double quarters = radians / (Math.PI / 2);
    if (quarters == Math.rint(quarters) && Math.abs(quarters) < 1e6) {
      return switch (Math.floorMod((int) quarters, 4)) {
        case 0 -> NONE;
        case 1 -> new Motion2(0, 1, Vec2.ZERO);
        case 2 -> new Motion2(-1, 0, Vec2.ZERO);
        default -> new Motion2(0, -1, Vec2.ZERO);
      };
    }
    return new Motion2(Math.cos(radians), Math.sin(radians), Vec2.ZERO);
  }

  /**
   * The motion that lays one directed segment along another, start on start.
   *
   * @throws ArithmeticException when a segment has no length
   */
  public static Motion2 carrying(Vec2 from, Vec2 to, Vec2 ontoFrom, Vec2 ontoTo) {
    Vec2 a = to.minus(from).unit();
    Vec2 b = ontoTo.minus(ontoFrom).unit();
    Vec2 turn = new Vec2(a.dot(b), a.cross(b)).unit();
    Motion2 turned = new Motion2(turn.x(), turn.y(), Vec2.ZERO);
    return new Motion2(turn.x(), turn.y(), ontoFrom.minus(turned.apply(from)));
  }

  public Vec2 apply(Vec2 p) {
    return new Vec2(movedX(p), movedY(p));
  }

  private double movedX(Vec2 p) {
    return cos * p.x() - sin * p.y() + shift.x();
  }

  private double movedY(Vec2 p) {
    return sin * p.x() + cos * p.y() + shift.y();
  }

  /**
   * The box of points once moved.
   *
   * @throws IllegalArgumentException when there is no point
   */
  public Box2 boxOf(List<Vec2> points) {
    Bounds bounds = new Bounds();
    for (int i = 0; i < points.size(); i++) {
      Vec2 p = points.get(i);
      bounds.add(movedX(p), movedY(p));
    }
    return bounds.box();
  }

  public Polygon2 apply(Polygon2 polygon) {
    return polygon.arcs().isEmpty()
        ? new Polygon2(moved(polygon.corners()))
        : new Polygon2(
            moved(polygon.corners()), polygon.arcs().stream().map(a -> a.moved(this)).toList());
  }

  /** A plain loop: nets are moved about much while one waits for them. */
  private List<Vec2> moved(List<Vec2> points) {
    List<Vec2> moved = new ArrayList<>(points.size());
    for (Vec2 p : points) {
      moved.add(apply(p));
    }
    return moved;
  }

  /** This motion first, then the other. */
  public Motion2 then(Motion2 next) {
    return new Motion2(
        next.cos * cos - next.sin * sin, next.sin * cos + next.cos * sin, next.apply(shift));
  }
}
