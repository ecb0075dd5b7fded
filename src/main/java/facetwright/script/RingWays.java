package facetwright.script;

import facetwright.aim.Goal;
import facetwright.aim.Outcome;
import facetwright.fold.pose.Closure;
import facetwright.geom.RingCount;
import facetwright.papers.ring.Rings;
import facetwright.script.design.Design;
import java.util.ArrayList;
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
    if (design.folded().closure() == Closure.NOT_SOLVED) {
      return List.of();
    }
    Rings rings = Rings.of(design.net(), design.folded());
    return (ring.standing() ? rings.standing() : rings).ways(ring.count());
  }

  /**
   * The outcome with its rings as they are planned at the values set, by whichever sides that is: a
   * ring is met just where the plan puts nothing between.
   */
  static Outcome asPlanned(Outcome outcome, List<Goal> goals) {
    List<Outcome.Reached> reached = new ArrayList<>();
    for (int i = 0; i < goals.size(); i++) {
      Outcome.Status status = outcome.goals().get(i).status();
      reached.add(
          new Outcome.Reached(
              goals.get(i),
              goals.get(i) instanceof Goal.Ring ring && ring.isKnown(outcome.set())
                  ? RingCount.isForgiven(outcome.miss(ring))
                      ? Outcome.Status.MET
                      : status == Outcome.Status.MET ? Outcome.Status.OFF_MARKS : status
                  : status));
    }
    return outcome.with(reached);
  }

  /** Whether rings seat flush at the values set. */
  static boolean isMet(Outcome outcome) {
    return outcome.goals().stream()
        .allMatch(
            g ->
                !(g.goal() instanceof Goal.Ring ring)
                    || (ring.isKnown(outcome.set()) && RingCount.isForgiven(outcome.miss(ring))));
  }

  /** Whether an outcome misses its ring by less. */
  static boolean isNearer(Outcome outcome, Outcome than) {
    return miss(outcome) < miss(than);
  }

  private static double miss(Outcome outcome) {
    return outcome.goals().stream()
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
