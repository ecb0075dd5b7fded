package facetwright.papers.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Plans for one sheet against published optima and against trying every cut there is. */
class OneSheetTest {
  static Stream<Instances.Instance> published() {
    return Instances.all().stream();
  }

  /** The optimum and its source stand in each file. */
  @ParameterizedTest
  @MethodSource("published")
  void reachesPublishedOptimum(Instances.Instance one) {
    CutPlan plan = OneSheet.plan(one.sheet(), one.wanted(), 0, Effort.USUAL);
    assertThat(Verify.atMost(plan)).isEmpty();
    assertThat(plan.value()).isEqualTo(one.optimum());
    assertThat(plan.bestKnown()).isTrue();
  }

  /** With little effort a plan may fall short, and then does not say that it is best. */
  @ParameterizedTest
  @MethodSource("published")
  void littleEffortStillGivesAWholePlan(Instances.Instance one) {
    CutPlan plan = OneSheet.plan(one.sheet(), one.wanted(), 0, new Effort(1_000_000));
    assertThat(Verify.atMost(plan)).isEmpty();
    assertThat(plan.value()).isBetween(0.8 * one.optimum(), one.optimum());
    if (plan.bestKnown()) {
      assertThat(plan.value()).isEqualTo(one.optimum());
    }
  }

  @Property(seed = "20261125", tries = 150)
  void isAsGoodAsTryingEveryCut(
      @ForAll @IntRange(min = 5, max = 22) int width,
      @ForAll @IntRange(min = 5, max = 22) int height,
      @ForAll @IntRange(min = 0, max = 2) int kerf,
      @ForAll boolean turn,
      @ForAll @Size(min = 1, max = 3) List<@IntRange(min = 0, max = 899) Integer> kinds) {
    List<Wanted> wanted = new ArrayList<>();
    for (int kind : kinds) {
      double w = 2 + kind % 9;
      double h = 2 + kind / 9 % 10;
      wanted.add(new Wanted("piece", w, h, Wanted.UNLIMITED, turn, 1 + kind / 90 + w * h));
    }
    wanted.removeIf(
        w ->
            !(w.width() <= width && w.height() <= height)
                && !(turn && w.height() <= width && w.width() <= height));
    CutPlan plan = OneSheet.plan(new Paper("sheet", width, height), wanted, kerf, Effort.USUAL);
    assertThat(Verify.atMost(plan)).isEmpty();
    assertThat(plan.value()).isEqualTo(everyCut(width, height, kerf, wanted));
    assertThat(plan.bestKnown()).isTrue();
  }

  /** Cuts at every whole millimetre, however useless. */
  private static double everyCut(int width, int height, int kerf, List<Wanted> wanted) {
    double[][] best = new double[width + 1][height + 1];
    for (int w = 1; w <= width; w++) {
      for (int h = 1; h <= height; h++) {
        for (Wanted one : wanted) {
          boolean fits =
              (one.width() <= w && one.height() <= h)
                  || (one.mayTurn() && one.height() <= w && one.width() <= h);
          best[w][h] = fits ? Math.max(best[w][h], one.value()) : best[w][h];
        }
        for (int at = 1; at < w; at++) {
          best[w][h] = Math.max(best[w][h], best[at][h] + best[Math.max(0, w - at - kerf)][h]);
        }
        for (int at = 1; at < h; at++) {
          best[w][h] = Math.max(best[w][h], best[w][at] + best[w][Math.max(0, h - at - kerf)]);
        }
      }
    }
    return best[width][height];
  }

  /** Sixteenths of an inch add up without rounding: 8 strips of 1 1/2 in fill 12 in exactly. */
  @ParameterizedTest
  @MethodSource("inches")
  void fractionsOfAnInchFillASheet(int parts) {
    double side = 12 * 25.4 / parts;
    List<Wanted> wanted = List.of(Wanted.of("square", side, side, Wanted.UNLIMITED, true));
    CutPlan plan = OneSheet.plan(new Paper("12x12", 304.8, 304.8), wanted, 0, Effort.USUAL);
    assertThat(plan.pieces()).containsExactly(parts * parts);
    assertThat(plan.sheets().getFirst().part())
        .isCloseTo(1, org.assertj.core.data.Offset.offset(1e-9));
  }

  static IntStream inches() {
    return IntStream.of(1, 2, 4, 8, 16, 32, 64);
  }
}
