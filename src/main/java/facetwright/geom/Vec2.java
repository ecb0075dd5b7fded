package facetwright.geom;

import java.io.Serializable;

/**
 * A point or a displacement in the plane, in millimetres.
 *
 * @param x to the right
 * @param y up
 */
public record Vec2(double x, double y) implements Serializable {
  public static final Vec2 ZERO = new Vec2(0, 0);

  /**
   * @throws IllegalArgumentException when a coordinate is not a finite number
   */
  public Vec2 {
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException("a point needs finite coordinates, not " + x + ", " + y);
    }
  }

  /** The point at a distance from the origin in a direction given in radians. */
  public static Vec2 polar(double distance, double radians) {
    return new Vec2(distance * Math.cos(radians), distance * Math.sin(radians));
  }

  public Vec2 plus(Vec2 other) {
    return new Vec2(x + other.x, y + other.y);
  }

  public Vec2 minus(Vec2 other) {
    return new Vec2(x - other.x, y - other.y);
  }

  public Vec2 times(double factor) {
    return new Vec2(x * factor, y * factor);
  }

  /** Left to right about the line x = 0. */
  public Vec2 mirrored() {
    return new Vec2(0 - x, y);
  }

  public double dot(Vec2 other) {
    return x * other.x + y * other.y;
  }

  /** The z part of the cross product; positive when {@code other} lies to the left of this. */
  public double cross(Vec2 other) {
    return x * other.y - y * other.x;
  }

  public double length() {
    return Math.hypot(x, y);
  }

  public double distance(Vec2 other) {
    return minus(other).length();
  }

  /** The point part of the way to another: 0 is here, 1 is there. */
  public Vec2 toward(Vec2 other, double part) {
    return new Vec2(x + (other.x - x) * part, y + (other.y - y) * part);
  }

  /** Turned so that the first axis comes to lie along this direction of length 1. */
  public Vec2 turned(Vec2 axis) {
    return new Vec2(x * axis.x - y * axis.y, x * axis.y + y * axis.x);
  }

  /** Turned a quarter to the left. */
  public Vec2 left() {
    return new Vec2(-y, x);
  }

  /**
   * This direction with length 1.
   *
   * @throws ArithmeticException for the zero vector
   */
  public Vec2 unit() {
    double length = length();
    if (length == 0) {
      throw new ArithmeticException("the zero vector has no direction");
    }
    return times(1 / length);
  }
}
