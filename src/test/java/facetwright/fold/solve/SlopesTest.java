package facetwright.fold.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Slopes against differences of misses (the definition of a derivative). */
class SlopesTest {
  private static final double STEP = 1e-5;

  private static List<Equation> all() {
    return List.of(
        new Apart(0, 1, 20),
        Combined.meet(1, 2, 0.3),
        new Combined(List.of(0, 1, 2, 3), List.of(0.5, 0.75, -0.25, -1.0)),
        new Crease(0, 1, 2, 3, 0.4, 15, false),
        new InPlane(0, 1, 2, 3, -0.3, false),
        new OnLine(0, 1, 2));
  }

  @Property(tries = 60, seed = "20261125")
  void slopesAreWhatMissesChangeBy(@ForAll long seed) {
    SplittableRandom chance = new SplittableRandom(seed);
    double[] x = new double[12];
    for (int i = 0; i < x.length; i++) {
      // About a tetrahedron, so that no two points come near each other or into one line.
      x[i] = chance.nextDouble(-4, 4) + (i / 3 > 0 && i / 3 == i % 3 + 1 ? 20 : 0);
    }
    for (Equation equation : all()) {
      int width = 3 * equation.points().size();
      double[] slope = new double[equation.rows() * width];
      equation.at(x, new double[equation.rows()], slope);
      for (int c = 0; c < width; c++) {
        int at = 3 * equation.points().get(c / 3) + c % 3;
        double[] more = missAt(equation, x, at, STEP);
        double[] less = missAt(equation, x, at, -STEP);
        for (int r = 0; r < equation.rows(); r++) {
          assertThat(slope[r * width + c])
              .as("%s, row %d, column %d", equation, r, c)
              .isCloseTo((more[r] - less[r]) / (2 * STEP), within(1e-6));
        }
      }
    }
  }

  private static double[] missAt(Equation equation, double[] x, int at, double step) {
    double[] moved = x.clone();
    moved[at] += step;
    double[] miss = new double[equation.rows()];
    equation.at(moved, miss, new double[equation.rows() * 3 * equation.points().size()]);
    return miss;
  }

  @Test
  void aPointOnTheLineMissesByNothingWhereverItIs() {
    for (double part : new double[] {-0.5, 0, 0.3, 1, 2}) {
      double[] x = {1, 2, 3, 5, -2, 9, 1 + 4 * part, 2 - 4 * part, 3 + 6 * part};
      double[] miss = new double[3];
      new OnLine(0, 1, 2).at(x, miss, new double[27]);
      assertThat(miss).containsExactly(new double[3], within(1e-12));
    }
    // 3 off square to a line along x.
    double[] miss = new double[3];
    new OnLine(0, 1, 2).at(new double[] {0, 0, 0, 7, 0, 0, 2, 3, 0}, miss, new double[27]);
    assertThat(miss).containsExactly(new double[] {0, 3, 0}, within(1e-12));
  }
}
