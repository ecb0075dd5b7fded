package facetwright.fold.solve;

import java.util.Arrays;
import java.util.List;

/**
 * The matrix JᵀJ of a set of equations, upper triangle, its points in elimination order. Its
 * pattern, the places of every equation's blocks in it, and the pattern of its factor are found
 * once; not safe for use by several threads at a time.
 */
final class NormalMatrix {
  private final int[] place;
  private final int[] start;
  private final double[] upper;
  private final FrontalFactor factor;
  private final int[][] ranks;
  private final double[] work;

  /**
   * @param where the coordinates of the points, about, by which a good order is found
   */
  NormalMatrix(List<Equation> equations, double[] where) {
    int points = where.length / 3;
    List<int[]> neighbours = EliminationOrder.neighbours(points, equations);
    Fill fill = Fill.of(neighbours, where);
    place = fill.place;
    int[][] above = new int[points][];
    int entries = 0;
    for (int p = 0; p < points; p++) {
      int at = place[p];
      above[at] =
          Arrays.stream(neighbours.get(p))
              .map(q -> place[q])
              .filter(q -> q < at)
              .sorted()
              .toArray();
      entries += 9 * above[at].length + 6;
    }
    start = new int[3 * points + 1];
    int[] rows = new int[entries];
    int next = 0;
    for (int c = 0; c < 3 * points; c++) {
      start[c] = next;
      for (int block : above[c / 3]) {
        for (int i = 0; i < 3; i++) {
          rows[next++] = 3 * block + i;
        }
      }
      for (int i = 3 * (c / 3); i <= c; i++) {
        rows[next++] = i;
      }
    }
    start[3 * points] = next;
    upper = new double[entries];
    factor = new FrontalFactor(fill.below, start, rows);
    ranks = new int[equations.size()][];
    for (int e = 0; e < ranks.length; e++) {
      ranks[e] = ranks(equations.get(e), above);
    }
    work = new double[3 * points];
  }

  /** For each pair of an equation's points where the block of the first stands above the second. */
  private int[] ranks(Equation equation, int[][] above) {
    int k = equation.points().size();
    int[] found = new int[k * k];
    for (int i = 0; i < k; i++) {
      for (int j = 0; j < k; j++) {
        int row = place[equation.points().get(i)];
        int column = place[equation.points().get(j)];
        found[i * k + j] =
            i == j
                ? 3 * above[column].length
                : row < column ? 3 * Arrays.binarySearch(above[column], row) : -1;
      }
    }
    return found;
  }

  void clear() {
    Arrays.fill(upper, 0);
  }

  /** Adds what one equation contributes, times a weight. */
  void add(int e, int[] points, int rows, double[] slope, double weight) {
    int k = points.length;
    int width = 3 * k;
    for (int b = 0; b < k; b++) {
      int column = 3 * place[points[b]];
      for (int a = 0; a < k; a++) {
        int rank = ranks[e][a * k + b];
        if (rank < 0) {
          continue;
        }
        for (int j = 0; j < 3; j++) {
          int at = start[column + j] + rank;
          int most = a == b ? j : 2;
          for (int i = 0; i <= most; i++) {
            double sum = 0;
            for (int r = 0; r < rows; r++) {
              sum += slope[r * width + 3 * a + i] * slope[r * width + 3 * b + j];
            }
            upper[at + i] += weight * sum;
          }
        }
      }
    }
  }

  /**
   * Factors the matrix with something added to its diagonal.
   *
   * @return whether that went well
   */
  boolean factor(double damping) {
    return factor.decompose(upper, damping);
  }

  /** Solves by the last factor, in place. */
  void solve(double[] b) {
    for (int p = 0; p < place.length; p++) {
      System.arraycopy(b, 3 * p, work, 3 * place[p], 3);
    }
    factor.solve(work);
    for (int p = 0; p < place.length; p++) {
      System.arraycopy(work, 3 * place[p], b, 3 * p, 3);
    }
  }
}
