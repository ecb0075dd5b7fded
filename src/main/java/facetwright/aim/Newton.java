package facetwright.aim;

import facetwright.geom.RoundOff;
import java.util.stream.IntStream;

/**
 * Turns several knobs at once until the measures are what is wanted, changing the knobs as little
 * as it can, each against its range: a damped Gauss-Newton search. Each round takes the measures
 * for straight and solves J·d = −r for the least change from where the knobs stood at first
 * (numerical optimisation textbooks, from memory). A knob that would pass its end is held there and
 * the others are reckoned again. With more goals than knobs it ends at the least sum of squares.
 */
final class Newton {
  private static final int ROUNDS = 12;
  private static final int HALVINGS = 5;

  /** Which part of its range a knob is turned for a slope. */
  static final double STEP = 1e-4;

  /** A step that takes away a smaller part of the miss is none. */
  private static final double PROGRESS = 1e-3;

  private final Task task;
  private final double[] home;
  private final boolean[] held;

  /**
   * @param home where the knobs stood at first
   * @param held knobs that may not be turned
   */
  Newton(Task task, double[] home, boolean[] held) {
    this.task = task;
    this.home = home;
    this.held = held;
  }

  Point from(double[] start) {
    Point here = task.at(start);
    for (int round = 0; round < ROUNDS; round++) {
      if (!here.isKnown(task.reaches().size()) || task.reached(here)) {
        return here;
      }
      Point next = down(here, target(here, slopes(here)));
      if (next == here) {
        return here;
      }
      here = next;
    }
    return here;
  }

  /** Toward the target, or part of the way, to where less is off; else stays. */
  private Point down(Point here, double[] target) {
    double part = 1;
    for (int n = 0; n < HALVINGS; n++) {
      double[] x = here.x();
      for (int i = 0; i < x.length; i++) {
        x[i] += part * (target[i] - x[i]);
      }
      Point there = task.at(x);
      if (there.miss() < here.miss() * (1 - PROGRESS * part)) {
        return there;
      }
      part /= 2;
    }
    return here;
  }

  /** For each goal and knob the slope of what is off, by differences; 0 for knobs held. */
  double[][] slopes(Point here) {
    double[][] slopes = new double[task.reaches().size()][task.size()];
    for (int i = 0; i < task.size(); i++) {
      if (held[i]) {
        continue;
      }
      Knob knob = task.knob(i);
      double h = knob.isStepped() ? knob.step() : STEP * knob.range();
      Point there = beside(here, i, knob.isAtEnd(here.x(i)) ? -h : h);
      if (there.isKnown(slopes.length)) {
        for (int g = 0; g < slopes.length; g++) {
          slopes[g][i] = (there.residual(g) - here.residual(g)) / (there.x(i) - here.x(i));
        }
      }
    }
    return slopes;
  }

  private Point beside(Point here, int knob, double h) {
    double[] x = here.x();
    x[knob] += h;
    Point there = task.at(x);
    if (there.isKnown(task.reaches().size()) && there.x(knob) != here.x(knob)) {
      return there;
    }
    x[knob] = here.x(knob) - h;
    Point other = task.at(x);
    boolean moved = other.x(knob) != here.x(knob);
    return moved ? other : new Point(x, new Tried.Refused(""), new double[0]);
  }

  private double[] target(Point here, double[][] slopes) {
    boolean[] fixed = held.clone();
    double[] x = here.x();
    double[] target = x.clone();
    for (int pass = 0; pass <= task.size(); pass++) {
      move(here, slopes, fixed, target);
      int worst = -1;
      double most = RoundOff.PART;
      for (int i = 0; i < target.length; i++) {
        Knob knob = task.knob(i);
        double over = Math.max(knob.from() - target[i], target[i] - knob.last()) / knob.range();
        if (!fixed[i] && over > most) {
          most = over;
          worst = i;
        }
      }
      if (worst < 0) {
        return target;
      }
      fixed[worst] = true;
      target[worst] = task.knob(worst).settle(target[worst]);
    }
    return target;
  }

  /** Reckons the targets of knobs that are not fixed, those of the fixed ones given. */
  private void move(Point here, double[][] slopes, boolean[] fixed, double[] target) {
    int goals = slopes.length;
    int[] free = IntStream.range(0, fixed.length).filter(i -> !fixed[i]).toArray();
    if (free.length == 0) {
      return;
    }
    double[][] matrix = new double[goals][free.length];
    double[] right = new double[goals];
    for (int g = 0; g < goals; g++) {
      double rest = -here.residual(g);
      for (int i = 0; i < fixed.length; i++) {
        double from = fixed[i] ? target[i] : home[i];
        rest -= slopes[g][i] * (from - here.x(i));
      }
      right[g] = rest;
      for (int f = 0; f < free.length; f++) {
        matrix[g][f] = slopes[g][free[f]] * task.knob(free[f]).range();
      }
    }
    double[] change = LeastNorm.solve(matrix, right);
    for (int f = 0; f < free.length; f++) {
      target[free[f]] = home[free[f]] + change[f] * task.knob(free[f]).range();
    }
  }

  /** Nothing held. */
  static boolean[] allFree(Task task) {
    return new boolean[task.size()];
  }

  /** Knobs with steps held. */
  static boolean[] steppedHeld(Task task) {
    boolean[] held = new boolean[task.size()];
    for (int i = 0; i < held.length; i++) {
      held[i] = task.knob(i).isStepped();
    }
    return held;
  }
}
