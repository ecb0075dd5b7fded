package facetwright.fold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.fold.close.ClosingSolver;
import facetwright.fold.close.Solved;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.ScoreAngles;
import facetwright.fold.solve.SolverSettings;
import facetwright.net.Net;
import facetwright.net.wrap.Pinch;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Solving again after a small change, from where the solver came to rest before. */
class WarmStartTest {
  private static Solved again(Net net, Solved former) {
    return ClosingSolver.solve(net, ScoreAngles.nominal(net), SolverSettings.USUAL, former);
  }

  @ParameterizedTest
  @EnumSource(Pinch.class)
  void findsTheSameFormInFewerSteps(Pinch pinch) {
    Solved former = Solving.of(GussetedWrapTest.wrap(12, 28, 60, pinch));
    for (double wall : new double[] {59, 60, 61, 64}) {
      Net net = GussetedWrapTest.wrap(12, 28, wall, pinch);
      Solved cold = Solving.of(net);
      Solved warm = again(net, former);
      assertThat(warm.verdict()).isEqualTo(Closure.CLOSES);
      assertThat(warm.starts()).isEqualTo(1);
      assertThat(warm.iterations()).isLessThanOrEqualTo(cold.iterations());
      List<Double> angles = cold.angles().radians();
      for (int s = 0; s < angles.size(); s++) {
        if (cold.angles().isKnown(s)) {
          assertThat(warm.angles().foldBy(s)).isCloseTo(angles.get(s), within(1e-9));
        }
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Pinch.class)
  void anotherNetIsSolvedAsIfFromNothing(Pinch pinch) {
    Net net = GussetedWrapTest.wrap(10, 28, 60, pinch);
    Solved other = Solving.of(GussetedWrapTest.wrap(8, 28, 60, pinch));
    assertThat(again(net, other)).isEqualTo(Solving.of(net));
  }
}
