package facetwright.draw;

import facetwright.geom.RoundOff;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;

/**
 * From where a folded form is looked at, from far away: parallel lines stay parallel.
 *
 * @param turn how far the viewer has walked round the form, counter-clockwise seen from above, in
 *     radians
 * @param tilt how far the viewer looks down on it, in radians: 0 level, π/2 from right above
 * @param isOver whether the form is turned upside down before it is looked at, about the line that
 *     runs from left to right of the viewer
 */
public record Viewpoint(double turn, double tilt, boolean isOver) {
  /** A little from the left and above, as on a table before one. */
  public static final Viewpoint USUAL = new Viewpoint(Math.toRadians(-63), Math.toRadians(24));

  private static final double STRAIGHT = Math.PI / 2;

  public Viewpoint {
    tilt = Math.clamp(tilt, -STRAIGHT, STRAIGHT);
  }

  /** A form as it stands. */
  public Viewpoint(double turn, double tilt) {
    this(turn, tilt, false);
  }

  /** Walked round and looking down by so much more. */
  public Viewpoint moved(double turnBy, double tiltBy) {
    return new Viewpoint(turn + turnBy, tilt + tiltBy, isOver);
  }

  /** Whether the form lies otherwise than seen from there: turned over, or about its upright. */
  public boolean isTurnedFrom(Viewpoint other) {
    return isOver != other.isOver
        || Math.abs(Math.IEEEremainder(turn - other.turn, 2 * Math.PI)) > RoundOff.SOLVED;
  }

  /** The direction from the form to the viewer, of length 1. */
  public Vec3 toward() {
    Vec3 upright =
        new Vec3(Math.cos(tilt) * Math.cos(turn), Math.cos(tilt) * Math.sin(turn), Math.sin(tilt));
    return isOver ? upright.times(-1) : upright;
  }

  Vec3 right() {
    return new Vec3(-Math.sin(turn), Math.cos(turn), 0);
  }

  Vec3 up() {
    Vec3 upright =
        new Vec3(
            -Math.sin(tilt) * Math.cos(turn), -Math.sin(tilt) * Math.sin(turn), Math.cos(tilt));
    return isOver ? upright.times(-1) : upright;
  }

  /** Where a point of space is seen, in mm. */
  public Vec2 seen(Vec3 p) {
    return new Vec2(right().dot(p), up().dot(p));
  }
}
