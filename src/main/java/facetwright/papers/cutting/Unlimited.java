package facetwright.papers.cutting;

import facetwright.pace.Pace;

/**
 * The most that any part of a sheet can give where there is no limit on copies, exactly: a part is
 * one piece, or it is cut in two (P. C. Gilmore, R. E. Gomory, The theory and computation of
 * knapsack functions, Operations Research 14 (1966) 1045-1074; from memory).
 */
final class Unlimited {
  /** Up to so many tries the points are taken as they are: a plan read from them is tight. */
  private static final long CHEAP = 20_000_000;

  private static final int MOST_POINTS = 2500;

  /** A point takes as long to find, for every fit, as so many cuts in the table. */
  private static final long PER_POINT = 300;

  /** Where not all points can be taken, so many do for a good plan. */
  private static final int FEW_POINTS = 320;

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

  /** The table at as many points as the effort allows. */
  static Unlimited of(Problem problem, Effort effort) {
    Unlimited table = null;
    for (int different : new int[] {Integer.MAX_VALUE, 3, 2, 1}) {
      table = table == null ? affordable(problem, different, effort) : table;
    }
    table = table == null ? new Unlimited(problem, few(problem, true), few(problem, false)) : table;
    Pace.step(1 + table.tries() / 1000);
    table.fill();
    return table;
  }

  private static Unlimited affordable(Problem problem, int different, Effort effort) {
    Points xs = points(problem, true, true, different);
    Points ys = points(problem, false, true, different);
    if (xs != null && ys != null && tries(xs, ys) <= Math.min(CHEAP, effort.tries())) {
      return new Unlimited(problem, xs, ys);
    }
    if (different == Integer.MAX_VALUE) {
      xs = points(problem, true, false, different);
      ys = points(problem, false, false, different);
      if (xs != null && ys != null) {
        xs = xs.raster(problem.width);
        ys = ys.raster(problem.height);
      }
    }
    return xs != null && ys != null && tries(xs, ys) <= effort.tries()
        ? new Unlimited(problem, xs, ys)
        : null;
  }

  private static Points points(
      Problem problem, boolean isAcross, boolean isLimited, int different) {
    return Points.of(
        problem.kinds(isAcross, isLimited),
        isAcross ? problem.width : problem.height,
        different,
        different == Integer.MAX_VALUE ? MOST_POINTS : FEW_POINTS);
  }

  private static Points few(Problem problem, boolean isAcross) {
    return Points.few(problem.kinds(isAcross, true), isAcross ? problem.width : problem.height);
  }

  private static long tries(Points xs, Points ys) {
    return (long) xs.size() * ys.size() * (xs.size() + ys.size()) / 4;
  }

  /** How many tries the table took. */
  long tries() {
    return tries(xs, ys) + PER_POINT * (problem.fits.size() + 1) * (xs.size() + ys.size());
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
      int i = xs.ceiling(fit.w());
      int j = ys.ceiling(fit.h());
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
      Pace.step();
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
