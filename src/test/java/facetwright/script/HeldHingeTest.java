package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.Verdict;
import facetwright.check.finding.Finding;
import facetwright.fold.pose.Closure;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Folds that are to stay hinges, and are held or turn by what is glued round them. */
class HeldHingeTest {
  private static final String BOX =
      """
      design("Box");
      const floor = panel("floor", { width: %s, height: %s });
      const [front, right, back, left] = ["bottom", "right", "top", "left"].map((edge) =>
        floor.attach(edge, edge + " wall", { depth: %s, fold: 90 }));
      for (const wall of [front, back]) {
        wall.join("right", wall === front ? left : right, "left", { depth: 4 });
        wall.join("left", wall === front ? right : left, "right", { depth: 4 });
      }
      const lid = back.attach("top", "lid", { depth: %s, fold: 90 });
      lid.hinge(back);
      %s
      sheet("A0");
      """;

  private static List<Finding> held(String script, Object... values) throws ScriptException {
    Design design =
        Facetwright.evaluate(
            "hinge.js", String.format(Locale.ROOT, script, values), Map.of(), Budget.USUAL);
    assertThat(design.folded().closure()).isEqualTo(Closure.CLOSES);
    List<Finding> held =
        design.findings().stream().filter(f -> f.rule().equals("held-hinge")).toList();
    String verdict =
        Verdict.of(design.laid(), design.folded(), design.findings()).text(design.unit());
    if (!held.isEmpty()) {
      assertThat(verdict).startsWith("Can't be made as meant: ");
      assertThat(held.getFirst().severity()).isEqualTo(Finding.Severity.ERROR);
    }
    return held;
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          lid.join("top", front, "top"!      1
          lid.join("right", right, "top"!     1
          lid.join("left", left, "top"!     1
          """,
      delimiter = '!')
  void aLidIsHeldByGlueOnAnySide(String join, int many) throws ScriptException {
    Random chance = new Random(many);
    for (int i = 0; i < 4; i++) {
      double w = 30 + 60 * chance.nextDouble();
      double d = 30 + 60 * chance.nextDouble();
      double h = 12 + 40 * chance.nextDouble();
      List<Finding> held = held(BOX, w, d, h, d, join + ", { depth: 4 });");
      assertThat(held).hasSize(many);
      assertThat(held.getFirst().message())
          .matches("\"lid\" is to turn on its hinge with \"top wall\", and can't: .* holds it\\.");
      assertThat(held(BOX, w, d, h, d, "")).isEmpty();
      assertThat(held(BOX, w, d, h, d, "lid.tuck(\"top\", front, { depth: 8 });")).isEmpty();
    }
  }

  private static final String TUBE =
      """
      design("Tube");
      const walls = [panel("wall 1", { width: %s, height: 50 })];
      for (let i = 1; i < %d; i++) {
        walls.push(walls[i - 1].attach(i > 1 ? "top" : "right", "wall " + (i + 1), { depth: 40%s }));
      }
      walls.at(-1).join("top", walls[0], "left", { tab: false });
      walls[1].hinge(walls[0]);
      sheet("A0");
      """;

  /**
   * Three sides fix a triangle (Euclid, Elements I.8), while a ring of n bars on parallel hinges
   * has mobility 3(n − 1) − 2n = n − 3 (M. Grübler 1883, from memory).
   */
  @ParameterizedTest
  @ValueSource(ints = {3, 4, 5, 6, 8})
  void aTubeTurnsFromFourWallsOn(int walls) throws ScriptException {
    if (walls == 3) {
      for (double first : new double[] {30, 40, 55, 70}) {
        assertThat(held(TUBE, first, walls, "")).hasSize(1);
      }
    } else {
      assertThat(held(TUBE, 40, walls, ", fold: " + 360.0 / walls)).isEmpty();
    }
  }
}
