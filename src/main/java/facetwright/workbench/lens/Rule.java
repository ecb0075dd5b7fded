package facetwright.workbench.lens;

import facetwright.geom.Vec2;

/**
 * A straight slider along the lower edge of the large lens, flat at its left, made at its right.
 *
 * @param width of what is free of the lens's lower edge, in pixels
 * @param height of the lens
 * @param type how large its words are, as a part of the usual size
 */
record Rule(double width, double height, double type) implements FoldSlider {
  private static final double LONGEST = 360;

  /** From the edge to its words, in pixels. */
  private static final double OFF = 14;

  /** How wide a word is at the usual size, with the space before the knob. */
  private static final double WORD = 46;

  /** How far from it a press still takes hold of it. */
  private static final double NEAR = 14;

  private double from() {
    return OFF + WORD * type;
  }

  private double length() {
    return Math.max(1, Math.min(LONGEST, width - 2 * from()));
  }

  private double y() {
    return Math.rint(height - OFF - 17 * type) + 0.5;
  }

  @Override
  public boolean isAt(double x, double y) {
    return Math.abs(y - y()) <= NEAR && x >= from() - NEAR && x <= from() + length() + NEAR;
  }

  @Override
  public double value(double x, double y) {
    return Math.clamp((x - from()) / length(), 0, 1);
  }

  @Override
  public Vec2 at(double made) {
    return new Vec2(from() + made * length(), y());
  }
}
