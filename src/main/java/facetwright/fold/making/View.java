package facetwright.fold.making;

import facetwright.geom.Vec2;
import facetwright.geom.Vec3;

/**
 * Space seen along a direction.
 *
 * @param right square to the direction
 * @param up square to both
 */
record View(Vec3 right, Vec3 up) {
  /** Flatter than this, by its part along, a direction is no help to another. */
  private static final double ALONG = 0.9;

  static View along(Vec3 direction) {
    Vec3 other = Math.abs(direction.x()) < ALONG ? Vec3.X : Vec3.Y;
    Vec3 right = direction.cross(other).unit();
    return new View(right, direction.cross(right));
  }

  Vec2 seen(Vec3 p) {
    return new Vec2(right.dot(p), up.dot(p));
  }
}
