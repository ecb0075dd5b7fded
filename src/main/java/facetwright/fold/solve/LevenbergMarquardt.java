package facetwright.fold.solve;

import java.util.Arrays;
import java.util.List;

/**
 * Brings points to where they satisfy their equations, by Levenberg's and Marquardt's damped least
 * squares (K. Levenberg, Quart. Appl. Math. 2 (1944) 164-168; D. W. Marquardt, J. SIAM 11 (1963)
 * 431-441; from memory) with a sparse Cholesky factor of JᵀJ + λI.
 *
 * <p>Not safe for use by several threads at a time.
 */
public final class LevenbergMarquardt {
  /**
   * A miss of no more, as part of the size, that a step does not lessen is rounding in what the
   * equations say, not something to step for.
   */
  private static final double AT_ROUNDING = 1e-11;

  private static final double GOOD_GAIN = 0.5;
  private static final double POOR_GAIN = 0.1;
  private static final double LOOSEN = 0.03;
  private static final double TIGHTEN = 5;
  private static final double MOST_DAMPING = 1e8;
  private static final int MOST_ROWS = 3;

  /** What is held by less than this is free. */
  private static final double HOLD = 1e-9;

  private final SolverSettings settings;
  private final double size;
  private final NormalMatrix matrix;
  private final List<Equation> equations;
  private final int[][] points;
  private final double[] miss = new double[MOST_ROWS];
  private final double[] slope;
  private final double[] down;
  private double worst;

  /** Where the points came to rest. */
  public static final class Rest {
    private final double[] x;
    private final int iterations;
    private final double worst;

    Rest(double[] x, int iterations, double worst) {
      this.x = x;
      this.iterations = iterations;
      this.worst = worst;
    }

    /** The coordinates of the points, in mm. */
    public double[] x() {
      return x.clone();
    }

    /** How many steps were tried. */
    public int iterations() {
      return iterations;
    }

    /** The largest miss left, in mm. */
    public double worst() {
      return worst;
    }
  }

  /**
   * @param where the coordinates of the points, about, in mm: only the speed hangs on them
   * @param size by which the tolerances are taken, in mm
   */
  public LevenbergMarquardt(
      List<Equation> equations, double[] where, double size, SolverSettings settings) {
    this(new NormalMatrix(equations, where), where.length / 3, equations, size, settings);
  }

  private LevenbergMarquardt(
      NormalMatrix matrix,
      int count,
      List<Equation> equations,
      double size,
      SolverSettings settings) {
    this.settings = settings;
    this.size = size;
    this.matrix = matrix;
    this.equations = List.copyOf(equations);
    this.points =
        this.equations.stream()
            .map(e -> e.points().stream().mapToInt(p -> p).toArray())
            .toArray(int[][]::new);
    int widest = Arrays.stream(points).mapToInt(p -> p.length).max().orElse(1);
    slope = new double[MOST_ROWS * 3 * widest];
    down = new double[3 * count];
  }

  /**
   * The same points under other numbers.
   *
   * @param changed equations between the same points in the same order
   */
  public LevenbergMarquardt with(List<Equation> changed, SolverSettings other) {
    return new LevenbergMarquardt(matrix, down.length / 3, changed, size, other);
  }

  /** Goes downhill from a start until the misses are gone or no step helps. */
  public Rest from(double[] begin) {
    double[] x = begin.clone();
    double damping = settings.steps().firstDamping();
    boolean fresh = true;
    double cost = 0;
    int iteration = 0;
    double lastPull = -1;
    double here = 0;
    for (; iteration < settings.steps().most(); iteration++) {
      double pull = settings.pull().at(iteration);
      if (fresh || pull != lastPull) {
        cost = assemble(x, pull);
        lastPull = pull;
        here = worst;
        if (pull == 0 && here <= settings.steps().missTolerance() * size) {
          break;
        }
      }
      double[] next = matrix.factor(damping) ? step(x) : null;
      double after = next == null ? Double.POSITIVE_INFINITY : cost(next, pull);
      double foreseen = next == null ? 1 : foreseen(x, next, damping);
      double gain = (cost - after) / Math.max(foreseen, Double.MIN_NORMAL);
      fresh = after < cost;
      boolean still = next != null && largest(x, next) <= settings.steps().stepTolerance() * size;
      if (fresh) {
        x = next;
        damping *= gain > GOOD_GAIN ? LOOSEN : gain < POOR_GAIN ? TIGHTEN : 1;
      } else {
        damping *= TIGHTEN;
      }
      damping = Math.max(damping, settings.steps().leastDamping());
      boolean atRounding = !fresh && here <= AT_ROUNDING * size;
      if ((pull == 0 && (still || atRounding)) || damping > MOST_DAMPING) {
        iteration++;
        break;
      }
    }
    cost(x, 0);
    return new Rest(x, iteration, worst);
  }

  /** Sum of squares; fills the matrix and the way down. */
  private double assemble(double[] x, double pull) {
    matrix.clear();
    Arrays.fill(down, 0);
    double sum = 0;
    worst = 0;
    for (int e = 0; e < equations.size(); e++) {
      Equation equation = equations.get(e);
      double weight = equation.isPull() ? pull * pull : 1;
      if (weight == 0) {
        continue;
      }
      equation.at(x, miss, slope);
      sum += weight * squares(equation);
      int[] tied = points[e];
      int width = 3 * tied.length;
      for (int r = 0; r < equation.rows(); r++) {
        for (int c = 0; c < width; c++) {
          down[3 * tied[c / 3] + c % 3] -= weight * slope[r * width + c] * miss[r];
        }
      }
      matrix.add(e, tied, equation.rows(), slope, weight);
    }
    return sum;
  }

  private double cost(double[] x, double pull) {
    double sum = 0;
    worst = 0;
    for (Equation equation : equations) {
      double weight = equation.isPull() ? pull * pull : 1;
      if (weight != 0) {
        equation.at(x, miss, slope);
        sum += weight * squares(equation);
      }
    }
    return Double.isFinite(sum) ? sum : Double.POSITIVE_INFINITY;
  }

  private double squares(Equation equation) {
    double sum = 0;
    for (int r = 0; r < equation.rows(); r++) {
      sum += miss[r] * miss[r];
      if (!equation.isPull()) {
        worst = Math.max(worst, Math.abs(miss[r]));
      }
    }
    return sum;
  }

  private double[] step(double[] x) {
    double[] next = down.clone();
    matrix.solve(next);
    for (int i = 0; i < next.length; i++) {
      next[i] += x[i];
    }
    return next;
  }

  /** By how much the linear model lets the sum of squares fall. */
  private double foreseen(double[] x, double[] next, double damping) {
    double sum = 0;
    for (int i = 0; i < x.length; i++) {
      double h = next[i] - x[i];
      sum += h * (damping * h + down[i]);
    }
    return sum;
  }

  private static double largest(double[] x, double[] next) {
    double most = 0;
    for (int i = 0; i < x.length; i++) {
      most = Math.max(most, Math.abs(next[i] - x[i]));
    }
    return most;
  }

  /**
   * What part of a motion the equations leave free: 0 where they hold it, up to 1.
   *
   * @param x where the points are
   * @param motion a change of something, by each coordinate
   */
  public double free(double[] x, double[] motion) {
    return free(x, List.of(motion)).getFirst();
  }

  /** The same for several motions at the same place. */
  public List<Double> free(double[] x, List<double[]> motions) {
    assemble(x, 0);
    if (!matrix.factor(HOLD)) {
      return motions.stream().map(_ -> 1.0).toList();
    }
    return motions.stream().map(motion -> HOLD * compliance(motion)).toList();
  }

  /** That part of a motion itself. */
  public double[] loose(double[] x, double[] motion) {
    assemble(x, 0);
    double[] answer = motion.clone();
    if (matrix.factor(HOLD)) {
      matrix.solve(answer);
      Arrays.setAll(answer, i -> HOLD * answer[i]);
    }
    return answer;
  }

  private double compliance(double[] motion) {
    double[] answer = motion.clone();
    matrix.solve(answer);
    double sum = 0;
    double all = 0;
    for (int i = 0; i < motion.length; i++) {
      sum += motion[i] * answer[i];
      all += motion[i] * motion[i];
    }
    return all == 0 ? 0 : sum / all;
  }
}
