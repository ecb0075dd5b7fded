package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import facetwright.check.finding.Finding;
import facetwright.fold.making.Gluing;
import facetwright.fold.pose.Closure;
import facetwright.form.NetChecks;
import facetwright.net.Join;
import facetwright.net.Join.Hold;
import facetwright.net.Net;
import facetwright.net.Score;
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

/** Wraps held without glue: tucks and hooks on their cells and at their seam; the seam's flaps. */
class WrapHoldTest {
  private static Design run(String script, Object... values) throws ScriptException {
    String text = values.length == 0 ? script : String.format(Locale.ROOT, script, values);
    return Facetwright.evaluate("a.js", text, Map.of(), Budget.USUAL);
  }

  private static void assertSound(Design made) {
    assertThat(made.folded().closure()).isEqualTo(Closure.CLOSES);
    assertThat(made.findings()).noneMatch(f -> f.severity() == Finding.Severity.ERROR);
    NetChecks.overlapFree(made.net());
  }

  private static List<Join> held(Net net, Hold hold) {
    return net.joins().stream().filter(j -> j.hold() == hold).toList();
  }

  @Property(tries = 8, seed = "20261210")
  void aLidOfAWrapTucksIn(
      @ForAll @DoubleRange(min = 40, max = 80) double wide,
      @ForAll @DoubleRange(min = 30, max = 60) double deep,
      @ForAll @DoubleRange(min = 40, max = 90) double tall,
      @ForAll @DoubleRange(min = 9, max = 20) double tuck)
      throws Exception {
    Design made =
        run(
            """
            design("Carton");
            const tub = wrap({ widths: [%2$s, %1$s, %2$s, %1$s], rows: [%3$s, %2$s], names: ["wall", "lid"] });
            tub.columns([1, 2, 3]).rows("lid").remove();
            const lid = tub.columns(4).rows("lid").fold(90);
            lid.tuck(tub.columns(2).rows("wall"), { depth: %4$s });
            tub.floor({ tab: 8 });
            sheet("A1");
            """,
            wide, deep, tall, tuck);
    assertSound(made);
    assertThat(made.folded().measures().height()).isCloseTo(tall, within(1e-6));
    assertThat(held(made.net(), Hold.TUCK)).hasSize(1);
    assertThat(made.net().scores().stream().filter(Score::hinge)).hasSize(1);
  }

  /** Two roofs of one length that lean on each other: an isosceles triangle over the walls. */
  @Property(tries = 8, seed = "20261211")
  void roofsOfAWrapHookToARidge(
      @ForAll @DoubleRange(min = 30, max = 60) double deep,
      @ForAll @DoubleRange(min = 0.6, max = 1.5) double part)
      throws Exception {
    double roof = deep * part;
    Design made =
        run(
            """
            design("Tent");
            const tent = wrap({ widths: [60, %1$s, 60, %1$s], rows: [40, %2$s], names: ["wall", "roof"], seam: 8 });
            tent.columns("even").rows("roof").remove();
            tent.columns(1).rows("roof").hook(tent.columns(3).rows("roof"), { depth: 9 });
            tent.floor({ tab: 6 });
            sheet("A1");
            """,
            deep, roof);
    assertSound(made);
    assertThat(held(made.net(), Hold.HOOK)).hasSize(2);
    double high = 40 + Math.sqrt(roof * roof - deep * deep / 4);
    assertThat(made.folded().measures().height()).isCloseTo(high, within(0.001));
  }

  /** The seam of every row bears a flap on half of either edge; they are all there is to glue. */
  @Property(tries = 8, seed = "20261212")
  void bothEdgesOfTheSeamBearAFlap(
      @ForAll @IntRange(min = 3, max = 9) int columns,
      @ForAll @DoubleRange(min = 30, max = 50) double width,
      @ForAll @DoubleRange(min = 0.7, max = 1.2) double taper)
      throws Exception {
    String script =
        """
        design("Band");
        const band = wrap({ columns: %d, width: [%s, %s], rows: [50, 60], seam: 8, on: "%s" });
        sheet("A0");
        """;
    Design both = run(script, columns, width, width * taper, "both");
    Design last = run(script, columns, width, width * taper, "last");
    Design none = run(script, columns, width, width * taper, "none");
    for (Design made : List.of(both, last, none)) {
      assertSound(made);
      assertThat(made.folded().measures().height())
          .isCloseTo(last.folded().measures().height(), within(1e-6));
    }
    assertThat(both.net().joins()).hasSize(4);
    assertThat(Join.glued(both.net())).hasSize(4);
    assertThat(Join.glued(last.net())).hasSize(2);
    assertThat(Join.glued(none.net())).isEmpty();
    Design hooked =
        run(
            script.replace("sheet(", "band.hook({ depth: 8 });\nsheet("),
            columns,
            width,
            width * taper,
            "last");
    assertSound(hooked);
    assertThat(held(hooked.net(), Hold.HOOK)).hasSize(4);
    assertThat(Join.glued(hooked.net())).isEmpty();
  }

  /** "top" is what closes the top, unless a row is called so; "bottom" the floor. */
  @ParameterizedTest
  @CsvSource({"before, top, rim", "after, bottom, floor", "before, bottom, floor"})
  void aMomentIsToldByTheEndOfTheWrap(String word, String end, String panel) throws Exception {
    Design made =
        run(
            "design(\"a\"); const w = wrap({ columns: 4, width: 60, rows: [60, 20], names:"
                + " [\"wall\", \"rim\"], seam: 10 }); w.rows(\"rim\").tabs(); w.floor({ tab: 8 });"
                + " w.note(\"Look\", { "
                + word
                + ": \""
                + end
                + "\" }); sheet(\"A2\");");
    var fitting = made.net().fittings().all().getFirst();
    assertThat(fitting.moment().panels())
        .isNotEmpty()
        .allMatch(p -> made.net().panels().get(p).name().startsWith(panel));
    List<Gluing.Stage> stages = made.gluing().stages();
    int at = made.gluing().moments().getFirst().at();
    List<Integer> touching =
        java.util.stream.IntStream.range(0, stages.size())
            .filter(
                k ->
                    stages.get(k).bonds().stream()
                        .anyMatch(
                            b ->
                                made.net()
                                    .panels()
                                    .get(Gluing.panel(made.net(), b))
                                    .name()
                                    .startsWith(panel)))
            .boxed()
            .toList();
    assertThat(at).isEqualTo(word.equals("before") ? touching.getFirst() : touching.getLast() + 1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "w.columns(1).rows('rim').tuck(w.columns(1).rows('rim'))|itself",
        "w.columns(1).rows('rim').tuck(w.columns([2, 3]).rows('rim'))|choose as many",
        "w.columns(1).rows('wall').tuck(w.columns(3).rows('wall'), { edge: 'top' })|no free edge at"
            + " its top",
        "w.columns(1).rows('rim').tuck(w.columns(3).rows('rim'), { relief: 19 })|narrower than a"
            + " third",
        "w.rows('rim').tabs(); w.columns(1).rows('rim').hook(w.columns(3).rows('rim'))|bears no"
            + " flap",
        "w.columns(1).rows('rim').remove();"
            + " w.columns(1).rows('rim').tuck(w.columns(3).rows('rim'))|cut away",
        "w.columns(1).rows('rim').hook(w.columns(2).rows('rim'))|equally long",
        "w.hook({ depth: 0.3 })|no tip left",
      })
  void whatMakesNoSenseIsRefusedAtItsLine(String said, String told) {
    ScriptException e =
        catchThrowableOfType(
            ScriptException.class,
            () ->
                run(
                    "design(\"a\");\n"
                        + "const w = wrap({ widths: [40, 60, 40, 60], rows: [60, 20], names:"
                        + " [\"wall\", \"rim\"] });\n"
                        + said.replace('\'', '"')
                        + ";"));
    assertThat(e).isNotNull().hasMessageContaining(told);
    assertThat(e.line()).isEqualTo(3);
  }

  /** Cells cut away twice are cut away once. */
  @Test
  void removingTwiceIsRemovingOnce() throws Exception {
    String once =
        "design(\"a\"); const w = wrap({ columns: 4, width: 40, rows: [60, 20] });"
            + " w.rows(2).remove();";
    assertThat(run(once + " w.rows(2).remove();").net().panels())
        .hasSameSizeAs(run(once).net().panels());
  }
}
