package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import facetwright.fold.pose.Closure;
import facetwright.form.NetChecks;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.Panel;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who bears the tab along an edge, and how it is made, as said. */
class TabsByEdgeTest {

  private static Design run(String script) throws ScriptException {
    return Facetwright.evaluate("a.js", script, Map.of(), Budget.USUAL);
  }

  private static ScriptException fails(String script) {
    return catchThrowableOfType(ScriptException.class, () -> run(script));
  }

  private static List<Join.Seam> seams(Net net, String one, String other) {
    return net.joins().stream()
        .map(Join.Seam.class::cast)
        .filter(
            s ->
                net.panels().get(s.a().panel()).name().startsWith(one)
                    && net.panels().get(s.b().panel()).name().startsWith(other))
        .toList();
  }

  private static double depth(Net net, Join.Seam seam) {
    Panel tab = net.panels().get(seam.tab());
    var foot = net.segment(seam.a());
    return tab.outline().corners().stream()
        .mapToDouble(c -> Math.abs(foot.direction().cross(c.minus(foot.from()))))
        .max()
        .orElseThrow();
  }

  @Property(tries = 12, seed = "20261130")
  void theFacetThatIsNamedBearsIt(
      @ForAll @IntRange(min = 3, max = 8) int sides,
      @ForAll @DoubleRange(min = 30, max = 60) double side,
      @ForAll @IntRange(min = 3, max = 9) int deep)
      throws Exception {
    String form = "prism({ sides: %s, side: %s, height: 50 })".formatted(sides, side);
    Net top =
        run("design(\"a\");\n%s.tab(\"top\", \"side\", { on: \"top\", depth: %s }).unfold({ as: \"strip\" });"
                .formatted(form, deep))
            .net();
    assertThat(seams(top, "top", "side")).hasSize(sides - 1);
    assertThat(seams(top, "top", "side"))
        .allSatisfy(s -> assertThat(depth(top, s)).isCloseTo(deep, within(1e-6)));
    NetChecks.overlapFree(top);
    NetChecks.tabsHidden(top);
    Design walls =
        run(
            "design(\"a\");\n%s.tab(\"side\", \"top\", { on: \"side\" }).unfold({ as: \"strip\" });"
                .formatted(form));
    assertThat(seams(walls.net(), "side", "top")).hasSize(sides - 1);
    assertThat(seams(walls.net(), "top", "side")).isEmpty();
    assertThat(walls.folded().closure()).isEqualTo(Closure.CLOSES);
  }

  @Test
  void noneMeansNone() throws Exception {
    Design box =
        run(
            """
            design("a");
            box({ width: 60, depth: 40, height: 30 }).tab("all", "all", { on: "none" }).unfold();
            """);
    assertThat(box.net().joins()).allMatch(j -> j instanceof Join.Seam s && s.tab() < 0);
    assertThat(box.folded().closure()).isEqualTo(Closure.CLOSES);
    assertThat(box.findings()).noneMatch(f -> f.message().contains("no tab"));
  }

  /** Where no tab is wanted, those that were said still are. */
  @Test
  void withoutTabsThoseThatWereSaidAre() throws Exception {
    Net tray =
        run("""
        design("a");
        box({ width: 60, depth: 40, height: 30 }).open("top")
          .tab("side 1", "side", { on: "side 1" }).unfold({ tabs: false });
        """)
            .net();
    assertThat(seams(tray, "side 1", "side").stream().filter(s -> s.tab() >= 0)).hasSize(2);
    assertThat(tray.panels().stream().filter(p -> p.name().startsWith("tab"))).hasSize(2);
  }

  @Test
  void whatIsSaidLivesOnThroughWindowsAndOpening() throws Exception {
    Net pot =
        run("""
        design("a");
        prism({ sides: 6, side: 40, height: 60 })
          .tab("side 1", "side", { on: "side 1" })
          .window("side", { border: 14 }).layer("side", { reveal: 2 }).open("top")
          .unfold({ as: "petals" });
        """)
            .net();
    assertThat(seams(pot, "side 1", "side")).hasSize(2);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        ".tab('top', 'base', { on: 'top' }).unfold()|\"top\" and \"base\" do not meet",
        ".tab('top', 'side', { on: 'base' }).unfold()|names neither \"top\" nor \"side 1\"",
        ".tab('side', 'side', { on: 'side' }).unfold()|names both \"side 1\" and \"side 2\"",
        ".tab('lid', 'side').unfold()|no facet is called \"lid\"",
        ".tab('top', 'side', { depth: 0 }).unfold()|depth",
        ".tab('top', 'side', { bevel: 85 }).unfold()|bevel",
        ".tab('top', 'side').cut({ at: [0, 0, 20], away: [1, 0, 4] }).unfold()|change the form"
            + " first",
        ".window('side', { border: 2 }).tab('side 1', 'side 2', { on: 'side 1', depth: 8 })"
            + ".unfold({ as: 'petals' })|no room for a tab of 3 mm or more",
      })
  void whatMakesNoSenseIsRefusedAtItsLine(String said, String told) {
    ScriptException e =
        fails(
            "design(\"a\");\nbox({ width: 80, depth: 60, height: 30 })"
                + said.replace('\'', '"')
                + ";");
    assertThat(e).isNotNull().hasMessageContaining(told);
    assertThat(e.line()).isEqualTo(2);
  }

  @Test
  void panelsSayItAlike() throws Exception {
    String script =
        """
        design("a");
        const shelf = panel("shelf", { width: 60, height: 60 });
        const back = shelf.attach("top", "back", { depth: 40, fold: 90, sense: "valley" });
        const side = shelf.attach("left", "side", { depth: 40, fold: 90, sense: "valley" });
        back.join("left", side, "right", { on: "%s", depth: 9 });
        """;
    assertThat(seams(run(script.formatted("side")).net(), "side", "back")).hasSize(1);
    assertThat(seams(run(script.formatted("back")).net(), "back", "side")).hasSize(1);
    assertThat(run(script.formatted("none")).net().panels()).hasSize(3);
    assertThat(fails(script.formatted("floor")))
        .hasMessageContaining("neither of the two panels")
        .extracting(ScriptException::line)
        .isEqualTo(5);
  }
}
