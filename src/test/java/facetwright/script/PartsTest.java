package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import facetwright.check.Verdict;
import facetwright.check.finding.Finding;
import facetwright.fold.Folding;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.Measures;
import facetwright.fold.walk.FoldPath;
import facetwright.geom.Motion3;
import facetwright.geom.Vec3;
import facetwright.net.NamedPanel;
import facetwright.net.Net;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Parts put together: what a maker says is what stands on the table, as large and as full. */
class PartsTest {
  private static final double CARD = 0.3;

  private static Design evaluate(String script) throws ScriptException {
    return Facetwright.evaluate("parts.js", js(script), Map.of(), Budget.USUAL);
  }

  private static String js(String script) {
    return "design(\"Parts\");\nsheet({ width: 2000, height: 2000, caliper: "
        + CARD
        + " });\n"
        + script;
  }

  private static void size(Measures is, double wide, double deep, double tall) {
    assertThat(List.of(is.width(), is.depth(), is.height()))
        .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-6 ? 0 : Double.compare(a, b))
        .containsExactly(wide, deep, tall);
  }

  private static List<Finding> found(Design design, String rule) {
    return design.findings().stream().filter(f -> f.rule().equals(rule)).toList();
  }

  @Test
  void anObeliskStandsWhole() throws ScriptException {
    Design whole =
        evaluate(
            """
            const low = prism({ sides: 4, side: 100, height: 20 }).unfold({ part: "low step" });
            const high = prism({ sides: 4, side: 80, height: 20 }).unfold({ part: "high step" });
            const shaft = frustum({ sides: 4, side: 60, top: 30, height: 180 }).unfold({ part: "shaft" });
            const tip = pyramid({ sides: 4, side: 30, height: 30 }).unfold({ part: "tip" });
            tip.on(shaft); high.on(low); shaft.on(high);
            """);
    Measures made = whole.folded().measures();
    size(made, 100, 100, 250);
    // Prism, frustum and pyramid, by Euclid's rules for each.
    double frustum = 180 * (60 * 60 + 60 * 30 + 30 * 30) / 3.0;
    double all = 100 * 100 * 20 + 80 * 80 * 20 + frustum + 30 * 30 * 30 / 3.0;
    assertThat(made.volume()).isCloseTo(all, within(1e-6 * all));
    assertThat(whole.isSound()).as(whole.findings().toString()).isTrue();
  }

  @Test
  void aLidGoesDownToTheRimOfItsBox() throws ScriptException {
    Design box =
        evaluate(
            """
            const box = prism({ sides: 6, side: 30, height: 40 }).open("top").unfold({ part: "box", tabs: false });
            const lid = prism({ sides: 6, side: 31, height: 15 }).open("top").unfold({ part: "lid", tabs: false });
            lid.over(box);
            """);
    size(box.folded().measures(), 62, 31 * Math.sqrt(3), 40);
    // Of the lid, what goes round the box is filled already.
    double hexagon = 1.5 * Math.sqrt(3);
    double volume = hexagon * (30 * 30 * 25 + 31 * 31 * 15);
    assertThat(box.folded().measures().volume()).isCloseTo(volume, within(1e-6 * volume));
    // Half a millimetre's side is √3/2 as much on a side, twice that across, less two thicknesses.
    double room = Math.sqrt(3) - 2 * CARD;
    assertThat(Verdict.of(box.laid(), box.folded(), box.findings()).text(box.unit()))
        .contains(
            String.format(
                Locale.ROOT, "\"lid\" goes over \"box\" with %.2f mm of room across", room));
  }

  @Test
  void aSleeveGoesRoundItsTrayWhicheverIsSaidToGo() throws ScriptException {
    String parts =
        """
        const floor = panel("floor", { width: 100, height: 75 });
        for (const edge of ["bottom", "right", "top", "left"]) {
          floor.attach(edge, edge + " wall", { depth: 25, fold: 90 });
        }
        const tray = floor.part("tray");
        const sleeve = wrap({ widths: [76.5, 26, 76.5, 26], rows: [100], seam: 10 }).part("sleeve");
        """;
    Design over = evaluate(parts + "sleeve.over(tray);");
    Design into = evaluate(parts + "tray.into(sleeve);");
    size(over.folded().measures(), 100, 76.5, 26);
    size(into.folded().measures(), 100, 76.5, 26);
    assertThat(
            Verdict.of(over.laid(), over.folded(), over.findings())
                .text(over.unit())
                .replace("\"sleeve\" goes over \"tray\"", ""))
        .isEqualTo(
            Verdict.of(into.laid(), into.folded(), into.findings())
                .text(into.unit())
                .replace("\"tray\" goes into \"sleeve\"", ""));
    assertThat(over.net().panels().getFirst().name()).isEqualTo("tray floor");
    assertThat(over.folded().measures().volume())
        .isCloseTo(into.folded().measures().volume(), within(1e-3));
    assertThat(over.folded().measures().volume()).isCloseTo(100 * 76.5 * 26, within(1e-3));
  }

  @Test
  void aDrawerPulledOutHalfWayMakesItLonger() throws ScriptException {
    String parts =
        """
        const tray = prism({ sides: 4, side: 50, height: 20 }).open("top").unfold({ part: "tray" });
        const sleeve = wrap({ widths: [52, 21, 52, 21], rows: [50], seam: 10 }).part("sleeve");
        """;
    size(evaluate(parts + "tray.into(sleeve, { by: 30 });").folded().measures(), 70, 52, 21);
  }

  @Test
  void aBenchStandsBeside() throws ScriptException {
    Design both =
        evaluate(
            """
            const house = prism({ sides: 4, side: 50, height: 60 }).unfold({ part: "house" });
            const bench = prism({ sides: 4, side: 20, height: 12 }).unfold({ part: "bench" });
            bench.beside(house, { side: "left", by: 8 });
            """);
    size(both.folded().measures(), 78, 50, 60);
  }

  @Test
  void partsComeTogetherOneAfterTheOther() throws ScriptException {
    Design box =
        evaluate(
            """
            const box = prism({ sides: 4, side: 40, height: 40 }).open("top").unfold({ part: "box" });
            const lid = prism({ sides: 4, side: 42, height: 15 }).open("top").unfold({ part: "lid" });
            lid.over(box);
            """);
    Net net = box.net();
    FoldedForm form = box.folded();
    FoldPath path = Folding.path(box.laid());
    assertThat(path.at(FoldPath.APART)).isEqualTo(form.poses());
    assertThat(path.at(1)).isEqualTo(form.whole());
    int top = net.panels().indexOf(NamedPanel.of(net, "lid base").orElseThrow());
    Vec3 middle = middle(net, path.at(0.99), top);
    assertThat(middle.z()).isGreaterThan(middle(net, form.whole(), top).z());
    assertThat(middle(net, path.at(1 - 1e-9), top).distance(middle(net, form.whole(), top)))
        .isLessThan(1e-3);
    assertThat(
            middle(net, path.at(FoldPath.APART + 1e-9), top)
                .distance(middle(net, form.poses(), top)))
        .isLessThan(1e-3);
  }

  private static Vec3 middle(Net net, List<Motion3> poses, int panel) {
    return poses.get(panel).apply(net.panels().get(panel).outline().centroid());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          a.over(a)                   | "a" can't go over itself | Name another part
          a.over(b); a.on(b)          | "a" goes to two places: it goes over "b" in line 5 already | Take one of the two out
          a.over(b); b.on(a)          | "b" can't go on "a", which goes to it itself | Leave one part where it stands
          a.over(3)                   | over: part: 3 is not a part | Give part as a part made before
          a.on(b, { at: 4 })          | on: at: 4 is not a list | Give at as
          a.beside(b, { side: "up" }) | beside: side: "up" is none of the words it takes | Give side as one of "right"
          a.over(b, { deep: 4 })      | over has no option "deep" | It takes by, turn
          """)
  void whatCannotBeMeantIsRefused(String call, String what, String remedy) {
    ScriptException fault =
        catchThrowableOfType(
            ScriptException.class,
            () ->
                evaluate(
                    """
                    const a = prism({ sides: 4, side: 42, height: 15 }).open("top").unfold({ part: "a" });
                    const b = prism({ sides: 4, side: 40, height: 40 }).open("top").unfold({ part: "b" });
                    """
                        + call));
    assertThat(fault).as(call).isNotNull();
    assertThat(fault.getMessage()).contains(what);
    assertThat(fault.remedy()).contains(remedy);
    assertThat(fault.site().line()).isEqualTo(5);
    assertThat(fault.site().column()).isPositive();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          lid.over(block)                 | "block" does not go into "lid": it is 120 × 120 mm across there, the opening 42 × 42 mm. | Make the opening of "lid" wider
          block.over(box)                 | "block" has no opening. | Leave "block" open
          lid.over(box, { by: 30 })       | "lid" goes over "box" by 15 mm at most, not by 30 mm. | make it 15 mm at most
          block.on(box, { at: [200, 0] }) | "block" lies beside "box", not on it. | Bring at nearer
          """)
  void whatDoesNotGoIsToldAndStaysWhereItStands(String call, String what, String remedy)
      throws ScriptException {
    Design design =
        evaluate(
            """
            const box = prism({ sides: 4, side: 40, height: 40 }).open("top").unfold({ part: "box" });
            const lid = prism({ sides: 4, side: 42, height: 15 }).open("top").unfold({ part: "lid" });
            const block = prism({ sides: 4, side: 120, height: 20 }).unfold({ part: "block" });
            """
                + call);
    List<Finding> refused = found(design, "placing");
    assertThat(refused).hasSize(1);
    assertThat(refused.getFirst().message()).contains(what);
    assertThat(refused.getFirst().fix()).contains(remedy);
    assertThat(refused.getFirst().site().line()).isEqualTo(6);
    assertThat(design.isSound()).isFalse();
  }

  @Test
  void aLidTooTightOrTooLooseIsTold() throws ScriptException {
    String parts =
        """
        const box = prism({ sides: 6, side: 30, height: 40 }).open("top").unfold({ part: "one" });
        const lid = prism({ sides: 6, side: %s, height: 15 }).open("top").unfold({ part: "other" });
        lid.over(box);
        """;
    Design tight = evaluate(parts.formatted("30"));
    assertThat(found(tight, "fit")).hasSize(1);
    assertThat(found(tight, "fit").getFirst().severity()).isEqualTo(Finding.Severity.ERROR);
    assertThat(Verdict.of(tight.laid(), tight.folded(), tight.findings()).text(tight.unit()))
        .contains("does not go over");
    size(tight.folded().measures(), 60, 30 * Math.sqrt(3), 40);
    Design loose = evaluate(parts.formatted("34"));
    assertThat(found(loose, "fit").getFirst().severity()).isEqualTo(Finding.Severity.WARNING);
    assertThat(found(evaluate(parts.formatted("31.5")), "fit")).isEmpty();
  }

  @Test
  void partsThatReachThroughEachOtherAreTold() throws ScriptException {
    String parts =
        """
        const step = prism({ sides: 4, side: 100, height: 10 }).unfold({ part: "step" });
        const one = prism({ sides: 4, side: 20, height: 40 }).unfold({ part: "one" });
        const two = prism({ sides: 4, side: 20, height: 30 }).unfold({ part: "two" });
        one.on(step, { at: [-20, 0] });
        """;
    Design apart = evaluate(parts + "two.on(step, { at: [20, 0] });");
    assertThat(found(apart, "placing")).isEmpty();
    Design through =
        evaluate(
            parts
                + """
                two.on(step, { at: [5, 0] });
                prism({ sides: 4, side: 20, height: 35 }).unfold({ part: "three" }).beside(one, { by: 8 });
                """);
    assertThat(found(through, "placing")).hasSize(1);
    assertThat(found(through, "placing").getFirst().message())
        .contains("\"two\" and \"three\" pass through each other");
    assertThat(found(through, "placing").getFirst().site().line()).isEqualTo(8);
    // What comes down on another stands on it.
    Design piled = evaluate(parts + "two.on(step, { at: [-15, 4] });");
    assertThat(found(piled, "placing")).isEmpty();
    assertThat(piled.folded().measures().height()).isCloseTo(80, within(1e-6));
  }

  @Test
  void whatIsAimedAtIsTheWhole() throws ScriptException {
    Design tower =
        evaluate(
            """
            const tall = dial("tall", 30, { from: 10, to: 200 });
            const low = prism({ sides: 4, side: 60, height: 25 }).unfold({ part: "low" });
            const high = prism({ sides: 4, side: 40, height: tall }).unfold({ part: "high" });
            high.on(low);
            aim({ height: 100 });
            """);
    assertThat(tower.dials().getFirst().value()).isCloseTo(75, within(0.05));
    assertThat(tower.folded().measures().height()).isCloseTo(100, within(0.05));
  }
}
