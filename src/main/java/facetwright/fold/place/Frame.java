package facetwright.fold.place;

import facetwright.geom.Motion3;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;

/**
 * Directions by which a part is looked at along an axis: along the axis, and square to it.
 *
 * @param x square to the axis
 * @param y square to both
 * @param axis what is looked along
 */
record Frame(Vec3 x, Vec3 y, Vec3 axis) {
  /** An axis that leans from upright by less, as a part of its length, is upright. */
  private static final double UPRIGHT = 0.1;

  /**
   * Looking along this axis, with what is above above; along an upright one, with x to one side.
   */
  static Frame along(Vec3 axis) {
    if (Math.hypot(axis.x(), axis.y()) < UPRIGHT) {
      Vec3 x = Vec3.X.minus(axis.times(axis.x())).unit();
      return new Frame(x, axis.cross(x), axis);
    }
    Vec3 y = Vec3.Z.minus(axis.times(axis.z())).unit();
    return new Frame(y.cross(axis), y, axis);
  }

  boolean isUpright() {
    return Math.hypot(axis.x(), axis.y()) < UPRIGHT;
  }

  Vec2 flat(Vec3 place) {
    return new Vec2(place.dot(x), place.dot(y));
  }

  double depth(Vec3 place) {
    return place.dot(axis);
  }

  Vec3 place(Vec2 flat, double depth) {
    return x.times(flat.x()).plus(y.times(flat.y())).plus(axis.times(depth));
  }

  /** A place by its three measures in this frame. */
  Vec3 in(Vec3 place) {
    return new Vec3(place.dot(x), place.dot(y), place.dot(axis));
  }

  /**
   * The motion that carries one frame onto another.
   *
   * @param turn the direction in the other onto which x goes
   * @param from a place that goes onto {@code to}
   */
  Motion3 onto(Frame other, Vec2 turn, Vec3 from, Vec3 to) {
    Vec3 along = other.x.times(turn.x()).plus(other.y.times(turn.y()));
    return Motion3.carrying(from, x, axis, to, along, other.axis);
  }
}
