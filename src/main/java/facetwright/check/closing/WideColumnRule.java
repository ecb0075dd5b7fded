package facetwright.check.closing;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Mm;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.Score;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Columns that close round, of which one is wider than all others together: these do not reach
 * round it, whatever the folds (the polygon inequality, Euclid I.20 for three). A tube built panel
 * by panel is looked at as a wrap is.
 *
 * <p>What it does not detect: columns that are not four-sided, and rings with other panels in them.
 */
public final class WideColumnRule implements Rule {
  /** Wider by less is the arithmetic's, in mm. */
  private static final double SAME = 1e-6;

  /**
   * Columns that one join closes round.
   *
   * @param panels their indices, from the one side of the join to the other
   */
  private record Tube(int join, List<Integer> panels, List<Double> widths) {
    private double round() {
      return widths.stream().mapToDouble(w -> w).sum();
    }

    private int widest() {
      return widths.indexOf(widths.stream().max(Comparator.naturalOrder()).orElseThrow());
    }

    private boolean isTooWide() {
      return 2 * widths.get(widest()) > round() + SAME;
    }
  }

  @Override
  public List<Finding> find(Subject subject) {
    List<Finding> found = new ArrayList<>();
    Set<List<Double>> told = new HashSet<>();
    for (Tube tube : wide(subject)) {
      if (told.add(tube.widths())) {
        int panel = tube.panels().get(tube.widest());
        double width = tube.widths().get(tube.widest());
        double others = tube.round() - width;
        found.add(
            new Finding(
                "wide-column",
                Finding.Severity.ERROR,
                String.format(
                    "%s is %s wide and the other %d columns %s together: they do not reach round"
                        + " it.",
                    subject.name(panel), Mm.text(width), tube.panels().size() - 1, Mm.text(others)),
                String.format(
                    "Make %s less than %s wide, or the others more than %s together.",
                    subject.name(panel), Mm.atMost(others), Mm.atLeast(width)),
                new Place.AtPanel(panel),
                subject.panel(panel).site()));
      }
    }
    return found;
  }

  /** The joins that miss for it. */
  static Set<Integer> joins(Subject subject) {
    Set<Integer> joins = new HashSet<>();
    wide(subject).forEach(tube -> joins.add(tube.join()));
    return joins;
  }

  private static List<Tube> wide(Subject subject) {
    if (subject.folded().closes()) {
      return List.of();
    }
    Map<EdgeRef, EdgeRef> across = new HashMap<>();
    for (Score score : subject.net().scores()) {
      across.put(score.a(), score.b());
      across.put(score.b(), score.a());
    }
    List<Tube> wide = new ArrayList<>();
    for (int j = 0; j < subject.net().joins().size(); j++) {
      if (subject.net().joins().get(j) instanceof Join.Seam seam) {
        Tube tube = tube(subject, across, j, seam);
        if (tube.panels().size() >= 3 && tube.isTooWide()) {
          wide.add(tube);
        }
      }
    }
    return wide;
  }

  /** From the one side of the seam straight on to the other; empty where that is not reached. */
  private static Tube tube(
      Subject subject, Map<EdgeRef, EdgeRef> across, int join, Join.Seam seam) {
    List<Integer> panels = new ArrayList<>();
    List<Double> widths = new ArrayList<>();
    EdgeRef in = seam.b();
    while (in != null
        && subject.panel(in.panel()).outline().size() == 4
        && !panels.contains(in.panel())) {
      panels.add(in.panel());
      widths.add(subject.panel(in.panel()).outline().side(in.edge() + 1).length());
      EdgeRef out = new EdgeRef(in.panel(), (in.edge() + 2) % 4);
      if (out.equals(seam.a())) {
        return new Tube(join, List.copyOf(panels), List.copyOf(widths));
      }
      in = across.get(out);
    }
    return new Tube(join, List.of(), List.of());
  }
}
