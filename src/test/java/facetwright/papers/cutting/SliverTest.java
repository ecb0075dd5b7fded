package facetwright.papers.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.pace.Pace;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Pieces far smaller than their sheet: planned as they are, in few steps. */
class SliverTest {
  /** A second or two. */
  private static final long FEW = 2_000_000;

  static Stream<Arguments> slivers() {
    return Stream.of(1, 24, 300, 10_000)
        .flatMap(
            count ->
                Stream.of(0.2, 0.02, 0.002, 1e-4, 1e-6)
                    .flatMap(
                        thin ->
                            Stream.of(
                                Arguments.of(92.2, thin, count), Arguments.of(thin, thin, count))));
  }

  @ParameterizedTest
  @MethodSource("slivers")
  void arePlannedInFewSteps(double width, double height, int count) {
    Paper a4 = new Paper("A4", 210, 297);
    Pace pace = new Pace(FEW);
    List<Wanted> wanted = List.of(Wanted.of("a", width, height, count, true));
    CutPlan plan = pace.of(() -> Planner.plan(List.of(a4), wanted, 0, Effort.USUAL));
    assertThat(plan.pieces()).containsExactly(count);
    assertThat(plan.bestKnown()).isTrue();
    int cuts = plan.sheets().stream().mapToInt(s -> s.whole().cuts()).sum();
    int told =
        plan.sheets().stream()
            .flatMap(s -> Cuts.of(s, wanted).stream())
            .mapToInt(s -> s.times() * s.of())
            .sum();
    assertThat(told).isEqualTo(cuts);
  }

  /** Beside pieces of a usual size. */
  @ParameterizedTest
  @CsvSource({"92.2,0.2,24", "0.2,0.2,24", "92.2,0.2,10000", "92.2,0.0001,24", "0.001,0.001,300"})
  void standBesideOthers(double width, double height, int count) {
    Paper a4 = new Paper("A4", 210, 297);
    Pace pace = new Pace(2 * FEW);
    List<Wanted> wanted =
        List.of(
            Wanted.of("a", width, height, count, true),
            Wanted.of("b", 57.3, 25.1, 30, true),
            Wanted.of("c", 80.2, 61.7, 7, true),
            Wanted.of("d", 33, 48.6, 11, false));
    CutPlan plan = pace.of(() -> Planner.plan(List.of(a4), wanted, 0, Effort.USUAL));
    assertThat(plan.pieces()).containsExactly(count, 30, 7, 11);
    assertThat(plan.bound()).isLessThanOrEqualTo(plan.sheetCount());
  }
}
