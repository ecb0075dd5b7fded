package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.aim.Goal;
import facetwright.aim.GoalReader;
import facetwright.aim.Grid;
import facetwright.aim.Outcome;
import facetwright.measure.Unit;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is put together is aimed at as a whole: what comes out is a sum of its parts' measures. */
class AimAtWholesTest {
  private static final String OBELISK =
      """
      design("Obelisk");
      const tall = dial("tall", 90, { from: 50, to: 140 });
      const foot = dial("foot", 50, { from: 45, to: 60 });
      const base = prism({ sides: 4, side: foot, height: 10 }).unfold({ part: "base" });
      const shaft = frustum({ sides: 4, side: 30, top: 15, height: tall }).unfold({ part: "shaft" });
      const tip = pyramid({ sides: 4, side: 15, height: 15 }).unfold({ part: "tip" });
      shaft.on(base);
      tip.on(shaft);
      """;

  private static final String BENCH =
      """
      design("House and bench");
      const tall = dial("tall", 60, { from: 30, to: 90 });
      const gap = dial("gap", 8, { from: 4, to: 60 });
      const house = prism({ sides: 4, side: 50, height: tall }).unfold({ part: "house" });
      const bench = prism({ sides: 4, side: 15, height: 12 }).unfold({ part: "bench" });
      bench.beside(house, { side: "right", by: gap });
      """;

  private static final String TABLE =
      """
      design("Table");
      const tall = dial("tall", 60, { from: 30, to: 90 });
      const top = prism({ sides: 4, side: 100, height: 8 }).unfold({ part: "top" });
      const leg = prism({ sides: 4, side: 10, height: tall }).unfold({ part: "leg", count: 4 });
      leg.on(top, { at: [[-40, -40], [40, -40], [40, 40], [-40, 40]] });
      """;

  private static final String BOX =
      """
      design("Box and lid");
      const tall = dial("tall", 40, { from: 30, to: 90 });
      const foot = regular({ sides: 6, side: 30 });
      const box = prism({ outline: foot, height: tall }).open("top").unfold({ part: "box" });
      const lid = prism({ outline: foot.offset("card"), height: 12 }).open("top").unfold({ part: "lid" });
      lid.over(box);
      """;

  private static String script(String name) {
    return switch (name) {
      case "obelisk" -> OBELISK;
      case "bench" -> BENCH;
      case "table" -> TABLE;
      default -> BOX;
    };
  }

  /**
   * Heights add up, and so do widths and the room between: what a dial has to be is a difference.
   */
  @ParameterizedTest
  @CsvSource({
    "obelisk, height=130, tall, 105",
    "obelisk, width=55, foot, 55",
    "bench, width=100, gap, 35",
    "bench, height=75, tall, 75",
    "table, height=80, tall, 72",
    "box, height=55, tall, 55",
  })
  void theDialComesToTheDifference(String design, String goal, String dial, double value)
      throws Exception {
    WhatIf what = WhatIf.of("whole.js", script(design), Map.of(), Budget.USUAL);
    List<Goal> goals = List.of(GoalReader.read(goal, Unit.MM));
    Outcome outcome = what.aim(goals, List.of(dial), Grid.none());
    assertThat(outcome.isMet()).isTrue();
    assertThat(outcome.turns().getFirst().exact()).isCloseTo(value, within(1e-3));
    Design made = what.turned(outcome.values()).orElseThrow();
    double wanted = Double.parseDouble(goal.substring(goal.indexOf('=') + 1));
    double came =
        goal.startsWith("height")
            ? made.folded().measures().height()
            : made.folded().measures().width();
    assertThat(came).isCloseTo(wanted, within(1e-3));
  }
}
