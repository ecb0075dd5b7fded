package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import facetwright.check.finding.Finding;
import facetwright.fold.making.Gluing;
import facetwright.fold.pose.Closure;
import facetwright.form.NetChecks;
import facetwright.geom.Motion3;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.Join;
import facetwright.net.Join.Hold;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.Panel;
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

/** Edges of forms closed by tongues, and notches in their free edges. */
class FormTongueTest {
  private static Design run(String script, Object... values) throws ScriptException {
    String text = values.length == 0 ? script : String.format(Locale.ROOT, script, values);
    return Facetwright.evaluate("a.js", text, Map.of(), Budget.USUAL);
  }

  private static Join.Seam latch(Net net) {
    return net.joins().stream()
        .filter(j -> j.hold() == Hold.LATCH)
        .map(Join.Seam.class::cast)
        .findFirst()
        .orElseThrow();
  }

  /**
   * Folded, the flap lies in the plane of the facet with the slot; its tongue is as wide at the
   * slot as was said, centred on it, and reaches as far beyond.
   */
  @Property(tries = 10, seed = "20261208")
  void aTongueComesOutThroughItsSlot(
      @ForAll @IntRange(min = 3, max = 8) int sides,
      @ForAll @DoubleRange(min = 36, max = 60) double side,
      @ForAll @DoubleRange(min = 50, max = 90) double tall,
      @ForAll @DoubleRange(min = 6, max = 12) double inset,
      @ForAll @DoubleRange(min = 5, max = 9) double depth)
      throws Exception {
    Design made =
        run(
            "design(\"a\"); prism({ sides: %d, side: %s, height: %s }).open([\"base\", \"top\"])"
                + ".tongue(\"side 1\", \"side 2\", { inset: %s, depth: %s }).unfold();"
                + " sheet(\"A1\");",
            sides, side, tall, inset, depth);
    Net net = made.net();
    assertThat(made.folded().closure()).isEqualTo(Closure.CLOSES);
    assertThat(made.findings()).noneMatch(f -> f.severity() == Finding.Severity.ERROR);
    NetChecks.overlapFree(net);
    Join.Seam seam = latch(net);
    Panel flap = net.panels().get(seam.tab());
    int host = seam.b().panel();
    Opening.Slot slot = (Opening.Slot) net.panels().get(host).openings().getFirst();
    assertThat(net.panels().get(host).name()).isEqualTo("side 2");
    assertThat(slot.line().length()).isCloseTo(tall / 3 + 1, within(1e-6));
    Vec2 edge = net.segment(seam.b()).middle();
    assertThat(slot.line().middle().distance(edge)).isCloseTo(inset, within(1e-6));
    Motion3 into =
        made.folded().poses().get(seam.tab()).then(made.folded().poses().get(host).inverse());
    Vec2 along = slot.line().direction();
    double farthest = 0;
    for (Vec2 corner : flap.outline().corners()) {
      Vec3 at = into.apply(corner);
      assertThat(at.z()).isCloseTo(0, within(1e-6));
      Vec2 from = new Vec2(at.x(), at.y()).minus(edge);
      double beyond = Math.abs(from.cross(along));
      farthest = Math.max(farthest, beyond);
      if (beyond > inset + 1e-6) {
        assertThat(Math.abs(from.dot(along))).isLessThan(tall / 6 + 1e-6);
      }
    }
    assertThat(farthest).isCloseTo(inset + depth, within(1e-6));
    assertThat(Join.glued(net)).doesNotContain(seam.tab());
    assertThat(Gluing.numbered(made.gluing().stages())).isNotEmpty();
  }

  /** A tongue whose flap finds no room there is refused, not made another way. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{ inset: 0.5 }|lies 0.5 mm in from the edge: 1 mm or more",
        "{ width: 39 }|leaves no shoulders on the side of",
        "{ inset: 50, depth: 20 }|there is no room for the tongue",
        "{ slot: 9 }|slot",
        "{ deep: 9 }|deep",
      })
  void whatMakesNoSenseIsRefusedAtItsLine(String options, String told) {
    ScriptException e =
        catchThrowableOfType(
            ScriptException.class,
            () ->
                run(
                    "design(\"a\");\nbox({ width: 60, depth: 60, height: 40 }).open(\"top\")"
                        + ".tongue(\"side 1\", \"side 2\", "
                        + options
                        + ").unfold();"));
    assertThat(e).isNotNull().hasMessageContaining(told);
    assertThat(e.line()).isEqualTo(2);
  }

  private static double area(Net net, String panel) {
    return net.panels().stream()
        .filter(p -> p.name().equals(panel))
        .mapToDouble(p -> p.outline().area())
        .sum();
  }

  /** A notch takes its own area off the facet: a triangle, a rectangle, half a circle. */
  @Property(tries = 10, seed = "20261209")
  void aNotchIsCutIntoTheFreeEdge(
      @ForAll @DoubleRange(min = 8, max = 20) double width,
      @ForAll @DoubleRange(min = 4, max = 12) double depth,
      @ForAll @IntRange(min = 1, max = 4) int front)
      throws Exception {
    String said =
        "design(\"a\"); box({ width: 60, depth: 50, height: 40 })%s.notch(\"side "
            + front
            + "\", { width: %s, depth: %s, shape: \"%s\" }).unfold();";
    for (String lid :
        List.of(".open(\"top\")", ".tuck(\"top\", \"side " + front + "\", { depth: 12 })")) {
      double wide = front % 2 == 1 ? 60 : 50;
      Net v = run(said, lid, width, depth, "v").net();
      assertThat(area(v, "side " + front)).isCloseTo(wide * 40 - width * depth / 2, within(1e-6));
      Net square = run(said, lid, width, depth, "square").net();
      assertThat(area(square, "side " + front)).isCloseTo(wide * 40 - width * depth, within(1e-6));
      Net round = run(said, lid, width, width / 2, "round").net();
      assertThat(area(round, "side " + front))
          .isCloseTo(wide * 40 - Math.PI * width * width / 8, within(1.0));
      for (Net net : List.of(v, square, round)) {
        NetChecks.overlapFree(net);
      }
    }
  }

  @Test
  void ofSeveralFreeEdgesOneIsNamed() throws Exception {
    String tube =
        "design(\"a\"); box({ width: 60, depth: 50, height: 40 }).open([\"top\", \"base\"])";
    for (String edge : List.of("top", "bottom")) {
      Design made =
          run(
              tube
                  + ".notch(\"side 1\", { edge: \""
                  + edge
                  + "\", width: 20, depth: 10 }).unfold({ as: \"strip\" });");
      assertThat(made.folded().closure()).isEqualTo(Closure.CLOSES);
      int panel = made.net().panels().stream().map(Panel::name).toList().indexOf("side 1");
      List<Vec3> corners =
          made.net().panels().get(panel).outline().corners().stream()
              .map(made.folded().poses().get(panel)::apply)
              .toList();
      double low = corners.stream().mapToDouble(Vec3::z).min().orElseThrow();
      double tip = edge.equals("top") ? 30 : 10;
      assertThat(corners).anyMatch(c -> Math.abs(c.z() - low - tip) < 1e-6);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "notch('side 1', { width: 9, depth: 4 })|has no free edge to cut a notch into",
        "open(['top', 'base']).notch('side 1', { width: 9, depth: 4 })|has 2 free edges: say which",
        "open('top').notch('side 1', { width: 9, depth: 4, edge: 'side 2' })|has no free edge",
        "open('top').notch('side 1', { width: 90, depth: 4 })|width",
        "open('top').notch('side 1', { width: 9, depth: 90 })|reaches across the panel",
        "open('top').notch('side 1', { width: 9, depth: 4, at: 2 })|is not free from",
      })
  void aNotchThatMakesNoSenseIsRefused(String said, String told) {
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
}
