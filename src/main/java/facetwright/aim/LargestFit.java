package facetwright.aim;

import java.util.function.Function;

/**
 * Scales all knobs in the proportion in which they stand, each as far as its ends allow, to the
 * largest design whose net fits. Sizes from the largest down are looked over first, so that it is
 * the largest also where a larger net happens to lie better than a smaller one, as far as the look
 * is fine enough.
 */
final class LargestFit {
  /** Nothing shrinks to a smaller part of itself. */
  private static final double LEAST_SCALE = 1e-3;

  private static final int SIZES = 12;
  private static final int HALVINGS = 14;

  private final Task task;
  private final Function<double[], Point> meet;

  /**
   * @param meet finds the design nearest to given values that has the measures wanted
   */
  LargestFit(Task task, Function<double[], Point> meet) {
    this.task = task;
    this.meet = meet;
  }

  /** The largest that fits, or the smallest tried where none does. */
  Point find() {
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (Knob knob : task.knobs()) {
      if (knob.now() > 0) {
        least = Math.min(least, Math.max(knob.from() / knob.now(), LEAST_SCALE));
        most = Math.max(most, knob.to() / knob.now());
      }
    }
    if (most == 0) {
      return scaled(1);
    }
    return task.reaches().isEmpty() ? from(most, least) : nearest(most, least);
  }

  /** With measures to keep, the design as it stands if that fits, else the nearest that does. */
  private Point nearest(double most, double least) {
    Point now = scaled(1);
    if (good(now)) {
      return now;
    }
    Point smaller = least < 1 ? from(1, least) : now;
    if (good(smaller)) {
      return smaller;
    }
    Point larger = most > 1 ? from(1, most) : now;
    return good(larger) ? larger : Task.better(Task.better(now, smaller), larger);
  }

  /** From the one size toward the other, the first that fits, made as near to the one as fits. */
  private Point from(double start, double end) {
    double ratio = Math.pow(end / start, 1.0 / SIZES);
    double before = start;
    Point last = scaled(start);
    if (good(last)) {
      return last;
    }
    for (int n = 1; n <= SIZES; n++) {
      double size = n == SIZES ? end : start * Math.pow(ratio, n);
      last = scaled(size);
      if (good(last)) {
        return between(size, before, last);
      }
      before = size;
    }
    return last;
  }

  private Point between(double fitting, double not, Point known) {
    double yes = fitting;
    double no = not;
    Point best = known;
    for (int n = 0; n < HALVINGS && !task.counted().isSpent(); n++) {
      double mid = Math.sqrt(yes * no);
      Point there = scaled(mid);
      if (good(there)) {
        yes = mid;
        best = there;
      } else {
        no = mid;
      }
    }
    return best;
  }

  private boolean good(Point p) {
    return task.fits(p) && task.reached(p);
  }

  private Point scaled(double size) {
    double[] x = task.now();
    for (int i = 0; i < x.length; i++) {
      x[i] = x[i] > 0 ? task.knob(i).settle(x[i] * size) : x[i];
    }
    return meet.apply(x);
  }
}
