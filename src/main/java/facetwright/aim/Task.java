package facetwright.aim;

import java.util.ArrayList;
import java.util.List;

/** The question being solved: which knobs, which goals, and the trials made for it so far. */
final class Task {
  private final List<Knob> knobs;
  private final List<Goal.Value> reaches = new ArrayList<>();
  private final List<Goal.Fit> fits = new ArrayList<>();
  private final Counted counted;

  Task(List<Knob> knobs, List<Goal> goals, Counted counted) {
    this.knobs = List.copyOf(knobs);
    this.counted = counted;
    for (Goal goal : goals) {
      switch (goal) {
        case Goal.Value value -> reaches.add(value);
        case Goal.Fit fit -> fits.add(fit);
      }
    }
  }

  List<Knob> knobs() {
    return knobs;
  }

  Knob knob(int i) {
    return knobs.get(i);
  }

  int size() {
    return knobs.size();
  }

  List<Goal.Value> reaches() {
    return reaches;
  }

  List<Goal.Fit> fits() {
    return fits;
  }

  Counted counted() {
    return counted;
  }

  double[] now() {
    return knobs.stream().mapToDouble(Knob::now).toArray();
  }

  /** The design nearest to these values that the knobs allow. */
  Point at(double[] values) {
    double[] x = new double[size()];
    for (int i = 0; i < x.length; i++) {
      x[i] = knob(i).settle(values[i]);
    }
    return exactly(x);
  }

  /** The design at these very values. */
  Point exactly(double[] x) {
    Tried tried = counted.at(x);
    boolean known = tried instanceof Measured m && reaches.stream().allMatch(r -> r.isKnown(m));
    if (!known) {
      Tried refused =
          tried instanceof Measured ? new Tried.Refused("its angles are left open") : tried;
      return new Point(x, refused, new double[0]);
    }
    Measured measured = (Measured) tried;
    double[] residuals = reaches.stream().mapToDouble(r -> r.off(measured) / r.scale()).toArray();
    return new Point(x, tried, residuals);
  }

  /** Whether every measure wanted is reached. */
  boolean reached(Point p) {
    if (!p.isKnown(reaches.size())) {
      return false;
    }
    for (int g = 0; g < reaches.size(); g++) {
      Goal.Value goal = reaches.get(g);
      if (Math.abs(p.residual(g)) * goal.scale() > goal.tolerance()) {
        return false;
      }
    }
    return true;
  }

  /** Whether the net fits every sheet wanted. */
  boolean fits(Point p) {
    return p.tried() instanceof Measured m
        && fits.stream().allMatch(f -> m.lie().apply(f.sheet()).fits());
  }

  /** The one that is less far off; of equals the first. */
  static Point better(Point a, Point b) {
    return b.miss() < a.miss() ? b : a;
  }

  /** How far apart two places are, each knob against its range. */
  double distance(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      double d = (a[i] - b[i]) / knob(i).range();
      sum += d * d;
    }
    return Math.sqrt(sum);
  }
}
