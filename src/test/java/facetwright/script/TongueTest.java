package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import facetwright.check.finding.Finding;
import facetwright.draw.Drawing;
import facetwright.draw.FillKind;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.NetDrawing;
import facetwright.fold.pose.Closure;
import facetwright.form.NetChecks;
import facetwright.language.Telling;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.papers.chart.ScoreChart;
import facetwright.papers.chart.StepText;
import facetwright.papers.chart.StepWords;
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
    // Longer than its tongue, a third of the wall, by 0.5 mm at each end; as wide as the card is
    // thick, 0.275 mm for 220 g/m² as the program reckons it.
    assertThat(slots(made.net()))
        .allSatisfy(s -> assertThat(s.area()).isCloseTo((wide / 3 + 1) * 0.275, within(1e-6)));
    assertThat(slots(made.net())).allMatch(Opening.Slot::isLine);
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

  /**
   * A single cut gives way to card of up to a millimetre, a slot to card as thick as it is wide.
   */
  @ParameterizedTest
  @CsvSource({"0.9, 0.2, false", "1.2, 0.9, true", "1.2, 1.1, true", "1.2, 1.2, false"})
  void aSlotNarrowerThanTheCardIsTold(double caliper, double slot, boolean isTold)
      throws Exception {
    String script =
        String.format(Locale.ROOT, LANTERN, 50.0, 10.0, 80.0, "inset: 10, slot: " + slot);
    Design made =
        Facetwright.evaluate(
            "a.js",
            script.replace("\"A1\"", "\"A1\", { caliper: " + caliper + " }"),
            Map.of(),
            Budget.USUAL);
    assertThat(made.findings().stream().anyMatch(f -> f.rule().equals("tight-flap")))
        .isEqualTo(isTold);
  }

  @Test
  void theChartCutsSlots() throws Exception {
    assertThat(words(run(50, 10, 80, "inset: 10, slot: 1.5")))
        .anyMatch(w -> w.startsWith("Cut out 4 slots"))
        .noneMatch(w -> w.contains("window") || w.contains("single line"));
  }

  /** Card is cut along a single line where it is too thin for a slot, on every paper. */
  @Test
  void theChartAndTheTemplateCutSingleLinesForThinCard() throws Exception {
    Design made = run(50, 10, 80, "inset: 10");
    assertThat(words(made))
        .anyMatch(w -> w.startsWith("Cut single lines for the tongues, from point to point:\n"))
        .noneMatch(w -> w.contains("slot") || w.contains("window"));
    Drawing net = NetDrawing.of(made.laid(), 0, NetDrawing.TEMPLATE);
    // A third of 50 mm and half a millimetre at each end.
    assertThat(net.marks())
        .filteredOn(
            m ->
                m instanceof Mark.Stroke l
                    && l.kind() == LineKind.CUT
                    && !l.closed()
                    && Math.abs(l.points().getFirst().distance(l.points().getLast()) - 53.0 / 3)
                        < 1e-6)
        .hasSize(4);
    assertThat(net.marks()).noneMatch(m -> m instanceof Mark.Fill f && f.kind() == FillKind.WINDOW);
  }

  private static List<String> words(Design made) {
    ScoreChart chart = ScoreChart.of(made.net(), Ruler.MM);
    return chart.pieces().stream()
        .flatMap(p -> StepWords.texts(StepText.of(p, Telling.english(Unit.MM, p.ruler()))).stream())
        .toList();
  }

  /**
   * A slot is held to the card that is left beside it as holes are: 3 mm to an edge, 5 to a score.
   */
  @ParameterizedTest
  @CsvSource({"2.5, true, true", "4, false, true", "6, false, false"})
  void aSlotNearAnEdgeOrAScoreIsTold(double inset, boolean isNearEdge, boolean isNearScore)
      throws Exception {
    String script =
        """
        design("Tray with a handle");
        const floor = panel("floor", { width: 80, height: 80 });
        %s
        const handle = panel("handle", { width: 50, height: 60 });
        handle.tongue("bottom", floor, "bottom", { inset: %s });
        """;
    String edge = String.format(Locale.ROOT, script, "", inset);
    String scored =
        String.format(
            Locale.ROOT,
            script,
            "floor.attach(\"bottom\", \"wall\", { depth: 20, fold: 90 });",
            inset);
    assertThat(isFound(edge, "hole-near-edge")).isEqualTo(isNearEdge);
    assertThat(isFound(scored, "window-near-score")).isEqualTo(isNearScore);
  }

  private static boolean isFound(String script, String rule) throws ScriptException {
    return Facetwright.evaluate("a.js", script, Map.of(), Budget.USUAL).findings().stream()
        .anyMatch(f -> f.rule().equals(rule) && f.message().toString().startsWith("A slot in"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "inset: 0.1|the slot in \"base\" reaches 0.04 mm over the edge",
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
