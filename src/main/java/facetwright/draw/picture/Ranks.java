package facetwright.draw.picture;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Labels along a line, each at its place; where they would lie on each other, in turn in ranks one
 * behind the other, with room for a leader to pass; and where that does not do, spread out behind,
 * with a slanted leader each.
 *
 * @param of for each label its rank, from 0, the nearest to the line
 * @param at where along the line each has its middle
 * @param count how many ranks there are; 0 where there are no labels
 */
record Ranks(List<Integer> of, List<Double> at, int count) {
  private static final int MOST = 2;
  private static final double BETWEEN = 0.8;
  private static final double APART = 2;
  private static final double LEADER = 0.5;

  /** How far labels may stand out past the ends of the line, in mm. */
  private static final double PAST = 2;

  /**
   * @param at where along the line each should have its middle
   * @param lengths how much of the line each takes
   * @param extent how long the line is
   */
  static Ranks of(List<Double> at, List<Double> lengths, double extent) {
    List<Integer> order =
        IntStream.range(0, at.size()).boxed().sorted(Comparator.comparing(at::get)).toList();
    for (int count = 1; count <= MOST; count++) {
      List<Integer> ranks = new ArrayList<>(Collections.nCopies(at.size(), 0));
      for (int i = 0; i < order.size(); i++) {
        ranks.set(order.get(i), i % count);
      }
      if (isClear(at, lengths, ranks)) {
        return new Ranks(ranks, at, at.isEmpty() ? 0 : count);
      }
    }
    return new Ranks(Collections.nCopies(at.size(), 1), spread(at, lengths, order, extent), 2);
  }

  private static boolean isClear(List<Double> at, List<Double> lengths, List<Integer> ranks) {
    for (int i = 0; i < at.size(); i++) {
      for (int k = 0; k < at.size(); k++) {
        double apart = Math.abs(at.get(i) - at.get(k));
        boolean isHidden =
            (ranks.get(i) > ranks.get(k) && apart < lengths.get(k) / 2 + LEADER)
                || (i != k
                    && ranks.get(i).equals(ranks.get(k))
                    && apart < (lengths.get(i) + lengths.get(k)) / 2 + BETWEEN);
        if (isHidden) {
          return false;
        }
      }
    }
    return true;
  }

  /** Pushed apart in their order, half to either side. */
  private static List<Double> spread(
      List<Double> at, List<Double> lengths, List<Integer> order, double extent) {
    int n = order.size();
    double[] up = new double[n];
    double[] down = new double[n];
    for (int i = 0; i < n; i++) {
      double own = at.get(order.get(i));
      up[i] = i == 0 ? own : Math.max(own, up[i - 1] + room(lengths, order, i));
    }
    for (int i = n - 1; i >= 0; i--) {
      double own = at.get(order.get(i));
      down[i] = i == n - 1 ? own : Math.min(own, down[i + 1] - room(lengths, order, i + 1));
    }
    double low = (up[0] + down[0]) / 2 - lengths.get(order.getFirst()) / 2;
    double high = (up[n - 1] + down[n - 1]) / 2 + lengths.get(order.getLast()) / 2;
    double shift = Math.max(0, -PAST - low) + Math.min(0, extent + PAST - high);
    List<Double> spread = new ArrayList<>(at);
    for (int i = 0; i < n; i++) {
      spread.set(order.get(i), (up[i] + down[i]) / 2 + shift);
    }
    return spread;
  }

  /** Between the middles of a label and the one before it. */
  private static double room(List<Double> lengths, List<Integer> order, int i) {
    return (lengths.get(order.get(i - 1)) + lengths.get(order.get(i))) / 2 + APART;
  }
}
