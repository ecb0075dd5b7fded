package facetwright.adjust.round;

import facetwright.aim.Knob;
import facetwright.geom.LengthTolerance;
import facetwright.geom.SteadyOrder;
import facetwright.papers.chart.Measure;
import facetwright.script.sandbox.ScriptException;
import facetwright.words.Decimals;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Turns dials by as little as it takes to put measures onto marks, one measure after another, as
 * many as there are dials to turn. Measures on marks already stay there. Turns are reckoned by the
 * slopes of the measures: each further measure is moved only across what the earlier ones leave
 * free (Gram-Schmidt; linear algebra textbooks, from memory), then all are brought home together by
 * Newton's method.
 *
 * <p>Measures of the form come before those of cuts, and what is nearest to a mark before the rest;
 * of measures as near as each other the one that the net lists first.
 */
final class ProjectedNewton {
  /** So far a dial is turned to see which way its measures go. */
  private static final LengthTolerance ASIDE = LengthTolerance.UNSEEN;

  /** What lies so near a mark is on it: a five-hundredth of what a chart counts as on it. */
  private static final LengthTolerance HOME = new LengthTolerance(1e-5);

  /** The part of a direction under which nothing of it is left free. */
  private static final double FREE = 1e-4;

  private static final int ROUNDS = 4;

  /** A measure that changes by more, in mm, for so small a turn is another one: the net changed. */
  private static final double LEAP_MM = 100 * ASIDE.mm();

  /** Values are typed to a millionth of the design's unit. */
  private static final int TYPED = 6;

  private final Drafts drafts;
  private final Stops stops;
  private final List<Integer> free;

  ProjectedNewton(Drafts drafts, Stops stops) {
    this.drafts = drafts;
    this.stops = stops;
    this.free =
        IntStream.range(0, drafts.knobs().size())
            .filter(i -> !drafts.knobs().get(i).isStepped() && drafts.knobs().get(i).now() != 0)
            .boxed()
            .toList();
  }

  /** A measure and the mark it should come to, in mm. */
  private record Wanted(int measure, double mm) {}

  /** The draft with more measures on marks, if the dials' reach allows one. */
  Optional<Draft> from(Draft start) throws ScriptException {
    double[] x = values(start);
    double[][] slopes = slopes(x, start.raw());
    if (slopes.length == 0) {
      return Optional.empty();
    }
    List<Wanted> wanted = wanted(start, x, slopes);
    if (wanted.isEmpty()) {
      return Optional.empty();
    }
    for (int round = 0; round < ROUNDS; round++) {
      Optional<Draft> here = at(x);
      if (here.isEmpty() || here.get().raw().length != slopes.length) {
        return Optional.empty();
      }
      double[] raw = here.get().raw();
      double worst =
          wanted.stream().mapToDouble(w -> Math.abs(w.mm - raw[w.measure])).max().orElse(0);
      if (worst <= HOME.mm()) {
        return typed(x, values(start));
      }
      if (round > 0) {
        slopes = slopes(x, raw);
        if (slopes.length == 0) {
          return Optional.empty();
        }
      }
      double[] turn = turn(wanted, slopes, raw);
      for (int i = 0; i < x.length; i++) {
        x[i] += turn[i];
        if (!stops.reaches(drafts.knobs().get(i), x[i])) {
          return Optional.empty();
        }
      }
    }
    return typed(x, values(start));
  }

  /** Dials that are not turned after all keep their very value. */
  private Optional<Draft> typed(double[] x, double[] start) throws ScriptException {
    List<Double> values = new ArrayList<>();
    for (int i = 0; i < x.length; i++) {
      boolean stays = Math.abs(x[i] - start[i]) * drafts.unitMm() <= HOME.mm();
      values.add(stays ? start[i] : Double.valueOf(Decimals.places(x[i], TYPED)));
    }
    return drafts.at(values);
  }

  private double[] values(Draft draft) {
    return drafts.knobs().stream().mapToDouble(k -> draft.dials().get(k.name())).toArray();
  }

  private Optional<Draft> at(double[] x) throws ScriptException {
    return drafts.at(java.util.Arrays.stream(x).boxed().toList());
  }

  /** For each measure and free dial, by how much it grows; none where measures come and go. */
  private double[][] slopes(double[] x, double[] raw) throws ScriptException {
    double[][] slopes = new double[raw.length][free.size()];
    for (int f = 0; f < free.size(); f++) {
      int i = free.get(f);
      Knob knob = drafts.knobs().get(i);
      double aside = ASIDE.mm() / drafts.unitMm();
      aside = x[i] + aside > knob.to() ? -aside : aside;
      double[] there = x.clone();
      there[i] += aside;
      Optional<Draft> beside = at(there);
      if (beside.isEmpty() || beside.get().raw().length != raw.length) {
        return new double[0][0];
      }
      double[] moved = beside.get().raw();
      for (int m = 0; m < raw.length; m++) {
        if (Math.abs(moved[m] - raw[m]) > LEAP_MM) {
          return new double[0][0];
        }
        // By part of the dial's value, so that the least turn is the least part.
        slopes[m][f] = (moved[m] - raw[m]) / aside * Math.abs(knob.now());
      }
    }
    return slopes;
  }

  /** What can be brought onto marks together: what lies on marks already comes first. */
  private List<Wanted> wanted(Draft start, double[] x, double[][] slopes) {
    List<Measure> all = start.toSet().all();
    int form = start.toSet().form().size();
    List<double[]> taken = new ArrayList<>();
    List<Wanted> wanted = new ArrayList<>();
    for (int m = 0; m < all.size(); m++) {
      double[] across = across(slopes[m], taken);
      if (all.get(m).isOnRuler() && across.length > 0) {
        taken.add(unit(across));
        wanted.add(new Wanted(m, all.get(m).reading().length().mm()));
      }
    }
    int held = wanted.size();
    double[] turn = new double[free.size()];
    List<Integer> off =
        SteadyOrder.by(
            IntStream.range(0, all.size()).filter(m -> !all.get(m).isOnRuler()).boxed().toList(),
            LengthTolerance.FINE.mm(),
            m -> Math.abs(all.get(m).reading().errorMm()));
    List<Integer> formFirst =
        off.stream().sorted(Comparator.comparing((Integer m) -> m >= form)).toList();
    for (int m : formFirst) {
      double[] across = across(slopes[m], taken);
      double mark = all.get(m).reading().length().mm();
      double other = mark - Math.signum(mark - all.get(m).mm()) * drafts.ruler().divisionMm();
      for (double to : across.length == 0 ? new double[0] : new double[] {mark, other}) {
        double by = (to - all.get(m).mm() - dot(slopes[m], turn)) / dot(across, across);
        double[] more = plus(turn, across, by);
        if (isWithin(x, more)) {
          turn = more;
          taken.add(unit(across));
          wanted.add(new Wanted(m, to));
          break;
        }
      }
    }
    return wanted.size() == held ? List.of() : wanted;
  }

  private boolean isWithin(double[] x, double[] parts) {
    for (int f = 0; f < parts.length; f++) {
      Knob knob = drafts.knobs().get(free.get(f));
      if (!stops.reaches(knob, x[free.get(f)] + parts[f] * Math.abs(knob.now()))) {
        return false;
      }
    }
    return true;
  }

  /** The least turn, in the dials' own units, after which all is where it is wanted. */
  private double[] turn(List<Wanted> wanted, double[][] slopes, double[] raw) {
    double[] parts = new double[free.size()];
    List<double[]> taken = new ArrayList<>();
    for (Wanted w : wanted) {
      double[] across = across(slopes[w.measure], taken);
      if (across.length > 0) {
        double by = (w.mm - raw[w.measure] - dot(slopes[w.measure], parts)) / dot(across, across);
        parts = plus(parts, across, by);
        taken.add(unit(across));
      }
    }
    double[] turn = new double[drafts.knobs().size()];
    for (int f = 0; f < parts.length; f++) {
      turn[free.get(f)] = parts[f] * Math.abs(drafts.knobs().get(free.get(f)).now());
    }
    return turn;
  }

  /** What of a direction the taken ones leave free; empty where that is as good as nothing. */
  private static double[] across(double[] direction, List<double[]> taken) {
    double[] left = direction.clone();
    for (double[] t : taken) {
      left = plus(left, t, -dot(left, t));
    }
    double whole = Math.sqrt(dot(direction, direction));
    return Math.sqrt(dot(left, left)) <= Math.max(FREE * whole, HOME.mm()) ? new double[0] : left;
  }

  private static double[] unit(double[] v) {
    double length = Math.sqrt(dot(v, v));
    return java.util.Arrays.stream(v).map(a -> a / length).toArray();
  }

  private static double dot(double[] a, double[] b) {
    return IntStream.range(0, a.length).mapToDouble(i -> a[i] * b[i]).sum();
  }

  private static double[] plus(double[] a, double[] b, double times) {
    return IntStream.range(0, a.length).mapToDouble(i -> a[i] + times * b[i]).toArray();
  }
}
