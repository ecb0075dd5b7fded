package facetwright.draw.picture;

import facetwright.draw.Ink;
import facetwright.draw.Mark;
import facetwright.geom.Vec2;

/** The number of a facet, as pictures set it. */
final class FacetNumber {
  /** Half of the height of a digit, as part of the size of lettering. */
  private static final double HALF = 0.35;

  private FacetNumber() {}

  /**
   * @param size of the lettering, in mm
   * @param at its middle
   */
  static Mark.Text of(int number, double size, Vec2 at) {
    return new Mark.Text(
        new Vec2(at.x(), at.y() - size * HALF),
        size,
        0,
        Mark.Anchor.MIDDLE,
        Mark.Weight.BOLD,
        Ink.BLACK,
        Integer.toString(number));
  }
}
