package facetwright.papers.ring;

import java.util.ArrayList;
import java.util.List;

/**
 * The wedge that goes between two neighbours.
 *
 * @param degrees its angle
 * @param inner how thick it is at the end nearer to the middle of the ring, in mm; 0 for an edge
 * @param outer how thick it is at the other end, in mm
 * @param length from the one end to the other, along the seat, in mm
 * @param height along the ring axis, in mm
 */
public record Spacer(double degrees, double inner, double outer, double length, double height) {
  /** Thinner than this the inner end is an edge, in mm. */
  private static final double EDGE = 0.3;

  /** As wide as a tab that glue holds well, in mm; common practice, no source. */
  private static final double STRIP = 10;

  /**
   * Two scores nearer to each other than this can't be folded, in mm; common practice, no source.
   */
  private static final double LEAST_FOLDED = 3;

  /**
   * Whether it can be folded from a strip; thinner ones are laid up of strips of the same card at
   * the outer end.
   */
  public boolean isFolded() {
    return outer >= LEAST_FOLDED;
  }

  /** How many strips of card one on the other are as thick as it is at its outer end. */
  public int strips(double caliper) {
    return (int) Math.max(1, Math.round(outer / caliper));
  }

  /** How wide such a strip is: it lies at the outer end alone, in mm. */
  double stripWidth() {
    return Math.min(STRIP, length / 2);
  }

  /** Whether both sides meet at the inner end. */
  boolean isEdged() {
    return inner < EDGE;
  }

  /** Where the strip it is folded from is scored across, from its one end, in mm. */
  public List<Double> scores() {
    List<Double> parts = new ArrayList<>(List.of(length, outer, length));
    if (!isEdged()) {
      parts.add(inner);
    }
    double at = 0;
    List<Double> scores = new ArrayList<>();
    for (double part : parts) {
      at += part;
      scores.add(at);
    }
    return List.copyOf(scores);
  }

  /** How long that strip is, in mm: its last part is glued under its first. */
  public double strip() {
    return scores().getLast() + length;
  }
}
