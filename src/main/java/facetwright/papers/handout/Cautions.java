package facetwright.papers.handout;

import facetwright.net.Net;
import facetwright.net.Opening;
import java.util.ArrayList;
import java.util.List;

/** What to take care of; common practice, no source. */
final class Cautions {
  private Cautions() {}

  static List<String> of(Net net) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Knives and punches are sharp. Cut on a mat, away from yourself, with a fresh blade and in"
            + " several light strokes. Children cut and score only with an adult beside them.");
    if (mayHoldALight(net)) {
      lines.add("Battery lights only: never a flame or a hot bulb in or near paper.");
    }
    lines.add(
        hasHoles(net)
            ? "This piece has holes for a thread or ribbon. Keep ribbon, thread, beads and small"
                + " parts away from infants."
            : "Keep offcuts and small parts away from infants.");
    lines.add(
        "Card and glue are not made to touch food unless they say so. Wrap what will be eaten.");
    lines.add(
        "Where the rules of your school or town, or advice from someone qualified, say otherwise,"
            + " follow those.");
    return lines;
  }

  /** Whether it is glued round a room inside, where somebody may put a light. */
  private static boolean mayHoldALight(Net net) {
    return !net.joins().isEmpty();
  }

  private static boolean hasHoles(Net net) {
    return net.panels().stream()
        .flatMap(p -> p.openings().stream())
        .anyMatch(Opening.Hole.class::isInstance);
  }
}
