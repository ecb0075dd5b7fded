package facetwright.papers.ring;

import facetwright.geom.Motion3;
import java.util.List;

/**
 * A ring of copies of one piece.
 *
 * @param seating how neighbours meet
 * @param burden what the ring asks of its maker, in degrees: 0 where it is flush, else the angle of
 *     a wedge and half of what a piece is tipped; the less the better
 * @param copies for each copy, counter-clockwise seen from above, the motion from where the piece
 *     stands alone to its place; the ring axis is z, the ring lies on z = 0
 * @param inner diameter of the round opening in the middle, in mm; 0 where the copies leave none
 * @param outer diameter of the circle round all of it, in mm
 * @param height along the ring axis, in mm
 */
public record RingPlan(
    Seating seating,
    double burden,
    List<Motion3> copies,
    double inner,
    double outer,
    double height) {
  public RingPlan {
    copies = List.copyOf(copies);
  }

  public int count() {
    return copies.size();
  }

  /** The angle between the normals of two seats that would be flush in a ring of so many. */
  public static double flushDegrees(int count) {
    return 180 - 360.0 / count;
  }

  /** All glued area of the ring, in mm²: one joint a copy, with a spacer two. */
  public double glued() {
    return seating.contact() * count() * (seating.isFlush() ? 1 : 2);
  }
}
