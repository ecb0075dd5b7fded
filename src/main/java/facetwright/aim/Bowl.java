package facetwright.aim;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * Looks for the least of all that is off, squared and summed, where that is not off in proportion:
 * a gap is a distance, which has a point at its least, but its square is round there. Each round
 * takes the square for a quadratic form, found by differences, and goes to its least (Newton's
 * method for a minimum, damped where the form is no bowl; textbooks, from memory).
 */
final class Bowl {
  private static final int ROUNDS = 20;
  private static final double[] DAMPING = {0, 1e-3, 1e-2, 0.1, 1, 10};
  private static final double PART = 1.0 / 128;
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
      part = Math.max(part, 1e-7);
      here = next;
    }
    return here;
  }

  /** The least of the form, or nearer where that is not less; else stays. */
  private Point down(Point here, Form form) {
    double size = Math.max(CommonOps_DDRM.elementMaxAbs(form.bend), Double.MIN_NORMAL);
    for (double damping : DAMPING) {
      double[] x = here.x();
      DMatrixRMaj damped = form.bend.copy();
      for (int i = 0; i < x.length; i++) {
        damped.add(i, i, damping * size);
      }
      DMatrixRMaj inverse = new DMatrixRMaj(x.length, x.length);
      CommonOps_DDRM.pinv(damped, inverse);
      DMatrixRMaj change = new DMatrixRMaj(x.length, 1);
      CommonOps_DDRM.mult(inverse, form.slope, change);
      for (int i = 0; i < x.length; i++) {
        x[i] -= change.get(i, 0) * form.h[i];
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
    private final DMatrixRMaj slope;
    private final DMatrixRMaj bend;

    Form(double[] h, DMatrixRMaj slope, DMatrixRMaj bend) {
      this.h = h;
      this.slope = slope;
      this.bend = bend;
    }

    boolean isKnown() {
      return Double.isFinite(CommonOps_DDRM.elementSumAbs(slope))
          && Double.isFinite(CommonOps_DDRM.elementSumAbs(bend));
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
    DMatrixRMaj slope = new DMatrixRMaj(n, 1);
    DMatrixRMaj bend = new DMatrixRMaj(n, n);
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
      slope.set(i, 0, narrow ? (4 * up[i] - 3 * mid - other) / 2 : (up[i] - other) / 2);
      bend.set(i, i, narrow ? mid - 2 * up[i] + other : up[i] - 2 * mid + other);
    }
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < i; j++) {
        if (h[i] != 0 && h[j] != 0) {
          double both = square(moved(here, i, h[i], j, h[j]));
          bend.set(i, j, both - up[i] - up[j] + mid);
          bend.set(j, i, both - up[i] - up[j] + mid);
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
