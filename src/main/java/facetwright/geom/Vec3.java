package facetwright.geom;

import java.io.Serializable;

/** A point or a displacement in space, in millimetres. */
public record Vec3(double x, double y, double z) implements Serializable {
  public static final Vec3 ZERO = new Vec3(0, 0, 0);
  public static final Vec3 X = new Vec3(1, 0, 0);
  public static final Vec3 Y = new Vec3(0, 1, 0);
  public static final Vec3 Z = new Vec3(0, 0, 1);

  /**
   * @throws IllegalArgumentException when a coordinate is not a finite number
   */
  public Vec3 {
    if (!Double.isFinite(x) || !Double.isFinite(y) || !Double.isFinite(z)) {
      throw new IllegalArgumentException(
          "a point needs finite coordinates, not " + x + ", " + y + ", " + z);
    }
  }

  public Vec3 plus(Vec3 other) {
    return new Vec3(x + other.x, y + other.y, z + other.z);
  }

  public Vec3 minus(Vec3 other) {
    return new Vec3(x - other.x, y - other.y, z - other.z);
  }

  public Vec3 times(double factor) {
    return new Vec3(x * factor, y * factor, z * factor);
  }

  public double dot(Vec3 other) {
    return x * other.x + y * other.y + z * other.z;
  }

  public Vec3 cross(Vec3 other) {
    return new Vec3(
        y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
  }

  public double length() {
    return Math.sqrt(dot(this));
  }

  public double distance(Vec3 other) {
    return minus(other).length();
  }

  /** The point part of the way to another: 0 is here, 1 is there. */
  public Vec3 toward(Vec3 other, double part) {
    return plus(other.minus(this).times(part));
  }

  /**
   * This direction with length 1.
   *
   * @throws ArithmeticException for the zero vector
   */
  public Vec3 unit() {
    double length = length();
    if (length == 0) {
      throw new ArithmeticException("the zero vector has no direction");
    }
    return times(1 / length);
  }
}
