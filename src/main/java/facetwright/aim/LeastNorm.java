package facetwright.aim;

import java.util.Arrays;

/**
 * The solution of A·x = b that is least, or where there is none, the least of those that miss by
 * least squares: A⁺·b, by the pseudo-inverse of Moore and Penrose. The rows are turned in pairs
 * until all stand square to each other, b with them, which leaves the answer where it is: one-sided
 * Jacobi rotations (Hestenes 1958; Golub and Van Loan, Matrix Computations, 4th edition, 8.6.3).
 * For the few knobs and goals of an aim; the work grows as rows² · columns.
 */
final class LeastNorm {
  /** A row shorter than this part of the longest says nothing: slopes are known to no more. */
  private static final double RANK = 1e-12;

  /** How nearly square two rows stand to each other, as the cosine. */
  private static final double SQUARE = 1e-14;

  /** More than ever needed: a sweep squares what is left. */
  private static final int SWEEPS = 40;

  private LeastNorm() {}

  /**
   * @param a rows of equal length, at least one; finite
   * @param b as many as there are rows; finite
   */
  static double[] solve(double[][] a, double[] b) {
    double[][] rows = Arrays.stream(a).map(double[]::clone).toArray(double[][]::new);
    double[] right = b.clone();
    boolean turned = true;
    for (int sweep = 0; turned && sweep < SWEEPS; sweep++) {
      turned = false;
      for (int i = 1; i < rows.length; i++) {
        for (int j = 0; j < i; j++) {
          turned |= square(rows, right, i, j);
        }
      }
    }
    double longest = 0;
    for (double[] row : rows) {
      longest = Math.max(longest, dot(row, row));
    }
    double[] x = new double[rows[0].length];
    for (int i = 0; i < rows.length; i++) {
      double length = dot(rows[i], rows[i]);
      if (length > longest * RANK * RANK) {
        for (int c = 0; c < x.length; c++) {
          x[c] += rows[i][c] * right[i] / length;
        }
      }
    }
    return x;
  }

  /** Turns two rows until they stand square to each other; whether they did not before. */
  private static boolean square(double[][] rows, double[] right, int i, int j) {
    double[] p = rows[i];
    double[] q = rows[j];
    double across = dot(p, q);
    double pp = dot(p, p);
    double qq = dot(q, q);
    if (Math.abs(across) <= SQUARE * Math.sqrt(pp) * Math.sqrt(qq)) {
      return false;
    }
    double zeta = (qq - pp) / (2 * across);
    double tan = Math.copySign(1, zeta) / (Math.abs(zeta) + Math.hypot(1, zeta));
    double cos = 1 / Math.hypot(1, tan);
    double sin = cos * tan;
    for (int c = 0; c < p.length; c++) {
      double from = p[c];
      p[c] = cos * from - sin * q[c];
      q[c] = sin * from + cos * q[c];
    }
    double from = right[i];
    right[i] = cos * from - sin * right[j];
    right[j] = sin * from + cos * right[j];
    return true;
  }

  private static double dot(double[] p, double[] q) {
    double sum = 0;
    for (int c = 0; c < p.length; c++) {
      sum += p[c] * q[c];
    }
    return sum;
  }
}
