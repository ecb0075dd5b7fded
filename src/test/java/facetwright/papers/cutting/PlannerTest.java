package facetwright.papers.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Plans for everything wanted, over several sheets. */
class PlannerTest {
  private static final Paper A4 = new Paper("A4", 210, 297);
  private static final Paper A3 = new Paper("A3", 297, 420);

  /** 12 × 5 pieces of 1 x 2 3/8 in lie on a sheet of 12 x 12 in by plain division. */
  @Test
  void oneKindByDivision() {
    Paper paper = new Paper("12x12", 304.8, 304.8);
    List<Wanted> wanted = List.of(Wanted.of("a", 25.4, 60.325, 120, false));
    CutPlan plan = Planner.plan(List.of(paper), wanted, 0, Effort.USUAL);
    assertThat(Verify.exactly(plan)).isEmpty();
    assertThat(plan.sheetCount()).isEqualTo(2);
    assertThat(plan.bestKnown()).isTrue();
    assertThat(plan.measures()).hasSizeLessThanOrEqualTo(3);
  }

  @Test
  void restGoesOnTheSmallestSheetThatTakesIt() {
    List<Wanted> wanted =
        List.of(Wanted.of("a", 290, 410, 1, true), Wanted.of("b", 60, 60, 4, true));
    CutPlan plan = Planner.plan(List.of(A3, A4), wanted, 0, Effort.USUAL);
    assertThat(Verify.exactly(plan)).isEmpty();
    assertThat(plan.sheets().stream().map(s -> s.paper().name())).containsExactly("A3", "A4");
  }

  @Test
  void aPatternKeepsItsDirection() {
    List<Wanted> along = List.of(Wanted.of("a", 100, 250, 1, false));
    assertThat(Verify.exactly(Planner.plan(List.of(A4), along, 0, Effort.USUAL))).isEmpty();
    List<Wanted> across = List.of(Wanted.of("strip", 250, 100, 1, false));
    assertThatThrownBy(() -> Planner.plan(List.of(A4), across, 0, Effort.USUAL))
        .hasMessageContaining("\"strip\"")
        .hasMessageContaining("larger than every sheet")
        .hasMessageContaining("turned");
  }

  @Property(seed = "20261125", tries = 40)
  void everyPieceIsCutOnce(
      @ForAll @Size(min = 1, max = 6) List<@IntRange(min = 0, max = 99_999) Integer> kinds,
      @ForAll @IntRange(min = 0, max = 1) int kerf) {
    List<Wanted> wanted = new ArrayList<>();
    for (int kind : kinds) {
      wanted.add(
          Wanted.of(
              "piece " + wanted.size(),
              20 + kind % 71 * 1.5,
              20 + kind / 71 % 83 * 1.25,
              1 + kind % 13,
              kind % 2 == 0));
    }
    CutPlan plan = Planner.plan(List.of(A4, A3), wanted, kerf, new Effort(10_000_000));
    assertThat(Verify.exactly(plan)).isEmpty();
    double area = wanted.stream().mapToDouble(w -> w.count() * w.area()).sum();
    assertThat(plan.sheetCount()).isGreaterThanOrEqualTo((int) Math.ceil(area / A3.area() - 1e-9));
    assertThat(plan.sheets().stream().mapToDouble(s -> s.copies() * s.used()).sum())
        .isCloseTo(area, org.assertj.core.data.Offset.offset(1e-3));
    for (SheetPlan sheet : plan.sheets()) {
      int cuts = sheet.whole().cuts();
      List<Cut> steps = Cuts.of(sheet, wanted);
      assertThat(steps.stream().mapToInt(s -> s.times() * s.of()).sum()).isEqualTo(cuts);
    }
  }
}
