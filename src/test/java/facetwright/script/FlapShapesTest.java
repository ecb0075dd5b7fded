package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import facetwright.check.finding.Finding;
import facetwright.fold.pose.Closure;
import facetwright.form.NetChecks;
import facetwright.geom.Arc;
import facetwright.geom.Polygon2;
import facetwright.net.Join;
import facetwright.net.Join.Hold;
import facetwright.net.Net;
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

/** How tucks are rounded, when flaps slip out, and where dust flaps are in the way. */
class FlapShapesTest {
  private static Design run(String script, Object... values) throws ScriptException {
    String text = values.length == 0 ? script : String.format(Locale.ROOT, script, values);
    return Facetwright.evaluate("a.js", text, Map.of(), Budget.USUAL);
  }

  private static Polygon2 tuck(Net net) {
    return net.joins().stream()
        .filter(j -> j.hold() == Hold.TUCK)
        .map(j -> net.panels().get(((Join.Lap) j).under()).outline())
        .findFirst()
        .orElseThrow();
  }

  private static List<String> told(Design made, String rule) {
    return made.findings().stream()
        .filter(f -> f.rule().equals(rule))
        .map(f -> f.message() + " " + f.fix())
        .toList();
  }

  /**
   * Each arc takes off what two tangents and the arc enclose, r²(tan(t/2) − t/2) for the turn t
   * (elementary): 80° where the sides lean in by 10°. The chords lie inside of it by 0.02 mm at
   * most.
   */
  @Property(tries = 10, seed = "20261206")
  void aTuckIsRoundedAtBothFarCorners(
      @ForAll @DoubleRange(min = 40, max = 80) double width,
      @ForAll @DoubleRange(min = 9, max = 24) double depth,
      @ForAll @DoubleRange(min = 0.5, max = 6) double radius)
      throws Exception {
    String form = "design(\"a\"); box({ width: %s, depth: 50, height: 40 })";
    String panels =
        """
        design("a");
        const floor = panel("floor", { width: %s, height: 50 });
        const [front, right, back, left] = ["bottom", "right", "top", "left"].map((edge) =>
          floor.attach(edge, edge + " wall", { depth: 40, fold: 90 }));
        const lid = back.attach("top", "lid", { depth: 50, fold: 90 });
        """;
    double far = width - 3 - 2 * depth * Math.tan(Math.toRadians(10));
    double turn = Math.toRadians(80);
    double lost = 2 * radius * radius * (Math.tan(turn / 2) - turn / 2);
    for (String script :
        List.of(
            form + ".tuck(\"top\", \"side 1\", { depth: %s, radius: %s }).unfold();",
            panels + "lid.tuck(\"top\", front, { depth: %s, radius: %s });")) {
      Polygon2 tuck = tuck(run(script, width, depth, radius).net());
      assertThat(tuck.arcs()).hasSize(2);
      assertThat(tuck.area())
          .isCloseTo(
              depth * (width - 3 + far) / 2 - lost,
              within(2 * radius * turn * Arc.CHORD.mm() + 1e-9));
    }
  }

  /** A third of its depth, 5 mm at most. */
  @ParameterizedTest
  @CsvSource({"9, 3", "12, 4", "24, 5"})
  void theUsualRoundingGoesByTheDepth(double depth, double radius) throws Exception {
    Design made =
        run(
            "design(\"a\"); box({ width: 70, depth: 60, height: 50 })"
                + ".tuck(\"top\", \"side 1\", { depth: %s }).unfold();",
            depth);
    Polygon2 tuck = tuck(made.net());
    assertThat(tuck.arcs())
        .hasSize(2)
        .allSatisfy(
            a ->
                assertThat(tuck.corner(a.first()).distance(a.centre()))
                    .isCloseTo(radius, within(1e-6)));
    assertThat(made.folded().closure()).isEqualTo(Closure.CLOSES);
    NetChecks.overlapFree(made.net());
    assertThat(made.findings()).isEmpty();
  }

  /** Rules of thumb: a tuck of 8 mm, a hook and a tongue of 4 mm beyond their cut hold. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "tuck('top', 'side 1', { depth: 6 })|reaches in by 6 mm: under 8 mm it slips out|2 mm",
        "tuck('top', 'side 1', { depth: 8 })||",
        "open('top').hook('side 1', 'side 4', { depth: 4 })|3.5 mm past its cut: under 4 mm|0.5 mm",
        "open('top').hook('side 1', 'side 4', { depth: 4.5 })||",
        "open('top').tongue('side 1', 'side 4', { depth: 3 })|3 mm through its slot: under 4 mm|1"
            + " mm",
        "open('top').tongue('side 1', 'side 4', { depth: 4 })||",
      })
  void whatSlipsOutIsTold(String said, String told, String more) throws Exception {
    List<String> found =
        told(
            run(
                "design(\"a\"); box({ width: 60, depth: 60, height: 40 })."
                    + said.replace('\'', '"')
                    + ".unfold({ as: \"strip\" });"),
            "shallow-flap");
    if (told == null) {
      assertThat(found).isEmpty();
    } else {
      assertThat(found).isNotEmpty().allMatch(f -> f.contains(told) && f.contains("by " + more));
    }
  }

  private static String dust(double wide, double depth, String hinge) {
    return String.format(
        Locale.ROOT,
        """
        design("Carton");
        const front = panel("front", { width: %s, height: 70 });
        const right = front.attach("right", "right", { depth: 40, fold: 90 });
        const back = right.attach("top", "back", { depth: %s, fold: 90 });
        const left = back.attach("top", "left", { depth: 40, fold: 90 });
        left.join("top", front, "left", { depth: 8, on: "front" });
        const lid = back.attach("left", "lid", { depth: 40, fold: 90 });
        lid.tuck("top", front);
        left.attach("left", "left dust", { depth: %s, %s, fold: 90 });
        right.attach("left", "right dust", { depth: %s, %s, fold: 90 });
        """,
        wide,
        wide,
        depth,
        hinge,
        depth,
        hinge);
  }

  /** Two flaps deeper than half the opening lie over each other by what is too much. */
  @Property(tries = 8, seed = "20261207")
  void dustFlapsDeeperThanHalfTheOpeningAreTold(
      @ForAll @DoubleRange(min = 40, max = 90) double wide,
      @ForAll @DoubleRange(min = 0.3, max = 0.7) double part)
      throws Exception {
    List<String> found =
        told(run(dust(wide, wide * part, "width: 30")), "dust-flaps").stream()
            .filter(t -> t.contains("lie over each other"))
            .toList();
    if (part <= 0.5) {
      assertThat(found).isEmpty();
    } else if (wide * (2 * part - 1) > 0.1) {
      assertThat(found).hasSize(1);
      assertThat(found.getFirst()).contains("Make each at most");
      String mended = found.getFirst().replaceAll(".*at most ([0-9.]+) mm.*", "$1");
      assertThat(told(run(dust(wide, Double.parseDouble(mended), "width: 30")), "dust-flaps"))
          .isEmpty();
      assertThat(Double.parseDouble(mended)).isCloseTo(wide / 2, within(0.05));
    }
  }

  /** One that runs as far as the front stands where the tuck goes in. */
  @Test
  void aDustFlapAgainstTheTuckIsTold() throws Exception {
    assertThat(told(run(dust(60, 20, "width: 40")), "dust-flaps"))
        .hasSize(2)
        .allMatch(t -> t.contains("stands where") && t.contains("back by 0.28 mm or more"));
    assertThat(told(run(dust(60, 20, "width: 38")), "dust-flaps")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "tuck('top', 'side 1', { radius: 40 })|finds no room on its edges: at most by",
        "tuck('top', 'side 1').open('side 1')|a tuck between it and \"top\" was said before",
        "tuck('top', 'side 1').open('top')|can't be left out",
        "hook('side 1', 'side 2').open('side 2')|a hook between it and \"side 1\"",
        "open('top').open('top')|no facet is called \"top\"",
        "open('top').tuck('top', 'side 1')|\"top\"",
      })
  void whatMakesNoSenseIsRefused(String said, String told) {
    ScriptException e =
        catchThrowableOfType(
            ScriptException.class,
            () ->
                run(
                    "design(\"a\");\nbox({ width: 60, depth: 40, height: 30 })."
                        + said.replace('\'', '"')
                        + ".unfold();"));
    assertThat(e).isNotNull().hasMessageContaining(told);
    assertThat(e.line()).isEqualTo(2);
  }

  /** What was left out before is told to be gone. */
  @Test
  void aFacetOpenedTwiceIsSaidToBeGone() {
    ScriptException e =
        catchThrowableOfType(
            ScriptException.class,
            () ->
                run(
                    "design(\"a\");\nbox({ width: 60, depth: 40, height: 30 }).open(\"top\")"
                        + ".open(\"top\").unfold();"));
    assertThat(e.toString() + e.remedy()).contains("left out by open is gone");
  }

  /** Nothing of it is an error where all is as it should be. */
  @Test
  void aSoundCartonIsSound() throws Exception {
    Design made = run(dust(60, 28, "width: 36"));
    assertThat(made.folded().closure()).isEqualTo(Closure.CLOSES);
    assertThat(made.findings()).noneMatch(f -> f.severity() != Finding.Severity.NOTE);
  }
}
