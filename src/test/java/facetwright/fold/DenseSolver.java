package facetwright.fold;

import facetwright.fold.solve.Equation;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/** Another library's Levenberg-Marquardt on the same misses and slopes, by dense matrices. */
public final class DenseSolver {
  private DenseSolver() {}

  /** Where it brings the points. */
  public static double[] solve(Problem problem) {
    return new LevenbergMarquardtOptimizer()
        .optimize(
            new LeastSquaresBuilder()
                .start(problem.begin())
                .target(new double[problem.rows()])
                .model(x -> evaluate(problem, x.toArray()))
                .maxEvaluations(200)
                .maxIterations(200)
                .build())
        .getPoint()
        .toArray();
  }

  private static Pair<RealVector, RealMatrix> evaluate(Problem problem, double[] x) {
    double[] misses = new double[problem.rows()];
    double[][] slopes = new double[problem.rows()][x.length];
    double[] miss = new double[3];
    double[] slope = new double[36];
    int row = 0;
    for (Equation equation : problem.equations()) {
      equation.at(x, miss, slope);
      List<Integer> points = equation.points();
      int width = 3 * points.size();
      for (int r = 0; r < equation.rows(); r++) {
        misses[row] = miss[r];
        for (int c = 0; c < width; c++) {
          slopes[row][3 * points.get(c / 3) + c % 3] += slope[r * width + c];
        }
        row++;
      }
    }
    return new Pair<>(new ArrayRealVector(misses, false), new Array2DRowRealMatrix(slopes, false));
  }
}
