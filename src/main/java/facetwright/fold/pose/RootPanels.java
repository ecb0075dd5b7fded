package facetwright.fold.pose;

import facetwright.geom.RoundOff;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.net.Stance;
import java.util.ArrayList;
import java.util.List;

/** The panel of each piece that stays while the others are folded about it. */
public final class RootPanels {
  private RootPanels() {}

  /** For each piece the panel it stands on, where that is one, or else its largest. */
  public static List<Integer> of(Net net, int[] piece) {
    List<List<Integer>> panels = new ArrayList<>();
    for (int p = 0; p < piece.length; p++) {
      if (piece[p] == panels.size()) {
        panels.add(new ArrayList<>());
      }
      panels.get(piece[p]).add(p);
    }
    List<Integer> found = new ArrayList<>(panels.stream().map(all -> largest(net, all)).toList());
    List<Stance.Corner> ring = net.stance().ring();
    int base = ring.getFirst().panel();
    if (ring.stream().allMatch(c -> c.panel() == base)) {
      found.set(piece[base], base);
    }
    return List.copyOf(found);
  }

  /** The largest facet, or the largest panel where there is none; of equals the first. */
  static int largest(Net net, List<Integer> panels) {
    int best = panels.getFirst();
    for (int p : panels) {
      boolean facet = net.panels().get(p).role() == PanelRole.FACET;
      boolean bestFacet = net.panels().get(best).role() == PanelRole.FACET;
      boolean larger = area(net, p) > area(net, best) * (1 + RoundOff.PART);
      if (facet == bestFacet ? larger : facet) {
        best = p;
      }
    }
    return best;
  }

  private static double area(Net net, int panel) {
    return net.panels().get(panel).outline().area();
  }
}
