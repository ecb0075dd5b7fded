package facetwright.aim;

import facetwright.geom.RoundOff;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds the slopes of one knob by differences.
 *
 * <p>A knob with steps is turned up by one, or at its upper end down by one: that is what its slope
 * tells, with how much the step the other way differs.
 *
 * <p>A knob without steps is tried at two distances h and h/2, on both sides or, at its end, on the
 * one side it has. Both estimates together give a better one (Richardson's extrapolation: for
 * differences whose error goes with h², the better one is (4·D(h/2) − D(h))/3; numerical analysis
 * textbooks, from memory); how far it lies from D(h/2) is the error told. Where the slopes on the
 * two sides differ by as much at h/2 as at h, the measure has a bend here and half the difference
 * is told.
 */
final class SlopeFinder {
  /** Which part of its range a knob is turned. */
  static final double PART = 1.0 / 1024;

  /** The part of a measure that rounding and folding leave unsure. */
  private static final double NOISE = 1e-12;

  private static final double SHRINKS = 0.75;

  /** A slope that changes by less, as a part, is straight. */
  private static final double BEND = RoundOff.SOLVED;

  private final Knob knob;
  private final int index;
  private final double[] here;
  private final Counted counted;

  SlopeFinder(Knob knob, int index, double[] here, Counted counted) {
    this.knob = knob;
    this.index = index;
    this.here = here;
    this.counted = counted;
  }

  List<Slope> find() {
    double h = knob.isStepped() ? knob.step() : knob.range() * PART;
    boolean up = knob.to() - knob.now() >= h * (1 - RoundOff.PART);
    boolean down = knob.now() - knob.from() >= h * (1 - RoundOff.PART);
    List<Slope> found = up && down ? twoSided(h) : List.of();
    if (found.isEmpty() && up) {
      found = oneSided(h);
    }
    return found.isEmpty() && down ? oneSided(-h) : found;
  }

  private Tried at(double distance) {
    double[] there = here.clone();
    there[index] = knob.settle(here[index] + distance);
    return counted.at(there);
  }

  private List<Slope> twoSided(double h) {
    if (!(at(0) instanceof Measured mid
        && at(h) instanceof Measured above
        && at(-h) instanceof Measured below)) {
      return List.of();
    }
    List<Slope> found = new ArrayList<>();
    if (knob.isStepped()) {
      for (Measure m : known(mid, above, below)) {
        double rise = above.get(m) - mid.get(m);
        double fall = mid.get(m) - below.get(m);
        found.add(new Slope(m, rise, Math.abs(rise - fall)));
      }
      return found;
    }
    if (!(at(h / 2) instanceof Measured nearAbove && at(-h / 2) instanceof Measured nearBelow)) {
      return List.of();
    }
    for (Measure m : known(mid, above, below, nearAbove, nearBelow)) {
      double wide = (above.get(m) - below.get(m)) / (2 * h);
      double near = (nearAbove.get(m) - nearBelow.get(m)) / h;
      double wideBend = (above.get(m) - 2 * mid.get(m) + below.get(m)) / h;
      double nearBend = (nearAbove.get(m) - 2 * mid.get(m) + nearBelow.get(m)) / (h / 2);
      Slope slope = better(m, wide, near, mid.get(m), h);
      boolean bends =
          Math.abs(nearBend) > SHRINKS * Math.abs(wideBend)
              && Math.abs(nearBend) > BEND * Math.max(1, Math.abs(slope.value()));
      found.add(
          bends
              ? new Slope(m, slope.value(), Math.max(slope.error(), Math.abs(nearBend) / 2))
              : slope);
    }
    return found;
  }

  /** For h below 0 downward. */
  private List<Slope> oneSided(double h) {
    double far = knob.isStepped() || fits(2 * h) ? 2 * h : h;
    if (!(at(0) instanceof Measured start && at(far / 2) instanceof Measured middle)) {
      return List.of();
    }
    List<Slope> found = new ArrayList<>();
    if (knob.isStepped()) {
      Tried next = fits(far) ? at(far) : new Tried.Refused("");
      double sign = Math.signum(h);
      for (Measure m : known(start, middle)) {
        double one = sign * (middle.get(m) - start.get(m));
        boolean more = next instanceof Measured end && end.knows(m);
        double two = more ? sign * (((Measured) next).get(m) - middle.get(m)) : 0;
        found.add(new Slope(m, one, more ? Math.abs(two - one) : Math.abs(one)));
      }
      return found;
    }
    if (!(at(far) instanceof Measured end && at(far / 4) instanceof Measured quarter)) {
      return List.of();
    }
    for (Measure m : known(start, middle, end, quarter)) {
      double wide = three(start.get(m), middle.get(m), end.get(m), far / 2);
      double near = three(start.get(m), quarter.get(m), middle.get(m), far / 4);
      found.add(better(m, wide, near, start.get(m), far / 2));
    }
    return found;
  }

  private boolean fits(double distance) {
    double there = here[index] + distance;
    return there >= knob.from() - RoundOff.PART && there <= knob.to() + RoundOff.PART;
  }

  /** The slope at the first of three values a distance apart. */
  private static double three(double a, double b, double c, double distance) {
    return (-3 * a + 4 * b - c) / (2 * distance);
  }

  private static Slope better(Measure m, double wide, double near, double value, double h) {
    double best = (4 * near - wide) / 3;
    double rounding = NOISE * Math.max(1, Math.abs(value)) / Math.abs(h);
    return new Slope(m, best, Math.max(Math.abs(best - near), rounding));
  }

  private static List<Measure> known(Measured... all) {
    List<Measure> known = new ArrayList<>();
    for (Measure m : Measure.values()) {
      boolean everywhere = true;
      for (Measured one : all) {
        everywhere &= one.knows(m);
      }
      if (everywhere) {
        known.add(m);
      }
    }
    return known;
  }
}
