package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import facetwright.check.finding.Finding;
import facetwright.fold.pose.Closure;
import facetwright.form.NetChecks;
import facetwright.language.Telling;
import facetwright.measure.Unit;
import facetwright.net.Join;
import facetwright.net.Join.Hold;
import facetwright.net.Net;
import facetwright.net.Panel;
import facetwright.net.PanelRole;
import facetwright.net.Score;
import facetwright.papers.chart.ChartNotes;
import facetwright.papers.order.Order;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lids that tuck in, hooks, tabs on both edges and hinges, on forms and on panels. */
class HeldWithoutGlueTest {
  private static final Telling TELL = Order.usual(Unit.MM).telling();

  private static final double FINE = 1e-6;

  private static Design run(String script) throws ScriptException {
    return Facetwright.evaluate("a.js", script, Map.of(), Budget.USUAL);
  }

  private static Design box(double width, double depth, double height, String said)
      throws ScriptException {
    return run(
        String.format(
            Locale.ROOT,
            "design(\"Box\");\nbox({ width: %s, depth: %s, height: %s })%s;\nsheet(\"A2\");\n",
            width,
            depth,
            height,
            said));
  }

  private static List<Join> held(Net net, Hold hold) {
    return net.joins().stream().filter(j -> j.hold() == hold).toList();
  }

  private static void assertSound(Design design) {
    assertThat(design.folded().closure()).isEqualTo(Closure.CLOSES);
    assertThat(design.findings()).noneMatch(f -> f.severity() == Finding.Severity.ERROR);
    NetChecks.overlapFree(design.net());
  }

  private static double facets(Net net) {
    return net.panels().stream()
        .filter(p -> p.role() == PanelRole.FACET)
        .mapToDouble(p -> p.outline().area())
        .sum();
  }

  private static Panel flap(Net net, Join join) {
    int flap =
        switch (join) {
          case Join.Seam s -> s.tab();
          case Join.Lap l -> l.under();
        };
    return net.panels().get(flap);
  }

  @Property(tries = 10, seed = "20261201")
  void aCartonWithALidToTuckClosesWhereverItsFrontIs(
      @ForAll @DoubleRange(min = 40, max = 90) double width,
      @ForAll @DoubleRange(min = 40, max = 90) double depth,
      @ForAll @DoubleRange(min = 30, max = 60) double height,
      @ForAll @DoubleRange(min = 6, max = 20) double tuck,
      @ForAll @IntRange(min = 1, max = 4) int front)
      throws Exception {
    Design made =
        box(
            width,
            depth,
            height,
            ".tuck(\"top\", \"side " + front + "\", { depth: " + tuck + ", radius: 0 }).unfold()");
    assertSound(made);
    Net net = made.net();
    assertThat(net.pieces()).isEqualTo(1);
    assertThat(facets(net))
        .isCloseTo(2 * (width * depth + width * height + depth * height), within(FINE));
    // One tuck, a flap at either side, and a hinge on the side across.
    assertThat(held(net, Hold.TUCK)).hasSize(1);
    assertThat(held(net, Hold.FLAP)).hasSize(2);
    double wide = front % 2 == 1 ? width : depth;
    double far = wide - 3 - 2 * tuck * Math.tan(Math.toRadians(10));
    assertThat(flap(net, held(net, Hold.TUCK).getFirst()).outline().area())
        .isCloseTo(tuck * (wide - 3 + far) / 2, within(FINE));
    List<Score> hinges = net.scores().stream().filter(Score::hinge).toList();
    assertThat(hinges).hasSize(1);
    assertThat(
            List.of(
                name(net, hinges.getFirst().a().panel()), name(net, hinges.getFirst().b().panel())))
        .containsExactlyInAnyOrder("top", "side " + ((front + 1) % 4 + 1));
  }

  private static String name(Net net, int panel) {
    return net.panels().get(panel).name();
  }

  @Property(tries = 8, seed = "20261202")
  void hooksHoldAPrismWithoutGlueThere(
      @ForAll @IntRange(min = 3, max = 8) int sides,
      @ForAll @DoubleRange(min = 30, max = 60) double side,
      @ForAll @DoubleRange(min = 40, max = 90) double height,
      @ForAll @DoubleRange(min = 5, max = 9) double depth)
      throws Exception {
    Design made =
        run(
            String.format(
                Locale.ROOT,
                "design(\"Sleeve\");%nprism({ sides: %d, side: %s, height: %s }).open([\"base\","
                    + " \"top\"]).hook(\"side 1\", \"side 2\", { depth: %s }).unfold();%n"
                    + "sheet(\"A1\");",
                sides,
                side,
                height,
                depth));
    assertSound(made);
    List<Join> hooks = held(made.net(), Hold.HOOK);
    assertThat(hooks).hasSize(2);
    assertThat(Join.glued(made.net())).isEmpty();
    // Each is scored along half of its side; the two are congruent.
    assertThat(flap(made.net(), hooks.get(0)).outline().area())
        .isCloseTo(flap(made.net(), hooks.get(1)).outline().area(), within(FINE));
    for (Join join : hooks) {
      Join.Seam hook = (Join.Seam) join;
      assertThat(made.net().segment(hook.a()).length()).isCloseTo(height / 2, within(FINE));
      assertThat(made.net().segment(hook.b()).length()).isCloseTo(height / 2, within(FINE));
    }
  }

  /**
   * A tab on half of each edge is the same on a form as on panels: two seams, each with its tab.
   */
  @Test
  void bothEdgesOfASeamBearATab() throws Exception {
    Design form =
        box(
            60,
            40,
            50,
            ".open([\"base\", \"top\"]).tab(\"side 1\", \"side 4\", { on: \"both\" }).unfold()");
    Design panels =
        run(
            """
            design("Sleeve");
            const one = panel("one", { width: 60, height: 50 });
            const two = one.attach("right", "two", { depth: 40, fold: 90 });
            const three = two.attach("top", "three", { depth: 60, fold: 90 });
            const four = three.attach("top", "four", { depth: 40, fold: 90 });
            four.join("top", one, "left", { on: "both" });
            """);
    for (Design made : List.of(form, panels)) {
      assertSound(made);
    }
    assertThat(Join.glued(panels.net())).hasSize(2);
    assertThat(panels.net().joins()).hasSize(2);
    assertThat(panels.net().joins()).allMatch(j -> ((Join.Seam) j).tab() != Join.Seam.NO_TAB);
  }

  @Test
  void aHingeIsToldOnPapersAndALidThatTucksInHasOne() throws Exception {
    String hinge = "is a hinge: fold it both ways";
    Design lifted = box(60, 40, 30, ".hinge(\"top\", \"side 3\").unfold()");
    assertSound(lifted);
    assertThat(ChartNotes.folding(lifted.net(), 0, TELL)).contains(hinge);
    assertThat(ChartNotes.folding(box(60, 40, 30, ".unfold()").net(), 0, TELL))
        .doesNotContain(hinge);
    Design cover =
        run(
            """
            design("Matchbook");
            const back = panel("back", { width: 50, height: 60 });
            const cover = back.attach("top", "cover", { depth: 58, fold: 175 });
            cover.hinge(back);
            """);
    assertThat(ChartNotes.folding(cover.net(), 0, TELL)).contains("“back” and “cover” " + hinge);
  }

  /** A lid hangs on the side that its tuck names, be that the side by the one it tucks in at. */
  @ParameterizedTest
  @CsvSource({"side 2", "side 3", "side 4"})
  void aTuckSaysWhatItsLidHangsOn(String side) throws Exception {
    String said = ".tuck(\"top\", \"side 1\", { depth: 12, hinge: \"" + side + "\" }).unfold()";
    Design made = box(60, 50, 40, said);
    assertSound(made);
    Score hinge = made.net().scores().stream().filter(Score::hinge).findFirst().orElseThrow();
    assertThat(List.of(name(made.net(), hinge.a().panel()), name(made.net(), hinge.b().panel())))
        .containsExactlyInAnyOrder("top", side);
    assertThat(held(made.net(), Hold.TUCK)).hasSize(1);
  }

  /** Reliefs under the thickness of the card: 0.375 mm for 300 g/m² as the program reckons it. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "tuck(\"top\", \"side 1\", { relief: 0.1 })|set back from the ends of its edge by 0.1 mm",
        "hook(\"side 2\", \"side 3\", { relief: 0.2 })|is 0.2 mm wide, and the card is 0.38 mm",
      })
  void aFlapThatWouldJamIsTold(String said, String told) throws Exception {
    String form = "box({ width: 60, depth: 40, height: 90 }).";
    Design tight =
        run("design(\"a\");\nsheet(\"A3\", { weight: 300 });\n" + form + said + ".unfold();");
    assertThat(tight.findings())
        .anyMatch(f -> f.rule().equals("tight-flap") && f.message().toString().contains(told));
    Design wide =
        run(
            "design(\"a\");\nsheet(\"A3\", { weight: 300 });\n"
                + form
                + said.replaceAll("relief: 0.[12]", "relief: 0.4")
                + ".unfold();");
    assertThat(wide.findings()).noneMatch(f -> f.rule().equals("tight-flap"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        ".tuck('top', 'base')|do not meet",
        ".tuck('roof', 'side 1')|roof",
        ".tuck('top', 'side 1', { depth: 40 })|there is no room for the tuck of 40 mm",
        ".tuck('top', 'side 1', { relief: 20 })|narrower than a third",
        ".hinge('top', 'side 1').tuck('top', 'side 1')|can't be tucked in behind it",
        ".tuck('top', 'side 1', { hinge: 'side 1' })|can't be tucked in behind it",
        ".tuck('top', 'side 1', { hinge: 'base' })|do not meet",
        ".hook('side 1', 'side 3')|do not meet",
        ".hook('side 1', 'side 2', { depth: 0.3 })|no tip left",
        ".hook('side 1', 'side 2', { relief: 9 })|relief",
        ".hinge('top', 'base')|do not meet",
        ".tab('top', 'side 1', { on: 'base' })|names neither",
        ".hinge('top', 'side 3').tab('top', 'side 1')|come apart there",
        ".hinge('top', 'side 3').tab('side', 'top')|come apart there",
        ".tab('top', 'side 1').hinge('top', 'side 3')|would hold the lid shut",
        ".tuck('top', 'side 1').tab('top', 'side 2')|come apart there",
        ".tab('side 1', 'top').tuck('top', 'side 1')|would hold the lid shut",
      })
  void whatMakesNoSenseIsRefusedAtItsLine(String said, String told) {
    ScriptException e =
        catchThrowableOfType(
            ScriptException.class, () -> box(60, 40, 30, said.replace('\'', '"') + ".unfold()"));
    assertThat(e).isNotNull().hasMessageContaining(told);
    assertThat(e.line()).isEqualTo(2);
  }
}
