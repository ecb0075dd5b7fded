package facetwright.aim;

import java.util.Arrays;
import java.util.stream.DoubleStream;

/**
 * Looks for the least of all that is off, squared and summed, where that is not off in proportion:
 * a gap is a distance, which has a point at its least, but its square is round there. Each round
 * takes the square for a quadratic form, found by differences, and goes to its least (Newton's
 * method for a minimum, damped where the form is no bowl; textbooks, from memory).
 */
final class Bowl {
  private static final int ROUNDS = 20;

  /** Turned by less, as part of its range, a knob moves no measure past rounding. */
  private static final double LEAST_PART = 1e-7;

  /** How much the step is held back, tried from the first on (Levenberg-Marquardt). */
  private static final double[] DAMPING = {0, 1e-3, 1e-2, 0.1, 1, 10};

  private static final double PART = 1.0 / 128;

  /** A step that takes away a smaller part of the miss is none. */
  private static final double PROGRESS = 1e-3;

  private final Task task;

  Bowl(Task task) {
    this.task = task;
  }

  /** From a design that is known; knobs with steps stay. */
  Point from(Point start) {
    Point here = start;
    double part = PART;
    for (int round = 0; round < ROUNDS; round++) {
      if (task.reached(here) || task.counted().isSpent()) {
        return here;
      }
      Form form = form(here, part);
      Point next = form.isKnown() ? down(here, form) : here;
      if (next == here && part < PART / 100) {
        return here;
      }
      // Nearer to the least the form has to be found from nearer by.
      part = next == here ? part / 16 : Math.min(part, task.distance(next.x(), here.x()) / 2);
      part = Math.max(part, LEAST_PART);
      here = next;
    }
    return here;
  }

  /** The least of the form, or nearer where that is not less; else stays. */
  private Point down(Point here, Form form) {
    double size = form.bends().map(Math::abs).reduce(Double.MIN_NORMAL, Math::max);
    for (double damping : DAMPING) {
      double[] x = here.x();
      double[][] damped = Arrays.stream(form.bend).map(double[]::clone).toArray(double[][]::new);
      for (int i = 0; i < x.length; i++) {
        damped[i][i] += damping * size;
      }
      double[] change = LeastNorm.solve(damped, form.slope);
      for (int i = 0; i < x.length; i++) {
        x[i] -= change[i] * form.h[i];
      }
      Point there = task.at(x);
      if (there.miss() < here.miss() * (1 - PROGRESS)) {
        return there;
      }
    }
    return here;
  }

  /** The square near a place, as a quadratic form of the distances counted in {@code h}. */
  private static final class Form {
    private final double[] h;
    private final double[] slope;
    private final double[][] bend;

    Form(double[] h, double[] slope, double[][] bend) {
      this.h = h;
      this.slope = slope;
      this.bend = bend;
    }

    DoubleStream bends() {
      return Arrays.stream(bend).flatMapToDouble(Arrays::stream);
    }

    boolean isKnown() {
      return DoubleStream.concat(Arrays.stream(slope), bends()).allMatch(Double::isFinite);
    }
  }

  private Form form(Point here, double part) {
    int n = task.size();
    double[] h = new double[n];
    for (int i = 0; i < n; i++) {
      Knob knob = task.knob(i);
      h[i] = knob.isStepped() ? 0 : part * knob.range();
    }
    double mid = square(here);
    double[] slope = new double[n];
    double[][] bend = new double[n][n];
    double[] up = new double[n];
    for (int i = 0; i < n; i++) {
      if (h[i] == 0) {
        continue;
      }
      Knob knob = task.knob(i);
      // At an end, toward the inside: up and down change places where up leaves the range.
      h[i] = here.x(i) + h[i] > knob.to() ? -h[i] : h[i];
      boolean narrow = here.x(i) - h[i] < knob.from() || here.x(i) - h[i] > knob.to();
      up[i] = square(moved(here, i, h[i], i, 0));
      double other = square(moved(here, i, narrow ? 2 * h[i] : -h[i], i, 0));
      slope[i] = narrow ? (4 * up[i] - 3 * mid - other) / 2 : (up[i] - other) / 2;
      bend[i][i] = narrow ? mid - 2 * up[i] + other : up[i] - 2 * mid + other;
    }
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < i; j++) {
        if (h[i] != 0 && h[j] != 0) {
          double both = square(moved(here, i, h[i], j, h[j]));
          bend[i][j] = both - up[i] - up[j] + mid;
          bend[j][i] = bend[i][j];
        }
      }
    }
    return new Form(h, slope, bend);
  }

  private Point moved(Point here, int i, double by, int j, double also) {
    double[] x = here.x();
    x[i] += by;
    x[j] += also;
    return task.at(x);
  }

  private static double square(Point p) {
    return p.miss() * p.miss();
  }
}
