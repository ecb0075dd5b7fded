package facetwright.papers.facets;

import facetwright.geom.Vec3;
import facetwright.words.Decimals;

/**
 * Which way a facet of the made form faces, seen by one who stands before it.
 *
 * @param around from the front, counter-clockwise seen from above, in degrees, 0 up to 360; 0 for
 *     what faces straight up or down
 * @param up how far from level, in degrees: 90 straight up, -90 straight down
 */
public record Facing(double around, double up) {
  private static final double TURN = 360;

  /** What is off by less faces that way, in degrees. */
  private static final double NEAR = 0.5;

  private static final double STRAIGHT = 90;

  private static final String[] SIDES = {
    "front", "front right", "right", "back right", "back", "back left", "left", "front left"
  };

  /** From the direction outward, of length 1; x to the right, y to the back, z up. */
  static Facing of(Vec3 outward) {
    double up = Math.toDegrees(Math.asin(Math.clamp(outward.z(), -1, 1)));
    if (STRAIGHT - Math.abs(up) < NEAR) {
      return new Facing(0, Math.copySign(STRAIGHT, up));
    }
    double around = Math.toDegrees(Math.atan2(outward.x(), -outward.y()));
    return new Facing(around < 0 ? around + TURN : around, up);
  }

  /** In words: "front right, 30° up". */
  public String text() {
    if (Math.abs(up) == STRAIGHT) {
      return up > 0 ? "up" : "down";
    }
    String side = SIDES[(int) Math.round(around * SIDES.length / TURN) % SIDES.length];
    String slant = Decimals.places(Math.abs(up), 0) + "° " + (up > 0 ? "up" : "down");
    return Math.abs(up) < NEAR ? side : side + ", " + slant;
  }
}
