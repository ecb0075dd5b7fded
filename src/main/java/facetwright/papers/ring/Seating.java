package facetwright.papers.ring;

import java.util.List;
import java.util.Optional;

/**
 * How neighbours meet.
 *
 * @param one the panels of the seat that meets the neighbour clockwise, seen from above
 * @param other the panels of the seat that meets the neighbour counter-clockwise
 * @param normalsDegrees the angle between the outward normals of the two seats
 * @param tippedDegrees by how much the piece is tipped, 0 to 90
 * @param contact where two neighbours meet, in mm², openings taken out; with a spacer, of each of
 *     its two sides
 * @param opening how far neighbours stand open at the outer end, in mm, with nothing between; 0
 *     where they are flush, below 0 where they are a hair too thick there
 * @param spacer what goes between; empty where the ring is flush, or nearly so that card and glue
 *     make it up
 */
public record Seating(
    List<Integer> one,
    List<Integer> other,
    double normalsDegrees,
    double tippedDegrees,
    double contact,
    double opening,
    Optional<Spacer> spacer) {
  public Seating {
    one = List.copyOf(one);
    other = List.copyOf(other);
  }

  /** A piece tipped by less stands, in degrees. */
  private static final double UPRIGHT = 0.05;

  static boolean isUpright(double tippedDegrees) {
    return tippedDegrees < UPRIGHT;
  }

  /** Whether the piece stands as it does alone. */
  public boolean isUpright() {
    return isUpright(tippedDegrees);
  }

  /** Whether nothing goes between. */
  public boolean isFlush() {
    return spacer.isEmpty();
  }

  /** Whether card and glue make something up. */
  boolean isForgiven() {
    return spacer.isEmpty() && opening != 0;
  }
}
