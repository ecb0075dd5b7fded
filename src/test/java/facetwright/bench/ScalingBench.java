package facetwright.bench;

import facetwright.fold.Miura;
import facetwright.fold.Problem;
import facetwright.fold.solve.LevenbergMarquardt;
import facetwright.fold.solve.SolverSettings;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How one iteration of the solver grows with the number of panels: a square sheet and a long strip
 * of parallelograms. It should grow no faster than that number to the power 1.3.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(value = 1, jvmArgs = "-Xmx1g")
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class ScalingBench {
  private static final int ITERATIONS = 3;

  /** Columns and rows. */
  @Param({"10x10", "32x32", "100x100", "25x4", "250x4", "2500x4"})
  public String sheet;

  private Problem problem;
  private LevenbergMarquardt descent;
  private double[] begin;

  @Setup
  public void lay() {
    String[] sides = sheet.split("x", -1);
    Miura miura =
        new Miura(
            20,
            30,
            Math.toRadians(60),
            Math.toRadians(50),
            Integer.parseInt(sides[0]),
            Integer.parseInt(sides[1]));
    problem = Problem.of(miura, Math.toRadians(1), 1);
    descent = problem.descent(SolverSettings.USUAL.nearby(1e-2, 1e-15, ITERATIONS));
    begin = problem.begin();
    if (descent.from(begin).iterations() != ITERATIONS) {
      throw new IllegalStateException("came to rest before " + ITERATIONS + " iterations");
    }
  }

  /** One step of the descent, its three together divided by three. */
  @Benchmark
  @OperationsPerInvocation(ITERATIONS)
  public LevenbergMarquardt.Rest iteration() {
    return descent.from(begin);
  }

  /** What is done once before: the elimination order and the places of the blocks. */
  @Benchmark
  public LevenbergMarquardt order() {
    return problem.descent(SolverSettings.USUAL);
  }
}
