package facetwright.fold.solve;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Cuts a large set of points in two again and again, each time by the fewest points across its
 * longest way, which are to be eliminated after both parts (nested dissection; A. George, SIAM J.
 * Numer. Anal. 10 (1973) 345-363, from memory).
 */
final class Dissection {
  /** Sets no larger than this stay whole. */
  static final int SMALL = 200;

  private static final int WITHIN = Integer.MIN_VALUE;

  private final List<int[]> neighbours;
  private final double[] where;
  private final Cover cover;

  /** For each point the part it is in. */
  private final int[] part;

  private final int[] stage;
  private int parts;

  private Dissection(List<int[]> neighbours, double[] where) {
    this.neighbours = neighbours;
    this.where = where;
    this.cover = new Cover(neighbours.toArray(int[][]::new));
    this.part = new int[neighbours.size()];
    this.stage = new int[neighbours.size()];
    Arrays.fill(stage, WITHIN);
  }

  /**
   * For each point when its turn is: those of a lower number are eliminated before.
   *
   * @param neighbours for each point those it shares an equation with
   * @param where the coordinates of the points, about
   */
  static int[] stages(List<int[]> neighbours, double[] where) {
    Dissection dissection = new Dissection(neighbours, where);
    Integer[] all = new Integer[neighbours.size()];
    Arrays.setAll(all, i -> i);
    dissection.cut(all, 0);
    return dissection.stage;
  }

  private void cut(Integer[] points, int depth) {
    if (points.length <= SMALL) {
      return;
    }
    int axis = longest(points);
    Arrays.sort(
        points,
        Comparator.comparingDouble((Integer p) -> where[3 * p + axis]).thenComparingInt(p -> p));
    int near = ++parts;
    int far = ++parts;
    for (int i = 0; i < points.length; i++) {
      part[points[i]] = i < points.length / 2 ? near : far;
    }
    int[] shore =
        Arrays.stream(points).mapToInt(p -> p).filter(p -> isTied(p, near, far)).toArray();
    for (int p : cover.of(shore, p -> part[p] == far)) {
      stage[p] = -depth;
      part[p] = 0;
    }
    cut(within(points, near), depth + 1);
    cut(within(points, far), depth + 1);
  }

  private boolean isTied(int point, int near, int far) {
    return part[point] == near
        && Arrays.stream(neighbours.get(point)).anyMatch(q -> part[q] == far);
  }

  private Integer[] within(Integer[] points, int side) {
    return Arrays.stream(points).filter(p -> part[p] == side).toArray(Integer[]::new);
  }

  private int longest(Integer[] points) {
    int best = 0;
    double most = -1;
    for (int axis = 0; axis < 3; axis++) {
      double least = Double.POSITIVE_INFINITY;
      double greatest = Double.NEGATIVE_INFINITY;
      for (int p : points) {
        least = Math.min(least, where[3 * p + axis]);
        greatest = Math.max(greatest, where[3 * p + axis]);
      }
      if (greatest - least > most) {
        most = greatest - least;
        best = axis;
      }
    }
    return best;
  }
}
