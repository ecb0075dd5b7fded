package facetwright.fold.solve;

import java.util.Arrays;

/**
 * A Cholesky factor by fronts: each front is a small dense matrix that gathers what its points and
 * the fronts before it say, eliminates its own points, and hands on the rest (I. S. Duff and J. K.
 * Reid, ACM Trans. Math. Software 9 (1983) 302-325, from memory). Most of the work is dense and
 * runs along rows. Not safe for use by several threads at a time.
 */
final class FrontalFactor {
  private static final int DIMENSION = 3;

  private final Front[] fronts;

  /** For each front those handed on to it, and for each front where its rows are in its parent. */
  private final int[][] children;

  private final int[][] intoParent;

  /** For each front the entries of the matrix it takes in, and where to. */
  private final int[][] source;

  private final int[][] targetRow;
  private final int[][] targetColumn;

  private final double[][] factor;
  private final int[] handed;
  private final double[] stack;
  private final double[][] work;
  private final double[] local;

  /**
   * @param below for each place the later ones tied to it; see {@link Fill}
   * @param start for each column of the upper triangle where its entries begin
   * @param rows of all entries
   */
  FrontalFactor(int[][] below, int[] start, int[] rows) {
    fronts = Front.of(below).toArray(Front[]::new);
    int[] frontOf = new int[below.length];
    for (int f = 0; f < fronts.length; f++) {
      Arrays.fill(frontOf, fronts[f].first(), fronts[f].first() + fronts[f].width(), f);
    }
    children = new int[fronts.length][0];
    intoParent = new int[fronts.length][];
    factor = new double[fronts.length][];
    handed = new int[fronts.length];
    int top = 0;
    int deepest = 0;
    int largest = 0;
    for (int f = 0; f < fronts.length; f++) {
      Front front = fronts[f];
      factor[f] = new double[DIMENSION * front.width() * DIMENSION * front.size()];
      largest = Math.max(largest, DIMENSION * front.size());
      handed[f] = children[f].length == 0 ? top : handed[children[f][0]];
      int rest = DIMENSION * front.rest();
      top = handed[f] + rest * (rest + 1) / 2;
      deepest = Math.max(deepest, top);
      if (rest > 0) {
        int parent = frontOf[front.place(front.width())];
        children[parent] = Arrays.copyOf(children[parent], children[parent].length + 1);
        children[parent][children[parent].length - 1] = f;
        intoParent[f] = new int[rest];
        for (int i = 0; i < rest; i++) {
          intoParent[f][i] =
              DIMENSION * fronts[parent].local(front.place(front.width() + i / DIMENSION))
                  + i % DIMENSION;
        }
      }
    }
    stack = new double[deepest];
    work = new double[largest][largest];
    local = new double[largest];
    source = new int[fronts.length][];
    targetRow = new int[fronts.length][];
    targetColumn = new int[fronts.length][];
    entries(frontOf, start, rows);
  }

  private void entries(int[] frontOf, int[] start, int[] rows) {
    int[] count = new int[fronts.length];
    int columns = start.length - 1;
    for (int e = 0; e < start[columns]; e++) {
      count[frontOf[rows[e] / DIMENSION]]++;
    }
    for (int f = 0; f < fronts.length; f++) {
      source[f] = new int[count[f]];
      targetRow[f] = new int[count[f]];
      targetColumn[f] = new int[count[f]];
    }
    for (int c = 0; c < columns; c++) {
      for (int e = start[c]; e < start[c + 1]; e++) {
        int f = frontOf[rows[e] / DIMENSION];
        int next = --count[f];
        source[f][next] = e;
        targetRow[f][next] = DIMENSION * fronts[f].local(rows[e] / DIMENSION) + rows[e] % DIMENSION;
        targetColumn[f][next] = DIMENSION * fronts[f].local(c / DIMENSION) + c % DIMENSION;
      }
    }
  }

  /**
   * Factors the matrix with something added to its diagonal.
   *
   * @param values of all entries
   * @return whether it is positive definite
   */
  boolean decompose(double[] values, double damping) {
    for (int f = 0; f < fronts.length; f++) {
      int size = DIMENSION * fronts[f].size();
      int own = DIMENSION * fronts[f].width();
      gather(f, size, own, values, damping);
      if (!eliminate(own, size)) {
        return false;
      }
      for (int i = 0; i < own; i++) {
        System.arraycopy(work[i], i, factor[f], i * size + i, size - i);
      }
      int at = handed[f];
      for (int i = own; i < size; i++) {
        System.arraycopy(work[i], i, stack, at, size - i);
        at += size - i;
      }
    }
    return true;
  }

  private void gather(int f, int size, int own, double[] values, double damping) {
    for (int i = 0; i < size; i++) {
      Arrays.fill(work[i], i, size, 0);
    }
    for (int e = 0; e < source[f].length; e++) {
      work[targetRow[f][e]][targetColumn[f][e]] = values[source[f][e]];
    }
    for (int i = 0; i < own; i++) {
      work[i][i] += damping;
    }
    for (int child : children[f]) {
      int[] into = intoParent[child];
      int at = handed[child];
      for (int i = 0; i < into.length; i++) {
        double[] row = work[into[i]];
        for (int j = i; j < into.length; j++) {
          row[into[j]] += stack[at++];
        }
      }
    }
  }

  /** Eliminates the first rows from all later ones, point by point. */
  private boolean eliminate(int own, int size) {
    for (int k = 0; k < own; k += DIMENSION) {
      if (!point(k, size)) {
        return false;
      }
      int i = k + DIMENSION;
      for (; i + 1 < size; i += 2) {
        take(work[i], work[i + 1], work[k], work[k + 1], work[k + 2], i, size);
      }
      if (i < size) {
        take(work[i], work[k], work[k + 1], work[k + 2], i, size);
      }
    }
    return true;
  }

  /** Makes the rows of one point those of the factor. */
  private boolean point(int k, int size) {
    for (int r = k; r < k + DIMENSION; r++) {
      double[] row = work[r];
      for (int q = k; q < r; q++) {
        double[] above = work[q];
        double times = above[r];
        for (int j = r; j < size; j++) {
          row[j] -= times * above[j];
        }
      }
      if (!scale(row, r, size)) {
        return false;
      }
    }
    return true;
  }

  private static boolean scale(double[] row, int k, int size) {
    double pivot = row[k];
    if (!(pivot > 0)) {
      return false;
    }
    double factor = 1 / Math.sqrt(pivot);
    for (int j = k; j < size; j++) {
      row[j] *= factor;
    }
    return true;
  }

  /** From two rows at once: with more of them in a loop the compiler no longer makes it wide. */
  private static void take(
      double[] row, double[] next, double[] a, double[] b, double[] c, int i, int size) {
    double ai = a[i];
    double bi = b[i];
    double ci = c[i];
    double an = a[i + 1];
    double bn = b[i + 1];
    double cn = c[i + 1];
    row[i] -= ai * ai + bi * bi + ci * ci;
    for (int j = i + 1; j < size; j++) {
      row[j] -= ai * a[j] + bi * b[j] + ci * c[j];
      next[j] -= an * a[j] + bn * b[j] + cn * c[j];
    }
  }

  private static void take(double[] row, double[] a, double[] b, double[] c, int i, int size) {
    double ai = a[i];
    double bi = b[i];
    double ci = c[i];
    for (int j = i; j < size; j++) {
      row[j] -= ai * a[j] + bi * b[j] + ci * c[j];
    }
  }

  /** Solves by the last factor, in place. */
  void solve(double[] x) {
    for (int f = 0; f < fronts.length; f++) {
      int size = load(f, x);
      double[] l = factor[f];
      for (int k = 0; k < DIMENSION * fronts[f].width(); k++) {
        local[k] /= l[k * size + k];
        for (int j = k + 1; j < size; j++) {
          local[j] -= l[k * size + j] * local[k];
        }
      }
      store(f, x, size);
    }
    for (int f = fronts.length - 1; f >= 0; f--) {
      int size = load(f, x);
      double[] l = factor[f];
      for (int k = DIMENSION * fronts[f].width() - 1; k >= 0; k--) {
        local[k] = (local[k] - product(l, k * size, local, k + 1, size)) / l[k * size + k];
      }
      store(f, x, DIMENSION * fronts[f].width());
    }
  }

  /** Four sums side by side: one alone would wait for itself at every step. */
  private static double product(double[] l, int row, double[] x, int from, int to) {
    double a = 0;
    double b = 0;
    double c = 0;
    double d = 0;
    int j = from;
    for (; j + 3 < to; j += 4) {
      a += l[row + j] * x[j];
      b += l[row + j + 1] * x[j + 1];
      c += l[row + j + 2] * x[j + 2];
      d += l[row + j + 3] * x[j + 3];
    }
    for (; j < to; j++) {
      a += l[row + j] * x[j];
    }
    return a + b + c + d;
  }

  private int load(int f, double[] x) {
    for (int b = 0; b < fronts[f].size(); b++) {
      System.arraycopy(x, DIMENSION * fronts[f].place(b), local, DIMENSION * b, DIMENSION);
    }
    return DIMENSION * fronts[f].size();
  }

  private void store(int f, double[] x, int size) {
    for (int b = 0; b < size / DIMENSION; b++) {
      System.arraycopy(local, DIMENSION * b, x, DIMENSION * fronts[f].place(b), DIMENSION);
    }
  }
}
