package facetwright.papers.chart;

import facetwright.geom.LengthTolerance;
import facetwright.measure.Ruler;
import facetwright.pace.Pace;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * From which edge each full line is measured, so that as few different measures as possible have to
 * be set. Of two lines as far from opposite edges, one serves the other when the blank is turned
 * end for end. Several beginnings are tried and each is bettered line by line; the search does not
 * promise the least.
 */
final class FullLines {
  private final double width;
  private final double height;
  private final Ruler ruler;
  private final List<Run> runs;

  FullLines(FlatPiece piece, Ruler ruler, List<Run> runs) {
    this.width = piece.width();
    this.height = piece.height();
    this.ruler = ruler;
    this.runs = List.copyOf(runs);
  }

  /**
   * What a choice asks of the maker; less is better, the first counting most.
   *
   * @param distinct how many different measures
   * @param off how many of them lie off the ruler's marks
   * @param placings how many ways the blank has to lie
   * @param sum of the different measures, in 0.01 µm
   * @param turned how many lines are measured from the right or bottom
   */
  record Cost(int distinct, int off, int placings, long sum, int turned)
      implements Comparable<Cost> {
    private static final Comparator<Cost> LEAST =
        Comparator.comparingInt(Cost::distinct)
            .thenComparingInt(Cost::off)
            .thenComparingInt(Cost::placings)
            .thenComparingLong(Cost::sum)
            .thenComparingInt(Cost::turned);

    @Override
    public int compareTo(Cost other) {
      return LEAST.compare(this, other);
    }
  }

  /** For each run, in order, the edge it is measured from. */
  List<Side> sides() {
    boolean[] best = new boolean[runs.size()];
    Cost least = null;
    for (int down = 0; down < 4; down++) {
      for (int across = 0; across < 4; across++) {
        boolean[] far = bettered(start(down, across));
        Cost cost = cost(far);
        if (least == null || cost.compareTo(least) < 0) {
          least = cost;
          best = far;
        }
      }
    }
    List<Side> sides = new ArrayList<>();
    for (int i = 0; i < best.length; i++) {
      sides.add(side(i, best[i]));
    }
    return sides;
  }

  /** All from the near edge, all from the far, or pairs mirrored and the rest from either. */
  private boolean[] start(int down, int across) {
    boolean[] far = new boolean[runs.size()];
    for (int i = 0; i < far.length; i++) {
      int way = runs.get(i).isUpright() ? down : across;
      far[i] =
          switch (way) {
            case 0 -> false;
            case 1 -> true;
            default ->
                isPaired(i)
                    ? measure(i, true) < measure(i, false) - LengthTolerance.FINE.mm()
                    : way == 3;
          };
    }
    return far;
  }

  private boolean isPaired(int i) {
    long mirrored = key(measure(i, true));
    for (int j = 0; j < runs.size(); j++) {
      if (runs.get(j).isUpright() == runs.get(i).isUpright()
          && key(measure(j, false)) == mirrored) {
        return true;
      }
    }
    return false;
  }

  private boolean[] bettered(boolean[] start) {
    boolean[] far = start;
    Cost cost = cost(far);
    for (boolean isBetter = true; isBetter; ) {
      isBetter = false;
      for (int i = 0; i < far.length; i++) {
        Pace.step(far.length);
        boolean[] other = Arrays.copyOf(far, far.length);
        other[i] = !other[i];
        Cost then = cost(other);
        if (then.compareTo(cost) < 0) {
          far = other;
          cost = then;
          isBetter = true;
        }
      }
    }
    return far;
  }

  private Cost cost(boolean[] far) {
    Set<Long> distinct = new HashSet<>();
    Set<Side> placings = EnumSet.noneOf(Side.class);
    int off = 0;
    int turned = 0;
    long sum = 0;
    for (int i = 0; i < far.length; i++) {
      double mm = measure(i, far[i]);
      if (distinct.add(key(mm)) && !Measure.of(mm, ruler).isOnRuler()) {
        off++;
      }
      placings.add(side(i, far[i]));

      turned += far[i] ? 1 : 0;
    }
    for (long mm : distinct) {
      sum += mm;
    }
    return new Cost(distinct.size(), off, placings.size(), sum, turned);
  }

  private Side side(int i, boolean isFar) {
    return runs.get(i).isUpright()
        ? isFar ? Side.RIGHT : Side.LEFT
        : isFar ? Side.BOTTOM : Side.TOP;
  }

  private double measure(int i, boolean isFar) {
    Side side = side(i, isFar);
    return side.coordinate(runs.get(i).at(), side.isUpright() ? width : height);
  }

  private static long key(double mm) {
    return Math.round(mm * 1e5);
  }
}
