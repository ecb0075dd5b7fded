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
