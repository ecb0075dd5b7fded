package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.Summary;
import facetwright.check.finding.Finding;
import facetwright.fold.pose.Closure;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Folds that can't be as they are given: why, with the angles, and what is told followed. */
class GivenFoldsTest {
  private static Design evaluate(String script, Object... values) throws ScriptException {
    return Facetwright.evaluate(
        "d.js",
        "design(\"D\");\n" + String.format(Locale.ROOT, script, values),
        Map.of(),
        Budget.USUAL);
  }

  private static Finding only(Design design, String rule) {
    List<Finding> found = design.findings().stream().filter(f -> f.rule().equals(rule)).toList();
    assertThat(found).as(design.findings().toString()).hasSize(1);
    assertThat(found.getFirst().severity()).isEqualTo(Finding.Severity.ERROR);
    assertThat(design.isSound()).isFalse();
    return found.getFirst();
  }

  private static String summary(Design design) {
    return Summary.of(design.laid(), design.folded(), design.findings(), design.unit());
  }

  private static Design tube(int walls, double fold) throws ScriptException {
    return evaluate(
        """
        let last = panel("w 1", { width: 20, height: 60 });
        const first = last;
        for (let i = 2; i <= %d; i++) {
          last = last.attach(i == 2 ? "right" : "top", "w " + i, { depth: 20, fold: %s });
        }
        last.join("top", first, "left", { tab: false });
        """,
        walls, fold);
  }

  /** The folds of a closed polygon come to 360° (elementary). */
  @Property(tries = 25, shrinking = ShrinkingMode.OFF)
  void tubesOfOneFold(
      @ForAll @IntRange(min = 3, max = 9) int walls,
      @ForAll @DoubleRange(min = 20, max = 150) double fold)
      throws ScriptException {
    Assume.that(Math.abs(fold - 360.0 / walls) > 3);
    Design astray = tube(walls, fold);
    Assume.that(astray.folded().closure() == Closure.OPEN);
    Finding found = only(astray, "turn-round");
    assertThat(found.message()).contains(" all " + walls + " have to come to 360°");
    String told = found.fix().replaceAll("Fold each by ([0-9.]+)°.*", "$1");
    Design mended = tube(walls, Double.parseDouble(told));
    assertThat(mended.folded().closes()).as(found.fix()).isTrue();
    assertThat(mended.findings()).noneMatch(f -> f.rule().equals("turn-round"));
  }

  @Test
  void sixFoldsOfSeventy() throws ScriptException {
    assertThat(summary(tube(6, 70)))
        .startsWith(
            "Does not close: round the tube with \"w 1\" 5 folds of 70° come to 350° before its"
                + " seam; all 6 have to come to 360°, and with 10° at the seam its sides do not"
                + " meet.");
    assertThat(only(tube(6, 70), "turn-round").fix())
        .isEqualTo("Fold each by 60°, for 6 walls that are alike.");
  }

  private static Design corner(int sides, double fold) throws ScriptException {
    return evaluate(
        """
        const a = panel("one", { sides: %1$d, side: 20 });
        const b = a.attach("1", "two", { sides: %1$d, fold: %2$s });
        const c = a.attach("2", "three", { sides: %1$d, fold: %2$s });
        b.join("%1$d", c, "2", { tab: false });
        """,
        sides, fold);
  }

  @Test
  void threeHexagonsLieFlat() throws ScriptException {
    Finding found = only(corner(6, 60), "flat-corner");
    assertThat(found.message())
        .isEqualTo(
            "Where \"one\", \"two\" and \"three\" meet, their three angles come to 360°: so wide"
                + " they lie flat and make no corner.");
    assertThat(found.fix()).contains("108° each").contains("fold none of them there: 0°");
    assertThat(corner(6, 0).folded().closes()).isTrue();
    // The faces of a dodecahedron turn by 63.435° (its dihedral angle is arccos(-1/√5):
    // elementary).
    double fold = 180 - Math.toDegrees(Math.acos(-1 / Math.sqrt(5)));
    assertThat(corner(5, fold).folded().closes()).isTrue();
  }

  private static Design crossing(double one, double two) throws ScriptException {
    return evaluate(
        """
        const b = blank({ width: 100, height: 80 });
        b.score({ from: "left", at: 40, fold: %s });
        b.score({ from: "bottom", at: 30, fold: %s });
        """,
        one, two);
  }

  @Test
  void oneOfTwoThatCross() throws ScriptException {
    Finding found = only(crossing(90, 90), "flat-corner");
    assertThat(found.message())
        .contains("two scores run straight through each other, and only one of them can be folded");
    assertThat(found.fix()).startsWith("Fold one of the two by 0°");
    assertThat(crossing(90, 0).folded().closes()).isTrue();
    assertThat(crossing(0, 90).isSound()).isTrue();
  }

  @Test
  void narrowWindows() throws ScriptException {
    String box =
        "box({ width: 60, depth: 60, height: 60 }).window(\"side 1\", { border: %s }).unfold();";
    Finding found =
        evaluate(box, 29.9).findings().stream()
            .filter(f -> f.rule().equals("narrow-window"))
            .findFirst()
            .orElseThrow();
    assertThat(found.message())
        .isEqualTo(
            "A window in \"side 1\" is only 0.2 mm wide: a knife can't take so narrow a strip"
                + " out.");
    assertThat(evaluate(box, 29.5).findings()).noneMatch(f -> f.rule().equals("narrow-window"));
  }

  /** As wide as the other two together it closes, with nothing inside (Euclid, Elements I.20). */
  @Test
  void flatIsSaid() throws ScriptException {
    Design flat = evaluate("wrap({ widths: [30, 40, 70], rows: [50], seam: 10 });");
    assertThat(summary(flat)).contains("Made, it lies flat: ");
    Design open = evaluate("wrap({ widths: [30, 40, 60], rows: [50], seam: 10 });");
    assertThat(summary(open)).contains("Made, it is ");
  }
}
