package facetwright.aim;

import facetwright.geom.RoundOff;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Why goals are or are not reached where a search ended. */
final class Reasons {
  /** Places nearer than this part of the range can't be told apart by their numbers. */
  private static final double ASIDE = 1e-3;

  /** Turning a knob by its range should take away at least this part of what is off. */
  private static final double PULL = 1e-3;

  private Reasons() {}

  /** How a goal fares at the place where the search ended. */
  static Outcome.Status status(Task task, Point exact, Goal goal) {
    boolean met =
        switch (goal) {
          case Goal.Value value ->
              value.isKnown((Measured) exact.tried())
                  && Math.abs(value.of((Measured) exact.tried()) - value.wanted())
                      <= value.tolerance();
          case Goal.Fit fit -> ((Measured) exact.tried()).lie().apply(fit.sheet()).fits();
        };
    return met
        ? Outcome.Status.MET
        : someKnobChanges(task, goal) ? Outcome.Status.NEAREST : Outcome.Status.NO_DIAL;
  }

  /** Whether turning any knob to either of its ends changes what the goal looks at. */
  private static boolean someKnobChanges(Task task, Goal goal) {
    Measured now = (Measured) task.at(task.now()).tried();
    for (int i = 0; i < task.size(); i++) {
      for (double end : new double[] {task.knob(i).from(), task.knob(i).to()}) {
        double[] x = task.now();
        x[i] = end;
        if (!(task.at(x).tried() instanceof Measured there)) {
          return true;
        }
        if (isChanged(goal, now, there)) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean isChanged(Goal goal, Measured now, Measured there) {
    return switch (goal) {
      case Goal.Value value ->
          value.isKnown(now) != value.isKnown(there)
              || (value.isKnown(now) && isChanged(value.of(now), value.of(there)));
      case Goal.Fit _ ->
          List.of(Measure.NET_WIDTH, Measure.NET_HEIGHT).stream()
              .anyMatch(m -> !there.knows(m) || isChanged(now.get(m), there.get(m)));
    };
  }

  private static boolean isChanged(double now, double there) {
    return Math.abs(there - now) > RoundOff.PART * Math.max(1, Math.abs(now));
  }

  /** What the script says against going on from where it ends, unless all is reached. */
  static String hurdle(Task task, Point exact) {
    if (task.reached(exact) && task.fits(exact)) {
      return "";
    }
    return task.counted()
        .nearest(
            place -> onSteps(task, place) && task.distance(place, exact.x()) >= ASIDE,
            place -> task.distance(place, exact.x()))
        .map(
            r ->
                IntStream.range(0, task.size())
                        .filter(i -> r.values().get(i) != exact.x(i))
                        .mapToObj(i -> task.knob(i).name() + " " + Knob.text(r.values().get(i)))
                        .collect(Collectors.joining(" and "))
                    + ": "
                    + r.why())
        .orElse("");
  }

  private static boolean onSteps(Task task, double[] place) {
    return IntStream.range(0, place.length)
        .allMatch(i -> Math.abs(task.knob(i).settle(place[i]) - place[i]) <= RoundOff.PART);
  }

  /** The knobs at an end beyond which it would go on getting better. */
  static List<Outcome.Stop> stops(Task task, Point exact) {
    List<Outcome.Stop> stops = new ArrayList<>();
    boolean reached = task.reached(exact);
    if (reached && task.fits(exact)) {
      return stops;
    }
    double[][] slopes = new Newton(task, task.now(), Newton.allFree(task)).slopes(exact);
    for (int i = 0; i < task.size(); i++) {
      double pull = 0;
      for (int g = 0; g < slopes.length; g++) {
        pull += exact.residual(g) * slopes[g][i];
      }
      double much = PULL * exact.miss() * exact.miss() / task.knob(i).range();
      boolean low = task.knob(i).isAtStart(exact.x(i)) && (reached || pull > much);
      boolean high = task.knob(i).isAtEnd(exact.x(i)) && !reached && pull < -much;
      if (low || high) {
        stops.add(new Outcome.Stop(task.knob(i), exact.x(i), high));
      }
    }
    return stops;
  }
}
