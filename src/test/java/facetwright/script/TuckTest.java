package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import facetwright.check.finding.Finding;
import facetwright.fold.pose.Closure;
import facetwright.form.NetChecks;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A flap that is tucked in: it lies behind the wall it meets, and no glue holds it. */
class TuckTest {
  private static final String BOX =
      """
      design("Tuck box");
      const floor = panel("floor", { width: %s, height: %s });
      const [front, right, back, left] = ["bottom", "right", "top", "left"].map((edge) =>
        floor.attach(edge, edge + " wall", { depth: %s, fold: 90 }));
      for (const wall of [front, back]) {
        wall.join("right", wall === front ? left : right, "left", { depth: 8 });
        wall.join("left", wall === front ? right : left, "right", { depth: 8 });
      }
      const lid = back.attach("top", "lid", { depth: %s, fold: 90 });
      lid.tuck("top", front, { depth: %s, radius: 0 });
      sheet("A3");
      """;

  private static Design run(String script) throws ScriptException {
    return Facetwright.evaluate("a.js", script, Map.of(), Budget.USUAL);
  }

  private static String box(double width, double depth, double height, double tuck) {
    return BOX.formatted(width, depth, height, depth, tuck);
  }

  private static int lap(Net net) {
    for (int j = 0; j < net.joins().size(); j++) {
      if (net.joins().get(j) instanceof Join.Lap l && !l.hold().isGlued()) {
        return j;
      }
    }
    return -1;
  }

  @Property(tries = 12, seed = "20261130")
  void aTuckedBoxCloses(
      @ForAll @DoubleRange(min = 40, max = 90) double width,
      @ForAll @DoubleRange(min = 40, max = 90) double depth,
      @ForAll @DoubleRange(min = 25, max = 60) double height,
      @ForAll @DoubleRange(min = 8, max = 20) double tuck)
      throws Exception {
    Design box = run(box(width, depth, height, tuck));
    assertThat(box.folded().closure()).isEqualTo(Closure.CLOSES);
    assertThat(box.findings()).noneMatch(f -> f.severity() == Finding.Severity.ERROR);
    NetChecks.overlapFree(box.net());
    Join.Lap lap = (Join.Lap) box.net().joins().get(lap(box.net()));
    assertThat(box.net().panels().get(lap.over()).name()).isEqualTo("bottom wall");
    // A trapezium: set back by 1.5 mm at each end of its hinge, its sides leaning in by 10°.
    double far = width - 3 - 2 * tuck * Math.tan(Math.toRadians(10));
    assertThat(box.net().panels().get(lap.under()).outline().area())
        .isCloseTo(tuck * (width - 3 + far) / 2, within(1e-6));
  }

  /** Deeper than the wall behind which it goes, it would run into the floor. */
  @Test
  void aTuckDeeperThanItsWallIsTold() throws Exception {
    Design box = run(box(60, 40, 20, 26));
    assertThat(box.findings()).anyMatch(f -> f.severity() == Finding.Severity.ERROR);
  }

  /** A lid too long brings its flap beside the wall, not behind it. */
  @Test
  void aLidOfAnotherDepthIsTold() throws Exception {
    Design box = run(BOX.formatted(60.0, 40.0, 30.0, 46.0, 12.0));
    assertThat(box.folded().closure()).isNotEqualTo(Closure.CLOSES);
    assertThat(box.findings().toString() + box.folded()).contains("tuck of");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "lid.tuck('top', lid)|can't be tucked behind the panel it hangs on",
        "lid.tuck('left', right, { relief: 15 })|narrower than a third of its hinge",
        "lid.tuck('left', right, { bevel: 70 })|bevel",
        "lid.tuck('roof', right)|has no edge",
        "lid.tuck('left')|into",
      })
  void whatMakesNoSenseIsRefusedAtItsLine(String said, String told) {
    ScriptException e =
        catchThrowableOfType(
            ScriptException.class, () -> run(box(60, 40, 30, 12) + said.replace('\'', '"') + ";"));
    assertThat(e).isNotNull().hasMessageContaining(told);
    assertThat(e.line()).isEqualTo(12);
  }

  /** Said twice of one pair of facets, the flap of the first would be lost without a word. */
  @ParameterizedTest
  @CsvSource({"top, side 1", "top, side 3", "base, side 2"})
  void isSaidOnceOfTwoFacets(String lid, String into) throws ScriptException {
    String box = "design('Box');\nbox({ width: 60, depth: 40, height: 30 })";
    String tuck = "\n.tuck('" + lid + "', '" + into + "', { depth: %d })";
    ScriptException twice =
        catchThrowableOfType(
            ScriptException.class,
            () -> run(box + tuck.formatted(12) + tuck.formatted(15) + ".unfold();"));
    assertThat(twice.line()).isEqualTo(4);
    assertThat(twice)
        .hasMessageContaining(lid)
        .hasMessageContaining(into)
        .hasMessageContaining("already: say it once");
    assertThat(run(box + tuck.formatted(12) + ".unfold();").folded().closure())
        .isEqualTo(Closure.CLOSES);
  }
}
