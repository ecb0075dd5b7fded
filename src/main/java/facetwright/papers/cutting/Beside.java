package facetwright.papers.cutting;

/**
 * For a built rectangle in the lower left corner of the sheet, the most that the rest of the sheet
 * can give where there is no limit on copies (K. V. Viswanathan, A. Bagchi, Best-first search
 * methods for constrained two-dimensional cutting stock problems, Operations Research 41 (1993)
 * 768-776; from memory).
 */
final class Beside {
  private final int[][] sumX;
  private final int[][] sumY;
  private final long[][] most;

  Beside(Unlimited table) {
    sumX = sums(table.xs);
    sumY = sums(table.ys);
    int nx = table.xs.size();
    int ny = table.ys.size();
    most = new long[nx][ny];
    for (int i = nx - 1; i >= 0; i--) {
      long[] row = most[i];
      if (i + 1 < nx) {
        System.arraycopy(most[i + 1], 0, row, 0, ny);
      }
      for (int more = 1; more < nx && sumX[i][more] < nx; more++) {
        raise(row, most[sumX[i][more]], table.most[more]);
      }
      for (int j = ny - 1; j >= 0; j--) {
        long best = j + 1 < ny ? Math.max(row[j], row[j + 1]) : row[j];
        for (int more = 1; more < ny && sumY[j][more] < ny; more++) {
          best = Math.max(best, row[sumY[j][more]] + table.most[i][more]);
        }
        row[j] = best;
      }
    }
  }

  private static void raise(long[] row, long[] rest, long[] part) {
    for (int j = 0; j < row.length; j++) {
      row[j] = Math.max(row[j], rest[j] + part[j]);
    }
  }

  /** The first point no nearer than each two together. */
  private static int[][] sums(Points points) {
    int[][] sums = new int[points.size()][points.size()];
    for (int a = 0; a < sums.length; a++) {
      for (int b = 0; b < sums.length; b++) {
        sums[a][b] = points.ceiling(points.at[a] + points.at[b]);
      }
    }
    return sums;
  }

  /** The index of two widths together, or the number of points where they pass the sheet's. */
  int acrossX(int a, int b) {
    return sumX[a][b];
  }

  /** The same for heights. */
  int upY(int a, int b) {
    return sumY[a][b];
  }

  /** By the indices of the built rectangle's width and height. */
  long most(int i, int j) {
    return most[i][j];
  }
}
