package facetwright.workbench.lens;

import facetwright.geom.Vec2;

/**
 * The lens's rim as a slider: it begins at the lower left, flat, and ends at the lower right, made.
 *
 * @param width of the lens, in pixels
 * @param height of it
 */
record Rim(double width, double height) implements FoldSlider {
  /** How broad it is, in pixels. */
  static final double BROAD = 9;

  /** Where it begins, in degrees. */
  private static final double FIRST = 225;

  /** How far round it goes, in degrees. */
  private static final double ALL = 270;

  /** How large the glass inside is. */
  double radius() {
    return Math.min(width, height) / 2 - BROAD;
  }

  @Override
  public boolean isAt(double x, double y) {
    return Math.hypot(x - width / 2, y - height / 2) > radius() - BROAD;
  }

  /** The value nearest to a place; in the gap below, the nearer end. */
  @Override
  public double value(double x, double y) {
    double angle = Math.toDegrees(Math.atan2(height / 2 - y, x - width / 2));
    double along = Math.floorMod(Math.round((FIRST - angle) * 100), 36000L) / 100.0;
    return along > ALL ? (along > ALL + (360 - ALL) / 2 ? 0 : 1) : along / ALL;
  }

  @Override
  public Vec2 at(double made) {
    double r = radius() + BROAD / 2;
    double angle = Math.toRadians(FIRST - ALL * made);
    return new Vec2(width / 2 + r * Math.cos(angle), height / 2 - r * Math.sin(angle));
  }
}
