package facetwright.fold.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * The order in which to eliminate points so that the factor stays sparse: always the one with the
 * fewest neighbours left (minimum degree; W. F. Tinney and J. W. Walker, Proc. IEEE 55 (1967)
 * 1801-1809, from memory). Of equals the lowest number, so that it is the same every time.
 */
final class EliminationOrder {
  private final int[][] near;
  private final int[] stage;
  private final int[] mark;
  private int stamp;

  private EliminationOrder(int[][] near, int[] stage) {
    this.near = near;
    this.stage = stage;
    this.mark = new int[near.length];
  }

  private record Entry(int stage, int degree, int point) {}

  /**
   * For each point its place in the order.
   *
   * @param neighbours for each point those it shares an equation with
   * @param stage for each point when its turn is; a lower one comes first
   */
  static int[] places(List<int[]> neighbours, int[] stage) {
    return new EliminationOrder(neighbours.toArray(int[][]::new), stage).eliminate();
  }

  private int[] eliminate() {
    PriorityQueue<Entry> open =
        new PriorityQueue<>(
            Comparator.comparingInt(Entry::stage)
                .thenComparingInt(Entry::degree)
                .thenComparingInt(Entry::point));
    for (int p = 0; p < near.length; p++) {
      open.add(new Entry(stage[p], near[p].length, p));
    }
    int[] place = new int[near.length];
    Arrays.fill(place, -1);
    int next = 0;
    while (!open.isEmpty()) {
      Entry entry = open.remove();
      int p = entry.point;
      if (place[p] >= 0 || entry.degree != near[p].length) {
        continue;
      }
      place[p] = next++;
      int[] clique = near[p];
      for (int q : clique) {
        near[q] = joined(q, p, clique);
        open.add(new Entry(stage[q], near[q].length, q));
      }
      near[p] = new int[0];
    }
    return place;
  }

  private int[] joined(int q, int gone, int[] clique) {
    stamp++;
    mark[q] = stamp;
    mark[gone] = stamp;
    int[] all = new int[near[q].length + clique.length];
    int count = 0;
    for (int[] some : List.of(near[q], clique)) {
      for (int r : some) {
        if (mark[r] != stamp) {
          mark[r] = stamp;
          all[count++] = r;
        }
      }
    }
    return Arrays.copyOf(all, count);
  }

  /** Neighbours of each point, each once, ascending. */
  static List<int[]> neighbours(int points, List<Equation> equations) {
    List<int[]> lists = new ArrayList<>();
    int[] count = new int[points];
    for (Equation e : equations) {
      e.points().forEach(p -> count[p] += e.points().size() - 1);
    }
    int[][] all = new int[points][];
    for (int p = 0; p < points; p++) {
      all[p] = new int[count[p]];
    }
    int[] filled = new int[points];
    for (Equation e : equations) {
      for (int p : e.points()) {
        for (int q : e.points()) {
          if (p != q) {
            all[p][filled[p]++] = q;
          }
        }
      }
    }
    for (int p = 0; p < points; p++) {
      lists.add(Arrays.stream(all[p], 0, filled[p]).sorted().distinct().toArray());
    }
    return lists;
  }
}
