package facetwright.aim;

import java.util.ArrayList;
import java.util.List;

/**
 * Looks over the whole range of a single knob, for where a plain search got stuck: every step of a
 * knob with few steps; otherwise a row of places, then between two of them that lie on either side
 * of what is wanted by halving, or round the best of them where there are no such two.
 */
final class OneKnob {
  /** A knob with at most so many steps is tried at each. */
  static final int EACH = 64;

  private static final int PLACES = 16;
  private static final int HALVINGS = 48;

  /** Halving stops at this part of the knob's range: rounding is near. */
  private static final double NARROW = 1e-10;

  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  private final Task task;

  OneKnob(Task task) {
    this.task = task;
  }

  /** The best of all steps; of equals the one nearest to where the knob stands. */
  Point eachStep() {
    Knob knob = task.knob(0);
    List<Double> values = new ArrayList<>();
    for (long n = 0; n <= knob.steps(); n++) {
      values.add(knob.settle(knob.from() + n * knob.step()));
    }
    values.sort(java.util.Comparator.comparingDouble(v -> Math.abs(v - knob.now())));
    Point best = at(knob.now());
    for (double v : values) {
      best = Task.better(best, at(v));
    }
    return best;
  }

  Point overItsRange() {
    Knob knob = task.knob(0);
    List<Point> row = new ArrayList<>();
    for (int n = 0; n <= PLACES; n++) {
      row.add(at(knob.from() + knob.range() * n / PLACES));
    }
    int nearest = -1;
    int best = 0;
    for (int n = 0; n < PLACES; n++) {
      boolean crosses = crosses(row.get(n), row.get(n + 1));
      if (crosses && (nearest < 0 || away(row, n) < away(row, nearest))) {
        nearest = n;
      }
    }
    for (int n = 1; n <= PLACES; n++) {
      best = row.get(n).miss() < row.get(best).miss() ? n : best;
    }
    Point between = nearest < 0 ? row.get(best) : halve(row.get(nearest), row.get(nearest + 1));
    return task.reached(between)
        ? between
        : Task.better(
            between, round(row.get(Math.max(0, best - 1)), row.get(Math.min(PLACES, best + 1))));
  }

  private Point at(double value) {
    return task.at(new double[] {value});
  }

  private double away(List<Point> row, int n) {
    return Math.abs((row.get(n).x(0) + row.get(n + 1).x(0)) / 2 - task.knob(0).now());
  }

  private boolean crosses(Point a, Point b) {
    return task.reaches().size() == 1
        && a.isKnown(1)
        && b.isKnown(1)
        && Math.signum(a.residual(0)) * Math.signum(b.residual(0)) <= 0;
  }

  private Point halve(Point low, Point high) {
    Point a = low;
    Point b = high;
    for (int n = 0; n < HALVINGS && !task.reached(Task.better(a, b)); n++) {
      Point mid = at((a.x(0) + b.x(0)) / 2);
      if (!mid.isKnown(1) || Math.abs(b.x(0) - a.x(0)) < NARROW * task.knob(0).range()) {
        break;
      }
      if (crosses(a, mid)) {
        b = mid;
      } else {
        a = mid;
      }
    }
    return Task.better(a, b);
  }

  /** The least between two places, by the golden section (textbook method, from memory). */
  private Point round(Point low, Point high) {
    double a = low.x(0);
    double b = high.x(0);
    Point left = at(b - GOLDEN * (b - a));
    Point right = at(a + GOLDEN * (b - a));
    for (int n = 0; n < HALVINGS && b - a > NARROW * task.knob(0).range(); n++) {
      if (task.counted().isSpent()) {
        break;
      }
      if (left.miss() <= right.miss()) {
        b = right.x(0);
        right = left;
        left = at(b - GOLDEN * (b - a));
      } else {
        a = left.x(0);
        left = right;
        right = at(a + GOLDEN * (b - a));
      }
      if (task.reached(Task.better(left, right))) {
        break;
      }
    }
    return Task.better(Task.better(low, high), Task.better(left, right));
  }
}
