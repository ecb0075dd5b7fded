package facetwright.script;

import static facetwright.script.FitTest.EDGE;
import static facetwright.script.FitTest.NUMBER;
import static facetwright.script.FitTest.drum;
import static facetwright.script.FitTest.evaluate;
import static facetwright.script.FitTest.fit;
import static facetwright.script.FitTest.js;
import static facetwright.script.FitTest.told;
import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.Verdict;
import facetwright.check.finding.Finding;
import facetwright.check.finding.Finding.Severity;
import facetwright.script.design.Design;
import facetwright.script.sandbox.ScriptException;
import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Lids of another shape than their box, and pieces that stand beside each other. */
class OtherLidsTest {
  private static String stranger(double caliper, int sides, int lidSides, double side) {
    return drum(caliper, sides, 30, side)
        .replace(
            "sides: %d, side: %s, height: 15".formatted(sides, side),
            "sides: %d, side: %s, height: 15".formatted(lidSides, side));
  }

  /** What is said of a lid of other corners, followed: it goes on. */
  @Property(tries = 15, shrinking = ShrinkingMode.OFF)
  void lidsOfOtherCorners(
      @ForAll @DoubleRange(min = 0.1, max = 1) double caliper,
      @ForAll @IntRange(min = 3, max = 9) int sides,
      @ForAll @IntRange(min = 3, max = 9) int lidSides,
      @ForAll @DoubleRange(min = 10, max = 60) double side)
      throws ScriptException {
    Assume.that(sides != lidSides);
    String script = stranger(caliper, sides, lidSides, side);
    List<Finding> all = fit(script);
    double box = 15 / Math.sin(Math.PI / sides) * 2;
    double lid = side / Math.sin(Math.PI / lidSides);
    // A circle round the one that lies in the other's, and the other way round.
    if (lid < box * Math.cos(Math.PI / sides)) {
      assertThat(all).as(script).hasSize(1);
      assertThat(all.getFirst().severity()).isEqualTo(Severity.ERROR);
      assertThat(evaluate(script).isSound()).isFalse();
      Design made = evaluate(script);
      assertThat(Verdict.of(made.laid(), made.folded(), made.findings()).text(made.unit()))
          .contains("does not go over the box");
    }
    if (lid * Math.cos(Math.PI / lidSides) > box + 4 * caliper + EDGE) {
      assertThat(all).as(script).isEmpty();
    }
    if (!all.isEmpty() && all.getFirst().severity() == Severity.ERROR) {
      String fix = all.getFirst().fix();
      double times = told("make it " + NUMBER + " times as large across", fix)[0];
      assertThat(fit(stranger(caliper, sides, lidSides, side * times))).as(fix).isEmpty();
      double same = told("Give the lid " + sides + " sides of " + NUMBER + " mm", fix)[0];
      assertThat(fit(drum(caliper, sides, 30, same))).as(fix).isEmpty();
    }
  }

  @Test
  void lidsOfAnotherShape() throws ScriptException {
    Finding found = fit(stranger(0.3, 6, 5, 30)).getFirst();
    assertThat(found.severity()).isEqualTo(Severity.ERROR);
    assertThat(found.message())
        .startsWith(
            "The lid with \"lid base\" has 5 corners and the box with \"box base\" has 6. However"
                + " it is turned, it lacks ");
    // Between corners of the lid, those of the pot have 41·cos(7.5°) - 40·cos(7.5°) = 0.99 mm.
    String round =
        js(
            """
            0.3 });
            prism({ sides: 12, radius: 40, height: 50 }).open("top").unfold({ part: "pot" });
            prism({ sides: 24, radius: %s, height: 14 }).open("top").unfold({ part: "lid" });
            """,
            41);
    assertThat(fit(round)).isEmpty();
    assertThat(fit(round.replace("radius: 41", "radius: 40.2"))).hasSize(1);
  }

  private static String cells(double depth) {
    return js(
        """
        0.3 });
        box({ width: 85, depth: 40, height: 25 }).open("top").unfold({ part: "box" });
        for (const part of ["insert one", "insert two"]) {
          box({ width: %1$s, depth: %1$s, height: 20 }).open("top").unfold({ part });
        }
        """,
        depth);
  }

  @Test
  void insertsBesideEachOther() throws ScriptException {
    assertThat(fit(cells(39))).isEmpty();
    assertThat(fit(cells(40)))
        .isNotEmpty()
        .allMatch(f -> f.severity() == Severity.ERROR)
        .allMatch(
            f -> f.fix().startsWith("Make the box 85 × 41.1 mm (1.1 mm more than its 40 mm)"));
  }

  /** What is told in inches is enough, too. */
  @Test
  void inInches() throws ScriptException {
    String script =
        """
        design("Parts", { units: "in" });
        sheet("A3", { weight: 300 });
        box({ width: 3, depth: 2, height: 1.5 }).open("top").unfold({ part: "box" });
        box({ width: %s, depth: %s, height: 0.5 }).open("top").unfold({ part: "lid" });
        """;
    Finding found = fit(script.formatted(3, 2)).getFirst();
    double[] sizes = told("Make the lid " + NUMBER + " × " + NUMBER + " in", found.fix());
    assertThat(fit(script.formatted(sizes[0], sizes[1]))).isEmpty();
    // Half a millimetre of play is more than a hundredth of an inch, less than three.
    assertThat(fit(script.formatted(sizes[0] - 0.01, sizes[1]))).isEmpty();
    assertThat(fit(script.formatted(sizes[0] - 0.03, sizes[1]))).hasSize(1);
  }
}
