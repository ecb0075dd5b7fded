package facetwright.aim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;
import org.junit.jupiter.api.Test;

/** Beside another library's singular values, and beside what a pseudo-inverse is by definition. */
class LeastNormTest {
  private static RealMatrix random(int rows, int columns, SplittableRandom chance) {
    RealMatrix a = new Array2DRowRealMatrix(rows, columns);
    for (int r = 0; r < rows; r++) {
      a.setRow(r, chance.doubles(columns, -1, 1).toArray());
    }
    return a;
  }

  /** Of any shape, of any rank, rows of very different sizes among them. */
  @Property(tries = 300, seed = "20261130")
  void solvesAsSingularValuesDo(
      @ForAll @IntRange(min = 1, max = 8) int rows,
      @ForAll @IntRange(min = 1, max = 8) int columns,
      @ForAll @IntRange(min = 1, max = 8) int rank,
      @ForAll @DoubleRange(min = 0, max = 3) double spread,
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    SplittableRandom chance = new SplittableRandom(seed);
    RealMatrix a = random(rows, rank, chance).multiply(random(rank, columns, chance));
    for (int r = 0; r < rows; r++) {
      a.setRowVector(r, a.getRowVector(r).mapMultiply(Math.pow(10, -spread * r / rows)));
    }
    double[] b = chance.doubles(rows, -1, 1).toArray();
    SingularValueDecomposition values = new SingularValueDecomposition(a);
    double[] sizes = values.getSingularValues();
    int full = Math.min(rank, sizes.length);
    if (sizes[full - 1] < 1e-6 * sizes[0]) {
      return; // Its rank is a matter of opinion.
    }
    RealVector expected = new ArrayRealVector(columns);
    for (int i = 0; i < full; i++) {
      double part = values.getU().getColumnVector(i).dotProduct(new ArrayRealVector(b)) / sizes[i];
      expected = expected.add(values.getV().getColumnVector(i).mapMultiply(part));
    }
    RealVector x = new ArrayRealVector(LeastNorm.solve(a.getData(), b));
    double off = x.subtract(expected).getNorm();
    assertThat(off / (1 + expected.getNorm()) * sizes[full - 1] / sizes[0]).isLessThan(1e-12);
  }

  /** What misses stands square to all that A reaches, and x to all that A does not see. */
  @Property(tries = 200, seed = "20261130")
  void missesByLeastSquaresAndIsLeast(
      @ForAll @IntRange(min = 1, max = 6) int rows,
      @ForAll @IntRange(min = 1, max = 6) int columns,
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    SplittableRandom chance = new SplittableRandom(seed);
    RealMatrix a = random(rows, columns, chance);
    RealVector b = new ArrayRealVector(chance.doubles(rows, -1, 1).toArray());
    RealVector x = new ArrayRealVector(LeastNorm.solve(a.getData(), b.toArray()));
    RealVector miss = a.operate(x).subtract(b);
    assertThat(a.preMultiply(miss).getLInfNorm()).isCloseTo(0, within(1e-9));
    RealVector other = new ArrayRealVector(chance.doubles(columns, -1, 1).toArray());
    RealVector seen = new ArrayRealVector(LeastNorm.solve(a.getData(), a.operate(other).toArray()));
    RealVector unseen = other.subtract(seen);
    assertThat(x.dotProduct(unseen)).isCloseTo(0, within(1e-9 * (1 + x.getNorm())));
  }

  /**
   * 3x + 4y = 10: the nearest to the origin is (1.2, 1.6), and the same said twice says no more.
   */
  @Test
  void theNearestPointOfALine() {
    assertThat(LeastNorm.solve(new double[][] {{3, 4}}, new double[] {10}))
        .containsExactly(new double[] {1.2, 1.6}, within(1e-12));
    assertThat(LeastNorm.solve(new double[][] {{3, 4}, {-6, -8}}, new double[] {10, -20}))
        .containsExactly(new double[] {1.2, 1.6}, within(1e-12));
  }

  /** x = 1 and x = 2 leave x = 1.5; nothing is asked of the rest, which stays. */
  @Test
  void betweenWhatCannotBothBe() {
    assertThat(LeastNorm.solve(new double[][] {{1, 0}, {1, 0}, {0, 0}}, new double[] {1, 2, 7}))
        .containsExactly(new double[] {1.5, 0}, within(1e-12));
  }
}
