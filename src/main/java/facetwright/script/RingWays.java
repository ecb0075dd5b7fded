package facetwright.script;

import facetwright.aim.Goal;
import facetwright.aim.Outcome;
import facetwright.fold.pose.Closure;
import facetwright.papers.ring.Rings;
import facetwright.script.design.Design;
import java.util.List;

/** The pairs of sides by which a ring may be aimed at. */
final class RingWays {
  /** Further pairs are far from seating flush. */
  private static final int MOST = 4;

  private RingWays() {}

  /** The goals once for each pair of sides that a ring among them may be seated by. */
  static List<List<Goal>> of(List<Goal> goals, Design design) {
    List<String> ways =
        goals.stream()
            .flatMap(g -> g instanceof Goal.Ring ring ? ways(ring, design).stream() : null)
            .limit(MOST)
            .toList();
    return ways.isEmpty()
        ? List.of(goals)
        : ways.stream()
            .map(w -> goals.stream().map(g -> g instanceof Goal.Ring r ? r.by(w) : g).toList())
            .toList();
  }

  private static List<String> ways(Goal.Ring ring, Design design) {
    return design.folded().closure() == Closure.NOT_SOLVED
        ? List.of()
        : Rings.of(design.net(), design.folded()).ways(ring.count());
  }

  /** Whether an outcome misses its ring by less. */
  static boolean isNearer(Outcome outcome, Outcome than) {
    return miss(outcome) < miss(than);
  }

  private static double miss(Outcome outcome) {
    return outcome.isMet()
        ? 0
        : outcome.goals().stream()
            .map(Outcome.Reached::goal)
            .mapToDouble(
                g ->
                    g instanceof Goal.Ring ring && ring.isKnown(outcome.set())
                        ? Math.abs(outcome.miss(ring))
                        : Double.MAX_VALUE)
            .min()
            .orElse(Double.MAX_VALUE);
  }
}
