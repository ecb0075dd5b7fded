package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import facetwright.aim.Goal;
import facetwright.aim.GoalReader;
import facetwright.aim.Grid;
import facetwright.aim.Outcome;
import facetwright.aim.OutcomeText;
import facetwright.check.finding.Finding;
import facetwright.geom.RingCount;
import facetwright.measure.Unit;
import facetwright.papers.ring.RingPlan;
import facetwright.papers.ring.Rings;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Dials turned so that copies seat flush in a ring. */
class RingGoalTest {
  private static final String BAUBLE =
      """
      design("Bauble", { units: "mm" });
      const waist = dial("waist", %s, { from: 10, to: 40 });
      const tall = dial("tall", %s, { from: 40, to: 160 });
      bipyramid({ sides: %d, radius: waist, height: tall }).unfold();
      sheet("A2");
      """;

  private static WhatIf bauble(int sides, double waist, double tall) throws ScriptException {
    String script = BAUBLE.formatted(waist, tall, sides);
    return WhatIf.of("bauble.js", script, Map.of(), Budget.USUAL);
  }

  private static RingPlan best(Design design, int count) {
    return Rings.of(design.net(), design.folded()).plans(count).getFirst();
  }

  /** Whatever is answered seats flush when it is made so, and leaves as little as it says. */
  @ParameterizedTest
  @CsvSource({"6, 24, 90, 6", "8, 21, 96, 8", "5, 20, 80, 8", "7, 22, 100, 12", "12, 26, 90, 9"})
  void seatsFlushAsAnswered(int sides, double waist, double tall, int count) throws Exception {
    WhatIf what = bauble(sides, waist, tall);
    Outcome outcome = what.aim(List.of(new Goal.Ring(count)), List.of(), Grid.none());
    assertThat(outcome.isMet()).isTrue();
    Design made = what.turned(outcome.values()).orElseThrow();
    RingPlan plan = best(made, count);
    assertThat(plan.seating().isFlush())
        .as("%s by %s", plan.seating(), outcome.settings())
        .isTrue();
    // The angle between the normals of two seats of a flush ring: half a turn less a copy's part.
    assertThat(plan.seating().normalsDegrees()).isCloseTo(180 - 360.0 / count, within(0.01));
  }

  /**
   * Opposite facets of an upright double pyramid of an even number of sides lean by the same angle
   * from the upright, so the piece takes twice the angle between facet and axis: tan of it is the
   * apothem of the base by half of the height.
   */
  @Test
  void comesToTheHeightThatTrigonometryNames() throws Exception {
    WhatIf what = bauble(8, 21, 96);
    Outcome outcome = what.aim(List.of(new Goal.Ring(8)), List.of("tall"), Grid.none());
    double apothem = 21 * Math.cos(Math.PI / 8);
    assertThat(outcome.turns().getFirst().exact())
        .isCloseTo(2 * apothem / Math.tan(Math.toRadians(22.5)), within(1e-3));
  }

  @Test
  void onARulerItSaysWhatIsLeftAndThatGlueMakesItUp() throws Exception {
    WhatIf what = bauble(8, 21, 96);
    Outcome outcome = what.aim(List.of(new Goal.Ring(8)), List.of("tall"), Grid.usual(Unit.MM));
    assertThat(outcome.isMet()).isTrue();
    double miss = outcome.miss(new Goal.Ring(8));
    assertThat(Math.abs(miss)).isLessThanOrEqualTo(RingCount.FORGIVEN);
    assertThat(OutcomeText.goals(outcome).getFirst())
        .startsWith("a ring of 8 seats; neighbours")
        .containsAnyOf("which glue and card make up", "which card gives", "to a hair");
    RingPlan plan = best(what.turned(outcome.values()).orElseThrow(), 8);
    assertThat(plan.seating().isFlush()).isTrue();
    assertThat(plan.seating().opening()).isCloseTo(miss, within(0.05));
  }

  @Test
  void aScriptAimsAtARing() throws Exception {
    String script =
        BAUBLE
            .formatted("21", "96", 8)
            .replace("bipyramid", "aim({ ring: 8, turn: \"tall\" });\nbipyramid");
    Design made = Facetwright.evaluate("bauble.js", script, Map.of(), Budget.USUAL);
    assertThat(made.dials().getLast().value()).isNotEqualTo(96);
    assertThat(Math.abs(Rings.of(made.net(), made.folded()).opening(8, "").orElseThrow()))
        .isLessThanOrEqualTo(RingCount.FORGIVEN);
  }

  /**
   * The script's finding is a note just where the ring planned at what was set has nothing between.
   */
  @ParameterizedTest
  @CsvSource({"1.125, 2.5", "1.375, 2.5", "1, 2.5", "1.5, 3"})
  void theFindingAgreesWithThePlan(double width, double tall) throws Exception {
    String script =
        """
        design("Lantern", { units: "in" });
        sheet("A2");
        const width = %s;
        const tall = dial("tall", %s, { from: 1.5, to: 4 });
        aim({ ring: 8 });
        const body = wrap({ columns: 8, width, rows: [width, tall, tall, width], seam: "1/2 in" });
        body.columns("even").rows("rim").remove();
        body.columns("even").rows("wall").gusset();
        body.columns("odd").rows("rim").tabs();
        """
            .formatted(width, tall);
    Design made = Facetwright.evaluate("ring.js", script, Map.of(), Budget.USUAL);
    Rings rings = Rings.of(made.net(), made.folded());
    boolean isFlush = best(made, 8).seating().isFlush();
    assertThat(made.findings().stream().filter(f -> f.rule().equals("aim")))
        .singleElement()
        .satisfies(
            f ->
                assertThat(f.severity())
                    .isEqualTo(isFlush ? Finding.Severity.NOTE : Finding.Severity.WARNING));
    assertThat(rings.flushCounts().contains(8)).isEqualTo(isFlush);
    assertThat(RingCount.isForgiven(rings.opening(8, "").orElseThrow())).isEqualTo(isFlush);
  }

  @Test
  void standingPiecesAreAskedFor() {
    assertThat(GoalReader.read("ring", "8 standing", Unit.MM))
        .isEqualTo(new Goal.Ring(8, true, ""));
  }

  @Test
  void whatCannotBeReachedSaysHowFarItIs() throws Exception {
    WhatIf what = bauble(8, 21, 96);
    Outcome outcome = what.aim(List.of(new Goal.Ring(40)), List.of(), Grid.none());
    assertThat(outcome.isMet()).isFalse();
    assertThat(OutcomeText.goals(outcome).getFirst())
        .startsWith("a ring of 40 does not seat flush by turning waist, tall")
        .contains("mm");
  }

  @ParameterizedTest
  @ValueSource(strings = {"2", "73", "eight", "8.5", "-8"})
  void refusesWhatIsNoRing(String count) {
    assertThatThrownBy(() -> GoalReader.read("ring", count, Unit.MM))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("3")
        .hasMessageContaining("72");
  }

  /** Too thin to fold is never asked for: strips of card are laid up instead. */
  @Test
  void aWedgeIsOnlyFoldedWhereItCanBe() throws Exception {
    for (double tall = 60; tall <= 150; tall += 1) {
      for (int count : new int[] {6, 7, 8, 9}) {
        Design made = bauble(8, 21, tall).design();
        Rings.of(made.net(), made.folded()).plans(count).stream()
            .flatMap(p -> p.seating().spacer().stream())
            .forEach(
                s -> {
                  assertThat(s.outer()).isGreaterThan(RingCount.FORGIVEN);
                  assertThat(s.isFolded()).isEqualTo(s.outer() >= 3);
                  assertThat(s.strips(0.25) * 0.25).isCloseTo(s.outer(), within(0.126));
                });
      }
    }
  }
}
