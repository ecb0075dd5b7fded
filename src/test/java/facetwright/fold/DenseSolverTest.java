package facetwright.fold;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.fold.solve.LevenbergMarquardt;
import facetwright.fold.solve.SolverSettings;
import org.junit.jupiter.api.Test;

/** Our sparse solver beside another library's dense one: the same equations, the same start. */
class DenseSolverTest {
  /**
   * Both come to the same shape. Where it stands is free, so distances between all points are
   * compared.
   */
  @Test
  void bothFindTheSameShape() {
    Miura sheet = new Miura(20, 30, Math.toRadians(60), Math.toRadians(50), 5, 4);
    Problem problem = Problem.of(sheet, Math.toRadians(8), 1);
    LevenbergMarquardt.Rest ours = problem.descent(SolverSettings.USUAL).from(problem.begin());
    double[] theirs = DenseSolver.solve(problem);
    assertThat(ours.worst()).isLessThan(1e-11);
    double[] x = ours.x();
    double off = 0;
    double moved = 0;
    for (int p = 0; p < problem.points(); p++) {
      for (int q = 0; q < p; q++) {
        off = Math.max(off, Math.abs(distance(x, p, q) - distance(theirs, p, q)));
        moved = Math.max(moved, Math.abs(distance(x, p, q) - distance(problem.begin(), p, q)));
      }
    }
    assertThat(moved).isGreaterThan(3);
    assertThat(off).isLessThan(1e-9);
  }

  private static double distance(double[] x, int p, int q) {
    return Math.sqrt(
        Math.pow(x[3 * p] - x[3 * q], 2)
            + Math.pow(x[3 * p + 1] - x[3 * q + 1], 2)
            + Math.pow(x[3 * p + 2] - x[3 * q + 2], 2));
  }
}
