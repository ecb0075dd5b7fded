package facetwright.aim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.measure.Unit;
import facetwright.net.sheet.SheetSizes;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Nets that are rectangles, made as large as a sheet allows. */
class LargestFitTest {
  private static final Grid RULER = Grid.usual(Unit.MM);

  private static Outcome solve(Sham sham, Grid grid, List<Knob> knobs, Goal... goals) {
    return new Aim(List.of(goals), knobs, grid, Unit.MM, Aim.USUAL_MOST)
        .solve(sham.now(knobs), sham::at);
  }

  /** The largest in proportion: both sides of 100 × 60 grow by the same, until 60k = 210. */
  @Test
  void fitsIsTheLargestInProportion() {
    Sham sham =
        new Sham().with(Measure.NET_WIDTH, List::getFirst).with(Measure.NET_HEIGHT, v -> v.get(1));
    List<Knob> knobs = List.of(Sham.knob("long", 100, 10, 900), Sham.knob("wide", 60, 10, 900));
    Goal fit = new Goal.Fit(SheetSizes.named("A4"));
    Outcome exact = solve(sham, Grid.none(), knobs, fit);
    // A4 is 210 × 297 mm: 297 / 100 is the lesser ratio.
    assertThat(exact.turns().get(0).exact()).isCloseTo(297, within(1e-2));
    assertThat(exact.turns().get(1).exact()).isCloseTo(0.6 * 297, within(1e-2));
    Outcome ruled = solve(sham, RULER, knobs, fit);
    assertThat(ruled.set().lie().apply(SheetSizes.named("A4")).fits()).isTrue();
    assertThat(ruled.turns().get(0).value()).isBetween(296.0, 297.0);
  }

  @Test
  void fitsKeepsAMeasureAndGivesWayInTheOthers() {
    Sham sham =
        new Sham()
            .with(Measure.HEIGHT, v -> v.get(1))
            .with(Measure.NET_WIDTH, v -> 4 * v.get(0))
            .with(Measure.NET_HEIGHT, v -> v.get(1));
    List<Knob> knobs = List.of(Sham.knob("side", 90, 10, 200), Sham.knob("tall", 100, 10, 300));
    Outcome outcome =
        solve(
            sham,
            RULER,
            knobs,
            new Goal.Reach(Measure.HEIGHT, 150),
            new Goal.Fit(SheetSizes.named("A4")));
    assertThat(outcome.isMet()).isTrue();
    assertThat(outcome.set().get(Measure.HEIGHT)).isEqualTo(150);
    // 4 sides along 297 mm: 74.25 at most, 74 on the ruler.
    assertThat(outcome.turns().get(0).value()).isEqualTo(74);
  }

  @Test
  void aSheetTooSmallIsSaidWithTheEnds() {
    Sham sham =
        new Sham().with(Measure.NET_WIDTH, List::getFirst).with(Measure.NET_HEIGHT, v -> v.get(1));
    List<Knob> knobs = List.of(Sham.knob("long", 600, 500, 900), Sham.knob("wide", 60, 10, 900));
    Outcome outcome = solve(sham, RULER, knobs, new Goal.Fit(SheetSizes.named("A4")));
    assertThat(outcome.isMet()).isFalse();
    assertThat(OutcomeText.stops(outcome).orElseThrow()).contains("long is at its least (500)");
    assertThat(OutcomeText.goals(outcome).getFirst()).contains("does not fit A4");
  }
}
