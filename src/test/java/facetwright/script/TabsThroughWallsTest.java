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
import java.util.function.DoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/**
 * Tabs deeper than the panel they are glued under is wide, so that they reach through what stands
 * at its far edge: it can't be made, all say so, and the depth told makes it close.
 */
class TabsThroughWallsTest {
  private static final Pattern DEEP = Pattern.compile("at most ([0-9.]+) mm deep");

  private static Design evaluate(String script) throws ScriptException {
    return Facetwright.evaluate("tabs.js", script, Map.of(), Budget.USUAL);
  }

  private static String script(String lines, Object... sizes) {
    return "design(\"Narrow\");\nsheet({ width: 2000, height: 2000 });\n"
        + String.format(Locale.ROOT, lines, sizes);
  }

  private static String verdict(Design design) {
    return Verdict.of(design.laid(), design.folded(), design.findings()).text(design.unit());
  }

  private static List<Finding> ofTabs(Design design) {
    return design.findings().stream().filter(f -> f.rule().equals("tab-too-big")).toList();
  }

  private static void closes(Design design) {
    assertThat(verdict(design)).startsWith("Closes");
    assertThat(design.folded().canBeMade(design.net())).isTrue();
    assertThat(ofTabs(design)).isEmpty();
    assertThat(design.isSound()).as("%s", design.findings()).isTrue();
  }

  /** Told wrong everywhere while the tabs are so deep, and right as deep as is told. */
  private static void mends(DoubleFunction<String> ofDepth, double depth) throws ScriptException {
    Design wrong = evaluate(ofDepth.apply(depth));
    assertThat(wrong.folded().closure()).isEqualTo(Closure.CLOSES);
    assertThat(verdict(wrong))
        .startsWith("Can't be made as it stands: every join meets, but")
        .containsPattern("reaches [0-9.]+ mm past the edge of \".*\", .* and through \"");
    assertThat(wrong.folded().canBeMade(wrong.net())).isFalse();
    assertThat(wrong.isSound()).isFalse();
    List<Finding> found = ofTabs(wrong);
    assertThat(found).isNotEmpty();
    assertThat(found.getFirst().severity()).isEqualTo(Finding.Severity.ERROR);
    double least = depth;
    for (Finding finding : found) {
      Matcher told = DEEP.matcher(finding.fix());
      assertThat(told.find()).as(finding.fix()).isTrue();
      least = Math.min(least, Double.parseDouble(told.group(1)));
    }
    closes(evaluate(ofDepth.apply(least)));
  }

  private static String tray(double wide, double narrow, double wall, double depth) {
    return script(
        """
        const floor = panel("floor", { width: %.3f, height: %.3f });
        const walls = ["bottom", "right", "top", "left"].map((edge) =>
          floor.attach(edge, edge + " wall", { depth: %.3f, fold: 90 }));
        for (let i = 0; i < 4; i++) walls[i].join("left", walls[(i + 1) %% 4], "right", { depth: %.4f });
        """,
        wide, narrow, wall, depth);
  }

  @Test
  void aTrayOfSixMillimetres() throws ScriptException {
    Design design = evaluate(tray(70, 6, 30, 8));
    assertThat(verdict(design))
        .matches(
            "Can't be made as it stands: every join meets, but \"tab of \\w+ wall\" reaches 2 mm"
                + " past the edge of \"\\w+ wall\", under which it is glued, and through \"\\w+"
                + " wall\"\\.");
    assertThat(ofTabs(design).getFirst().fix())
        .isEqualTo("Make \"tab of bottom wall\" at most 6 mm deep.");
  }

  @Property(tries = 12, seed = "20261130")
  void trays(
      @ForAll @DoubleRange(min = 3, max = 20) double narrow,
      @ForAll @DoubleRange(min = 1.05, max = 3) double wide,
      @ForAll @DoubleRange(min = 0.3, max = 6) double past)
      throws ScriptException {
    mends(d -> tray(wide * narrow + past, narrow, 4 * (narrow + past), d), narrow + past);
  }

  /** The flap of a tube, deeper than the column it is glued under is wide. */
  @Property(tries = 12, seed = "20261130")
  void tubes(
      @ForAll @IntRange(min = 3, max = 8) int columns,
      @ForAll @DoubleRange(min = 4, max = 20) double width,
      @ForAll @DoubleRange(min = 0.5, max = 5) double past)
      throws ScriptException {
    mends(
        d ->
            script(
                "const tube = panel(\"wall 1\", { width: %2$.3f, height: %3$.3f });\n"
                    + "let last = tube;\n"
                    + "for (let i = 2; i <= %1$d; i++) {\n"
                    + "  last = last.attach(i == 2 ? \"right\" : \"top\", `wall ${i}`,\n"
                    + "    { depth: %2$.3f, fold: 360 / %1$d });\n"
                    + "}\n"
                    + "last.join(\"top\", tube, \"left\", { depth: %4$.4f });\n",
                columns, width, 5 * (width + past), d),
        width + past);
  }

  /** A base of n sides, its walls joined by tabs deeper than the next wall is wide. */
  @Property(tries = 12, seed = "20261130")
  void prisms(
      @ForAll @IntRange(min = 3, max = 8) int sides,
      @ForAll @DoubleRange(min = 4, max = 20) double side,
      @ForAll @DoubleRange(min = 0.5, max = 5) double past)
      throws ScriptException {
    mends(
        d ->
            script(
                "const base = panel(\"base\", { sides: %1$d, side: %2$.3f });\n"
                    + "const walls = Array.from({ length: %1$d }, (_, i) =>\n"
                    + "  base.attach(`${i + 1}`, `wall ${i + 1}`, { depth: %3$.3f, fold: 90 }));\n"
                    + "walls.forEach((w, i) =>\n"
                    + "  w.join(\"left\", walls[(i + 1) %% %1$d], \"right\", { depth: %4$.4f"
                    + " }));\n",
                sides, side, 5 * (side + past), d),
        side + past);
  }

  /** Where nothing stands at the far edge the tab shows, and it can be made all the same. */
  @Test
  void pastAFreeEdge() throws ScriptException {
    Design design =
        evaluate(
            script(
                """
                const floor = panel("floor", { width: 70, height: 6 });
                const wall = floor.attach("bottom", "wall", { depth: 30, fold: 90 });
                const side = floor.attach("right", "side", { depth: 30, fold: 90 });
                wall.join("left", side, "right", { depth: 8 });
                """));
    assertThat(verdict(design)).startsWith("Closes");
    assertThat(ofTabs(design).getFirst().severity()).isEqualTo(Finding.Severity.WARNING);
    assertThat(design.isSound()).isTrue();
  }
}
