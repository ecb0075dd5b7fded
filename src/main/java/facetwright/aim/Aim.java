package facetwright.aim;

import facetwright.geom.RoundOff;
import facetwright.measure.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Goals and the knobs that may be turned for them. Measures come first to their exact values, the
 * knobs changed as little as that needs, each against its range; then the knobs are put onto marks
 * that can be set. A net that should fit a sheet is made as large as fits.
 *
 * <p>What it does not promise: where a measure wavers, that the answer is the one with the least
 * change; where it jumps, that it is found at all. It never claims a goal met that the design at
 * the answer does not meet.
 *
 * @param goals at least one
 * @param knobs at least one
 * @param grid the ruler that knobs are set by
 * @param unit what the knobs' numbers count
 * @param most so many designs are made at most, over 0
 */
public record Aim(List<Goal> goals, List<Knob> knobs, Grid grid, Unit unit, int most) {
  /** Plenty for a person who waits for it. */
  public static final int USUAL_MOST = 240;

  /** Several goals at once may be met in several places, some of them out of reach. */
  private static final int SPREAD = 8;

  private static final int[] PRIMES = {2, 3, 5, 7, 11, 13};

  /**
   * @throws IllegalArgumentException when there is no goal, no knob or no trial
   */
  public Aim {
    goals = List.copyOf(goals);
    knobs = List.copyOf(knobs);
    if (goals.isEmpty() || knobs.isEmpty() || most < 1) {
      throw new IllegalArgumentException("an aim needs a goal, a knob and a trial");
    }
  }

  /**
   * Solves for the knobs.
   *
   * @param now what the design measures with each knob where it stands
   * @param trial makes it with the knobs elsewhere
   */
  public Outcome solve(Measured now, Trial trial) {
    Counted counted = new Counted(trial, most - most / 4);
    counted.learn(knobs.stream().mapToDouble(Knob::now).toArray(), now);
    Task task = new Task(Whole.found(knobs, counted, Newton.STEP), goals, counted);
    if (!task.at(task.now()).isKnown(task.reaches().size())) {
      return unknown(now);
    }
    Point exact =
        task.fits().isEmpty()
            ? meet(task, task.now())
            : new LargestFit(task, home -> meet(task, home)).find();
    if (!(exact.tried() instanceof Measured)) {
      exact = task.at(task.now());
    }
    if (!task.reached(exact)) {
      exact = withoutNeedlessTurns(task, exact);
    }
    counted.allow(most);
    List<Divisions> marks = task.knobs().stream().map(k -> Divisions.of(k, grid, unit)).toList();
    Point set = new OnGrid(task, marks).near(exact);
    List<Outcome.Reached> reached = new ArrayList<>();
    for (Goal goal : goals) {
      reached.add(new Outcome.Reached(goal, Reasons.status(task, exact, goal)));
    }
    List<Outcome.Turn> turns = new ArrayList<>();
    for (int i = 0; i < knobs.size(); i++) {
      String typed = marks.get(i).typed(set.x(i));
      String was = marks.get(i).typed(knobs.get(i).now());
      turns.add(new Outcome.Turn(knobs.get(i), was, exact.x(i), set.x(i), typed));
    }
    return new Outcome(
        unit,
        turns,
        reached,
        Reasons.stops(task, exact),
        Reasons.hurdle(task, exact),
        (Measured) exact.tried(),
        (Measured) set.tried(),
        counted.count(),
        counted.isSpent());
  }

  /** Knobs that might as well have stayed where they stood are put back. */
  private static Point withoutNeedlessTurns(Task task, Point found) {
    Point best = found;
    for (int i = 0; i < task.size(); i++) {
      double[] x = best.x();
      x[i] = task.knob(i).now();
      Point back = task.at(x);
      if (back.miss() <= best.miss() * (1 + RoundOff.PART) && task.fits(back) == task.fits(best)) {
        best = back;
      }
    }
    return best;
  }

  private Outcome unknown(Measured now) {
    List<Outcome.Reached> all = new ArrayList<>();
    for (Goal goal : goals) {
      boolean known = !(goal instanceof Goal.Value v) || v.isKnown(now);
      all.add(new Outcome.Reached(goal, known ? Outcome.Status.NEAREST : Outcome.Status.NOT_KNOWN));
    }
    List<Outcome.Turn> turns =
        knobs.stream().map(k -> new Outcome.Turn(k, typed(k), k.now(), k.now(), typed(k))).toList();
    return new Outcome(unit, turns, all, List.of(), "", now, now, 0, false);
  }

  private String typed(Knob knob) {
    return grid.typed(knob, unit, knob.now());
  }

  /** The design nearest to {@code home} that has the measures wanted, or comes near to them. */
  private static Point meet(Task task, double[] home) {
    if (task.reaches().isEmpty()) {
      return task.at(home);
    }
    boolean one = task.size() == 1;
    boolean stepped = task.knobs().stream().anyMatch(Knob::isStepped);
    if (one && stepped && task.knob(0).steps() <= OneKnob.EACH) {
      return new OneKnob(task).eachStep();
    }
    Point best = search(task, home, home);
    if (task.reached(best)) {
      return best;
    }
    if (one && !stepped) {
      return Task.better(best, new OneKnob(task).overItsRange());
    }
    boolean gap =
        task.reaches().stream()
            .anyMatch(v -> v instanceof Goal.Reach r && r.measure() == Measure.GAP);
    if (gap && best.isKnown(task.reaches().size())) {
      best = new Bowl(task).from(best);
    }
    if (task.reached(best)) {
      return best;
    }
    for (double[] start : starts(task, home)) {
      Point found = search(task, home, start);
      best = Task.better(best, found);
      if (task.reached(best) || task.counted().isSpent()) {
        return best;
      }
    }
    return best;
  }

  /** Knobs with steps find their place first; then the others make up for the rounding. */
  private static Point search(Task task, double[] home, double[] start) {
    Point all = new Newton(task, home, Newton.allFree(task)).from(start);
    boolean[] held = Newton.steppedHeld(task);
    boolean someHeld = false;
    boolean someFree = false;
    for (boolean h : held) {
      someHeld |= h;
      someFree |= !h;
    }
    if (task.reached(all) || !someHeld || !someFree) {
      return all;
    }
    return Task.better(all, new Newton(task, home, held).from(all.x()));
  }

  private static List<double[]> starts(Task task, double[] home) {
    List<double[]> starts = new ArrayList<>();
    for (int i = 0; i < task.size(); i++) {
      if (task.knob(i).isStepped()) {
        for (double side : new double[] {1, -1, 2, -2}) {
          double[] x = home.clone();
          x[i] = task.knob(i).settle(x[i] + side * task.knob(i).step());
          starts.add(x);
        }
      }
    }
    for (double part : new double[] {0.5, 0, 1}) {
      starts.add(inside(task, _ -> part));
    }
    if (task.reaches().size() > 1) {
      for (int n = 1; n <= SPREAD; n++) {
        int at = n;
        starts.add(inside(task, i -> mirrored(at, PRIMES[i % PRIMES.length])));
      }
    }
    return starts;
  }

  private static double[] inside(Task task, IntToDoubleFunction part) {
    return IntStream.range(0, task.size())
        .mapToDouble(i -> task.knob(i).from() + part.applyAsDouble(i) * task.knob(i).range())
        .toArray();
  }

  /**
   * A number's digits behind the point in reverse order: places spread evenly over 0 to 1 (Halton's
   * sequence, from memory).
   */
  private static double mirrored(int number, int base) {
    double value = 0;
    double digit = 1.0 / base;
    for (int rest = number; rest > 0; rest /= base) {
      value += rest % base * digit;
      digit /= base;
    }
    return value;
  }
}
