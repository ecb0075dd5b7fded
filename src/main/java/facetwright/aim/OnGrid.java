package facetwright.aim;

import facetwright.geom.RoundOff;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Puts knobs onto values that can be set: of the marks round the exact values the best. Where
 * several knobs could go many ways, the slopes at the exact values tell which ways are worth
 * trying.
 */
final class OnGrid {
  private static final int MOST_PLACES = 60_000;
  private static final int TRIED = 16;
  private static final int ROUND = 3;
  private static final int SMALLER = 6;

  /** Misses under this part of what is wanted are as good as none; then nearness counts. */
  private static final double HAIR = 2e-4;

  private final Task task;
  private final List<Divisions> marks;

  OnGrid(Task task, List<Divisions> marks) {
    this.task = task;
    this.marks = marks;
  }

  /**
   * A net that fits when exact fits on the marks too; then what is wanted counts, then nearness.
   */
  Point near(Point exact) {
    boolean mustFit = task.fits(exact);
    Point best = null;
    for (double[] place : promising(exact)) {
      Point there = task.exactly(place);
      if (there.tried() instanceof Measured
          && (!mustFit || task.fits(there))
          && (best == null || rank(there.miss()) < rank(best.miss()))) {
        best = there;
      }
      if (best != null && rank(best.miss()) <= HAIR) {
        return best;
      }
    }
    if (best == null && mustFit) {
      best = smaller(exact);
    }
    return best == null ? exact : best;
  }

  private static double rank(double miss) {
    return Math.max(miss, HAIR);
  }

  /** All knobs on the marks below, further and further, until the net fits. */
  private Point smaller(Point exact) {
    for (int n = 2; n <= SMALLER; n++) {
      double[] x = exact.x();
      for (int i = 0; i < x.length; i++) {
        x[i] = marks.get(i).near(x[i], n).stream().min(Comparator.naturalOrder()).orElseThrow();
      }
      Point there = task.exactly(x);
      if (task.fits(there)) {
        return there;
      }
    }
    return null;
  }

  /**
   * The places worth a trial, the most promising first. One knob turned for a measure comes nearest
   * on a mark next to the exact value; for a sheet a net may have to be smaller than that.
   */
  private List<double[]> promising(Point exact) {
    boolean measured = !task.reaches().isEmpty();
    boolean several = task.size() > 1 && measured;
    List<double[]> places = places(exact, several ? ROUND : measured ? 1 : 2);
    Comparator<double[]> nearest = Comparator.comparingDouble(p -> task.distance(p, exact.x()));
    if (!several) {
      places.sort(nearest);
      return places;
    }
    double[][] slopes = new Newton(task, task.now(), Newton.allFree(task)).slopes(exact);
    places.sort(
        Comparator.comparingDouble((double[] p) -> rank(foretold(exact, slopes, p)))
            .thenComparing(nearest));
    return places.subList(0, Math.min(TRIED, places.size()));
  }

  /** How far off a place should be, taking the measures for straight. */
  private double foretold(Point exact, double[][] slopes, double[] place) {
    double sum = 0;
    for (int g = 0; g < slopes.length; g++) {
      double off = exact.residual(g);
      for (int i = 0; i < place.length; i++) {
        off += slopes[g][i] * (place[i] - exact.x(i));
      }
      sum += off * off;
    }
    return Math.sqrt(sum);
  }

  /** As many marks on either side of each knob as make few enough places. */
  private List<double[]> places(Point exact, int round) {
    for (int most = round; most >= 1; most--) {
      List<List<Double>> each = candidates(exact, most);
      if (each.stream().mapToInt(List::size).reduce(1, OnGrid::times) <= MOST_PLACES) {
        return combined(each);
      }
    }
    return combined(candidates(exact, 1).stream().map(near -> near.subList(0, 1)).toList());
  }

  private static int times(int a, int b) {
    return Math.min(a * b, MOST_PLACES + 1);
  }

  private List<List<Double>> candidates(Point exact, int most) {
    List<List<Double>> each = new ArrayList<>();
    for (int i = 0; i < task.size(); i++) {
      Knob knob = task.knob(i);
      boolean stays =
          knob.isStepped() || Math.abs(exact.x(i) - knob.now()) <= RoundOff.PART * knob.range();
      each.add(stays ? List.of(exact.x(i)) : marks.get(i).near(exact.x(i), most));
    }
    return each;
  }

  private static List<double[]> combined(List<List<Double>> each) {
    List<double[]> all = new ArrayList<>();
    all.add(new double[each.size()]);
    for (int i = 0; i < each.size(); i++) {
      List<double[]> more = new ArrayList<>();
      for (double[] start : all) {
        for (double v : each.get(i)) {
          double[] x = start.clone();
          x[i] = v;
          more.add(x);
        }
      }
      all = more;
    }
    return all;
  }
}
