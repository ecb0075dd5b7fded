package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import facetwright.check.finding.Finding;
import facetwright.fold.pose.Closure;
import facetwright.form.NetChecks;
import facetwright.measure.Ruler;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.papers.chart.ScoreChart;
import facetwright.papers.chart.StepText;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Walls held on a base by tongues that go through slots in it. */
class TongueTest {
  private static final String LANTERN =
      """
      design("Lantern on its base");
      const [wide, over] = [%s, %s];
      const base = panel("base", { width: wide + 2 * over, height: wide + 2 * over });
      const walls = [panel("wall 1", { width: wide, height: %s })];
      for (let k = 2; k < 5; k++) {
        walls.push(walls.at(-1).attach(k === 2 ? "right" : "top", "wall " + k, { depth: wide, fold: 90 }));
      }
      walls[3].join("top", walls[0], "left", { depth: 8 });
      const feet = ["bottom", "right", "right", "right"], sides = ["bottom", "left", "top", "right"];
      sheet("A1");
      walls.forEach((wall, k) => wall.tongue(feet[k], base, sides[k], { %s }));
      """;

  private static Design run(double wide, double over, double tall, String options)
      throws ScriptException {
    String script = String.format(Locale.ROOT, LANTERN, wide, over, tall, options);
    return Facetwright.evaluate("a.js", script, Map.of(), Budget.USUAL);
  }

  private static List<Opening.Slot> slots(Net net) {
    return net.panels().stream()
        .flatMap(p -> p.openings().stream())
        .filter(Opening.Slot.class::isInstance)
        .map(Opening.Slot.class::cast)
        .toList();
  }

  @Property(tries = 10, seed = "20261203")
  void aLanternStandsInItsSlots(
      @ForAll @DoubleRange(min = 40, max = 80) double wide,
      @ForAll @DoubleRange(min = 5, max = 20) double over,
      @ForAll @DoubleRange(min = 40, max = 90) double tall,
      @ForAll @DoubleRange(min = 5, max = 12) double depth)
      throws Exception {
    Design made = run(wide, over, tall, "inset: over, depth: " + depth);
    assertThat(made.folded().closure()).isEqualTo(Closure.CLOSES);
    assertThat(made.findings()).noneMatch(f -> f.severity() == Finding.Severity.ERROR);
    NetChecks.overlapFree(made.net());
    assertThat(slots(made.net())).hasSize(4);
    // Longer than its tongue, a third of the wall, by 0.5 mm at each end; 0.5 mm wide.
    assertThat(slots(made.net()))
        .allSatisfy(s -> assertThat(s.area()).isCloseTo((wide / 3 + 1) * 0.5, within(1e-6)));
    assertThat(Join.glued(made.net())).hasSize(1);
  }

  /** Slots too far in by 2 mm are missed by as much, less the thickness of the card. */
  @Test
  void aSlotInAnotherPlaceIsMissed() throws Exception {
    Design made = run(50, 10, 80, "inset: 12");
    assertThat(made.folded().closure()).isNotEqualTo(Closure.CLOSES);
    assertThat(made.findings().toString())
        .contains("through its slot in \"base\" misses by 1.73 mm");
  }

  @Test
  void tonguesThatMeetAreTold() throws Exception {
    assertThat(run(50, 10, 80, "inset: 10, depth: 30").findings())
        .anyMatch(f -> f.rule().equals("tabs-clash"));
  }

  @Test
  void aSlotNarrowerThanTheCardIsTold() throws Exception {
    assertThat(run(50, 10, 80, "inset: 10, slot: 0.2").findings())
        .anyMatch(f -> f.rule().equals("tight-flap"));
    assertThat(run(50, 10, 80, "inset: 10, slot: 0.3").findings())
        .noneMatch(f -> f.rule().equals("tight-flap"));
  }

  @Test
  void theChartCutsSlots() throws Exception {
    ScoreChart chart = ScoreChart.of(run(50, 10, 80, "inset: 10").net(), Ruler.MM);
    List<String> words = chart.pieces().stream().flatMap(p -> StepText.of(p).stream()).toList();
    assertThat(words).anyMatch(w -> w.startsWith("Cut out 4 slots"));
    assertThat(words).noneMatch(w -> w.contains("window"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "inset: 0.2|the slot in \"base\" reaches 0.05 mm over the edge",
        "inset: 90|over the edge",
        "width: 60|the width of a tongue must be over 0 and at most 50 mm",
        "at: 5|reaches past the end of edge",
        "slot: 9|slot",
        "fold: 200|fold",
      })
  void whatMakesNoSenseIsRefusedAtItsLine(String options, String told) {
    ScriptException e = catchThrowableOfType(ScriptException.class, () -> run(50, 10, 80, options));
    assertThat(e).isNotNull().hasMessageContaining(told);
    assertThat(e.line()).isEqualTo(11);
  }
}
