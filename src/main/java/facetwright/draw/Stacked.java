package facetwright.draw;

import facetwright.geom.Motion3;
import facetwright.geom.Vec3;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.net.Score;
import facetwright.net.Sense;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which of the panels that lie in one plane lies on which: known where a score between two is
 * folded right over, as its sense says, and where one is glued or tucked under the other. Where
 * neither says so, tabs and what is lapped lie inside.
 */
final class Stacked {
  /**
   * @param isCrest whether the panel lies toward its own outside of the other, and the other toward
   *     its outside of it, as at a mountain; if not, each lies toward its inside, as at a valley
   */
  private record Beside(int panel, int other, boolean isCrest) {}

  private final List<Motion3> poses;
  private final List<Beside> folded = new ArrayList<>();
  private final Map<Integer, Set<Integer>> over = new HashMap<>();
  private final Set<Integer> under = new HashSet<>();

  Stacked(Net net, List<Motion3> poses) {
    this.poses = poses;
    for (Score score : net.scores()) {
      boolean isCrest = score.sense() == Sense.MOUNTAIN;
      folded.add(new Beside(score.a().panel(), score.b().panel(), isCrest));
    }
    for (Join join : net.joins()) {
      switch (join) {
        case Join.Seam(_, var b, int tab, _, _) when tab != Join.Seam.NO_TAB -> put(tab, b.panel());
        case Join.Lap(int tongue, int host, Join.Hold hold, _) when hold == Join.Hold.TONGUE ->
            over.computeIfAbsent(host, _ -> new HashSet<>()).add(tongue);
        case Join.Lap(int beneath, int above, _, _) -> put(beneath, above);
        default -> {}
      }
    }
    for (int p = 0; p < net.panels().size(); p++) {
      int panel = p;
      boolean isTongue = over.values().stream().anyMatch(above -> above.contains(panel));
      if (net.panels().get(p).role() == PanelRole.TAB && !isTongue) {
        under.add(p);
      }
    }
  }

  private void put(int beneath, int above) {
    over.computeIfAbsent(beneath, _ -> new HashSet<>()).add(above);
    under.add(beneath);
  }

  /** The panels of one plane, from the lowest to the highest along its normal. */
  List<Integer> order(Collection<Integer> lying, Vec3 up) {
    Set<Integer> here = new LinkedHashSet<>(lying);
    Map<Integer, Set<Integer>> below = new HashMap<>();
    for (Beside b : folded) {
      if (here.contains(b.panel)
          && here.contains(b.other)
          && isUp(b.panel, up) != isUp(b.other, up)) {
        boolean isOver = isUp(b.panel, up) == b.isCrest;
        lay(below, isOver ? b.other : b.panel, isOver ? b.panel : b.other);
      }
    }
    for (int beneath : here) {
      for (int above : over.getOrDefault(beneath, Set.of())) {
        if (here.contains(above)) {
          boolean isUp = isUp(above, up);
          lay(below, isUp ? beneath : above, isUp ? above : beneath);
        }
      }
    }
    List<Integer> order = new ArrayList<>();
    List<Integer> first = plain(here, up);
    Set<Integer> begun = new HashSet<>();
    first.forEach(p -> rise(p, below, first, begun, order));
    return order;
  }

  /** Tabs and what is lapped inside of the others. */
  private List<Integer> plain(Set<Integer> here, Vec3 up) {
    List<Integer> inner = here.stream().filter(under::contains).toList();
    List<Integer> outer = here.stream().filter(p -> !under.contains(p)).toList();
    boolean isUp = outer.isEmpty() || isUp(outer.getFirst(), up);
    List<Integer> order = new ArrayList<>(isUp ? inner : outer);
    order.addAll(isUp ? outer : inner);
    return order;
  }

  /** What lies below a panel before it; where they lie in a circle, one of them comes first. */
  private static void rise(
      int panel,
      Map<Integer, Set<Integer>> below,
      List<Integer> first,
      Set<Integer> begun,
      List<Integer> order) {
    if (begun.add(panel)) {
      Set<Integer> lower = below.getOrDefault(panel, Set.of());
      first.stream().filter(lower::contains).forEach(p -> rise(p, below, first, begun, order));
      order.add(panel);
    }
  }

  private static void lay(Map<Integer, Set<Integer>> below, int lower, int upper) {
    below.computeIfAbsent(upper, _ -> new HashSet<>()).add(lower);
  }

  private boolean isUp(int panel, Vec3 up) {
    return poses.get(panel).ez().dot(up) > 0;
  }
}
