package facetwright.fold.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/** The factor of the solver beside a dense one of another library. */
class FrontalFactorTest {
  /** Points tied at random, some to none. */
  private static List<Equation> ties(int points, int ties, SplittableRandom chance) {
    List<Equation> all = new ArrayList<>();
    for (int i = 0; i < ties && points > 1; i++) {
      int p = chance.nextInt(points);
      int q = (p + 1 + chance.nextInt(points - 1)) % points;
      all.add(new Apart(p, q, 1 + chance.nextDouble()));
      int r = chance.nextInt(points);
      if (r != p && r != q) {
        all.add(new Combined(List.of(p, q, r), List.of(0.5, 0.75, -1.25)));
      }
    }
    return all;
  }

  @Property(tries = 150, seed = "20261125")
  void solvesAsADenseFactorDoes(
      @ForAll @IntRange(min = 1, max = 40) int points,
      @ForAll @IntRange(min = 0, max = 90) int ties,
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    SplittableRandom chance = new SplittableRandom(seed);
    List<Equation> equations = ties(points, ties, chance);
    int n = 3 * points;
    double[] x = chance.doubles(n, -2, 2).toArray();
    double[] b = chance.doubles(n, -1, 1).toArray();
    NormalMatrix ours = new NormalMatrix(equations, x);
    RealMatrix dense = new Array2DRowRealMatrix(n, n);
    double[] miss = new double[3];
    double[] slope = new double[36];
    for (int e = 0; e < equations.size(); e++) {
      Equation equation = equations.get(e);
      equation.at(x, miss, slope);
      int[] tied = equation.points().stream().mapToInt(p -> p).toArray();
      ours.add(e, tied, equation.rows(), slope, 2);
      int width = 3 * tied.length;
      for (int r = 0; r < equation.rows(); r++) {
        for (int i = 0; i < width; i++) {
          for (int j = 0; j < width; j++) {
            dense.addToEntry(
                3 * tied[i / 3] + i % 3,
                3 * tied[j / 3] + j % 3,
                2 * slope[r * width + i] * slope[r * width + j]);
          }
        }
      }
    }
    dense = dense.add(MatrixUtils.createRealIdentityMatrix(n).scalarMultiply(0.1));
    assertThat(ours.factor(0.1)).isTrue();
    double[] answer = b.clone();
    ours.solve(answer);
    double off =
        new CholeskyDecomposition(dense)
            .getSolver()
            .solve(new ArrayRealVector(b))
            .getLInfDistance(new ArrayRealVector(answer));
    assertThat(off).isLessThan(1e-10);
  }

  @Test
  void tellsAMatrixThatIsNotPositive() {
    NormalMatrix matrix = new NormalMatrix(List.of(new Apart(0, 1, 1)), new double[6]);
    matrix.add(0, new int[] {0, 1}, 1, new double[] {1, 0, 0, -1, 0, 0}, 1);
    assertThat(matrix.factor(0)).isFalse();
    assertThat(matrix.factor(1e-3)).isTrue();
  }

  /**
   * Each place is tied to all that come later and share an equation or an earlier place with it.
   */
  @Property(tries = 50, seed = "20261125")
  void placesAreAPostorderWithAllFill(
      @ForAll @IntRange(min = 2, max = 30) int points,
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    List<Equation> equations = ties(points, 2 * points, new SplittableRandom(seed));
    Fill fill = Fill.of(EliminationOrder.neighbours(points, equations), new double[3 * points]);
    boolean[][] tied = new boolean[points][points];
    for (Equation e : equations) {
      for (int p : e.points()) {
        for (int q : e.points()) {
          tied[fill.place[p]][fill.place[q]] = true;
        }
      }
    }
    int[] sorted = fill.place.clone();
    Arrays.sort(sorted);
    for (int k = 0; k < points; k++) {
      assertThat(sorted[k]).isEqualTo(k);
      int now = k;
      int[] later = IntStream.range(k + 1, points).filter(r -> tied[now][r]).toArray();
      assertThat(fill.below[k]).isEqualTo(later);
      for (int r : later) {
        for (int s : later) {
          tied[r][s] = true;
        }
      }
    }
  }
}
