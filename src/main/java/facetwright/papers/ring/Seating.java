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
 * @param spacer what goes between; empty where the ring is flush
 */
public record Seating(
    List<Integer> one,
    List<Integer> other,
    double normalsDegrees,
    double tippedDegrees,
    double contact,
    Optional<Spacer> spacer) {
  public Seating {
    one = List.copyOf(one);
    other = List.copyOf(other);
  }

  public boolean isFlush() {
    return spacer.isEmpty();
  }
}
