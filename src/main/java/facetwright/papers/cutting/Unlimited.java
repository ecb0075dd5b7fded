package facetwright.papers.cutting;

/**
 * The most that any part of a sheet can give where there is no limit on copies, exactly: a part is
 * one piece, or it is cut in two (P. C. Gilmore, R. E. Gomory, The theory and computation of
 * knapsack functions, Operations Research 14 (1966) 1045-1074; from memory).
 */
final class Unlimited {
  final Problem problem;
  final Points xs;
  final Points ys;
  final int[][] beyondX;
  final int[][] beyondY;

  /** By the indices of width and height. */
  final long[][] most;

  private Unlimited(Problem problem, Points xs, Points ys) {
    this.problem = problem;
    this.xs = xs;
    this.ys = ys;
    this.beyondX = xs.beyond();
    this.beyondY = ys.beyond();
    this.most = new long[xs.size()][ys.size()];
  }

  static Unlimited of(Problem problem, Effort effort) {
    long[] widths = problem.fits.stream().mapToLong(Problem.Fit::w).toArray();
    long[] heights = problem.fits.stream().mapToLong(Problem.Fit::h).toArray();
    Unlimited table =
        new Unlimited(
            problem,
            Points.of(widths, problem.width, effort.points()),
            Points.of(heights, problem.height, effort.points()));
    table.fill();
    return table;
  }

  /** Whether every place of a cut that could matter was tried. */
  boolean isExact() {
    return xs.all && ys.all;
  }

  /** The most the whole sheet can give. */
  long best() {
    return most[xs.size() - 1][ys.size() - 1];
  }

  private void fill() {
    for (Problem.Fit fit : problem.fits) {
      int i = xs.floor(fit.w());
      int j = ys.floor(fit.h());
      most[i][j] = Math.max(most[i][j], fit.value());
    }
    for (int i = 1; i < xs.size(); i++) {
      long[] row = most[i];
      raise(row, most[i - 1], most[0]);
      int[] beyond = beyondX[i];
      for (int first = 1; first < beyond.length; first++) {
        raise(row, most[first], most[beyond[first]]);
      }
      up(row, beyondY);
    }
  }

  /** Side by side, for every height at once. */
  private static void raise(long[] row, long[] left, long[] right) {
    for (int j = 0; j < row.length; j++) {
      row[j] = Math.max(row[j], left[j] + right[j]);
    }
  }

  /** One above the other, lowest parts first. */
  private static void up(long[] row, int[][] beyondY) {
    for (int j = 1; j < row.length; j++) {
      long best = Math.max(row[j], row[j - 1]);
      int[] beyond = beyondY[j];
      for (int first = 1; first < beyond.length; first++) {
        best = Math.max(best, row[first] + row[beyond[first]]);
      }
      row[j] = best;
    }
  }
}
