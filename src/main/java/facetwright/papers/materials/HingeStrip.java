package facetwright.papers.materials;

import facetwright.fold.pose.Together;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A strip of card glued over a joint as its hinge.
 *
 * @param length in mm
 * @param count how many so long
 */
public record HingeStrip(double length, int count) {
  /** How wide it is, half of it on either part, in mm; common practice, no source. */
  public static final double WIDE = 20;

  /** Lengths are told apart by this, in mm. */
  private static final double STEP = 0.01;

  /** Those of all pieces, the longest first. */
  static List<HingeStrip> of(Together together, int pieces) {
    Map<Double, Integer> counts = new LinkedHashMap<>();
    together.swings().stream()
        .map(s -> STEP * Math.rint(s.from().distance(s.to()) / STEP))
        .sorted((a, b) -> Double.compare(b, a))
        .forEach(length -> counts.merge(length, pieces, Integer::sum));
    return counts.entrySet().stream().map(e -> new HingeStrip(e.getKey(), e.getValue())).toList();
  }

  /** The run of tape that holds all of them: one along either half, in mm. */
  static double tape(List<HingeStrip> strips) {
    return strips.stream().mapToDouble(s -> 2 * s.count * s.length).sum();
  }

  /** The area that is glued, in mm². */
  static double glue(List<HingeStrip> strips) {
    return strips.stream().mapToDouble(s -> s.count * s.length * WIDE).sum();
  }
}
