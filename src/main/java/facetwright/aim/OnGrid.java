package facetwright.aim;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Puts knobs onto values that can be set: of the marks round the exact values the best. */
final class OnGrid {
  private static final int MOST_PLACES = 81;
  private static final int SMALLER = 6;

  private final Task task;
  private final List<Marks> marks;

  OnGrid(Task task, List<Marks> marks) {
    this.task = task;
    this.marks = marks;
  }

  /**
   * A net that fits when exact fits on the marks too; then what is wanted counts, then nearness.
   */
  Point near(Point exact) {
    boolean mustFit = task.fits(exact);
    List<double[]> places = places(exact);
    places.sort(Comparator.comparingDouble(p -> task.distance(p, exact.x())));
    Point best = null;
    for (double[] place : places) {
      Point there = task.exactly(place);
      if (there.tried() instanceof Measured
          && (!mustFit || task.fits(there))
          && (best == null || there.miss() < best.miss())) {
        best = there;
        if (task.reaches().isEmpty()) {
          break;
        }
      }
    }
    if (best == null && mustFit) {
      best = smaller(exact);
    }
    return best == null ? exact : best;
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

  /** Two marks on either side while that makes few places, else one, else only the nearest. */
  private List<double[]> places(Point exact) {
    for (int most = 2; most >= 1; most--) {
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
      boolean stays = Math.abs(exact.x(i) - knob.now()) <= 1e-9 * knob.range();
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
