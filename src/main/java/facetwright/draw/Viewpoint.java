package facetwright.draw;

import facetwright.geom.Vec2;
import facetwright.geom.Vec3;

/**
 * From where a folded form is looked at, from far away: parallel lines stay parallel.
 *
 * @param turn how far the viewer has walked round the form, counter-clockwise seen from above, in
 *     radians
 * @param tilt how far the viewer looks down on it, in radians: 0 level, π/2 from right above
 */
public record Viewpoint(double turn, double tilt) {
  /** A little from the left and above, as on a table before one. */
  public static final Viewpoint USUAL = new Viewpoint(Math.toRadians(-63), Math.toRadians(24));

  private static final double STRAIGHT = Math.PI / 2;

  public Viewpoint {
    tilt = Math.clamp(tilt, -STRAIGHT, STRAIGHT);
  }

  /** Walked round and looking down by so much more. */
  public Viewpoint moved(double turnBy, double tiltBy) {
    return new Viewpoint(turn + turnBy, tilt + tiltBy);
  }

  /** The direction from the form to the viewer, of length 1. */
  Vec3 toward() {
    return new Vec3(
        Math.cos(tilt) * Math.cos(turn), Math.cos(tilt) * Math.sin(turn), Math.sin(tilt));
  }

  Vec3 right() {
    return new Vec3(-Math.sin(turn), Math.cos(turn), 0);
  }

  Vec3 up() {
    return new Vec3(
        -Math.sin(tilt) * Math.cos(turn), -Math.sin(tilt) * Math.sin(turn), Math.cos(tilt));
  }

  /** Where a point of space is seen, in mm. */
  public Vec2 seen(Vec3 p) {
    return new Vec2(right().dot(p), up().dot(p));
  }
}
