package facetwright.form.make;

import facetwright.geom.Vec3;

/**
 * A regular polygon lying level about the z axis: how the makers of solids place corners. Side 1,
 * from corner 0 to corner 1, faces the front (−y).
 */
public final class Ring {
  private Ring() {}

  /** Corner {@code index} of a ring; {@code turn} is in parts of the step between two corners. */
  public static Vec3 corner(int sides, double radius, double height, int index, double turn) {
    double angle = -Math.PI / 2 + (2 * (index + turn) - 1) * Math.PI / sides;
    return new Vec3(radius * Math.cos(angle), radius * Math.sin(angle), height);
  }

  /** Radius through the corners of a regular polygon with this side. */
  public static double radius(int sides, double side) {
    return side / (2 * Math.sin(Math.PI / sides));
  }
}
