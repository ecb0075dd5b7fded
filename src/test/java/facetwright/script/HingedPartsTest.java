package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import facetwright.check.Summary;
import facetwright.check.finding.Finding;
import facetwright.fold.Folding;
import facetwright.fold.place.Swinging;
import facetwright.fold.pose.Together;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.measure.Unit;
import facetwright.papers.handout.Handout;
import facetwright.papers.handout.Judgement;
import facetwright.papers.materials.HingeStrip;
import facetwright.papers.materials.Materials;
import facetwright.papers.materials.Prices;
import facetwright.papers.materials.Works;
import facetwright.papers.materials.WorksText;
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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Parts hinged to others at an edge. */
class HingedPartsTest {
  private static final String BOX =
      """
      design("Hinged box", { units: "mm" });
      sheet("A1", { weight: 220 });
      const foot = rectangle({ width: 80, height: %s });
      const box = prism({ outline: foot, height: 50 }).open("top").unfold({ part: "box" });
      const lid = prism({ outline: foot.offset(%s), height: %s }).open("top").unfold({ part: "lid" });
      lid.over(box, { %s });
      """;

  private static final String COVER =
      """
      design("Covered box");
      const box = prism({ sides: 4, side: 60, height: 30 }).open("top").unfold({ part: "box" });
      const cover = panel("cover", { width: 60, height: 60 }).part("cover");
      cover.on(box, { hinged: "back", open: 110 });
      """;

  private static Design run(double deep, double off, double high, String options)
      throws ScriptException {
    return run(String.format(Locale.ROOT, BOX, deep, off, high, options));
  }

  private static Design run(String script) throws ScriptException {
    return Facetwright.evaluate("a.js", script, Map.of(), Budget.USUAL);
  }

  private static List<Finding> swings(Design design) {
    return design.findings().stream().filter(f -> f.rule().equals("swing")).toList();
  }

  /**
   * Over the hinge's line, the front wall's foot goes round on a circle as wide as the lid is deep;
   * the nearest place of the box is the rim of its front wall. So the room is the one radius less
   * the other, less the card.
   */
  @Property(tries = 12, seed = "20261205")
  void theRoomIsThatBetweenTwoCirclesAboutTheHinge(
      @ForAll @DoubleRange(min = 40, max = 90) double deep,
      @ForAll @DoubleRange(min = 0.7, max = 2.5) double off,
      @ForAll @DoubleRange(min = 5, max = 14) double high)
      throws ScriptException {
    Design design = run(deep, off, high, "hinged: 'back', open: 80");
    Together together = design.folded().together();
    assertThat(together.swings()).as("%s", design.findings()).hasSize(1);
    double card = design.laid().stock().caliper();
    Swinging swinging = new Swinging(design.net(), together, together.swings().getFirst(), card);
    double room = deep + 2 * off - Math.hypot(deep + off, high - card) - card;
    if (room > 0) {
      assertThat(swinging.way().room()).isCloseTo(Math.min(room, off - card), within(0.02));
      assertThat(swings(design)).isEmpty();
    } else if (room < -0.02) {
      assertThat(swinging.way().catches()).isTrue();
      assertThat(swings(design)).hasSize(1);
      double lacks = Math.hypot(deep + off, high - card) + card - deep - 2 * off;
      assertThat(swinging.outward().orElseThrow()).isCloseTo(lacks, within(0.03));
      double reach = Math.sqrt(Math.pow(deep + 2 * off - card, 2) - Math.pow(deep + off, 2));
      assertThat(swinging.shallower().orElseThrow()).isCloseTo(high - card - reach, within(0.1));
    }
  }

  @ParameterizedTest
  @CsvSource({"back, 0, 1", "front, 0, -1", "right, 1, 0", "left, -1, 0"})
  void theHingeLiesAtTheSideThatIsNamed(String side, double x, double y) throws ScriptException {
    Design design = run(60, 1, 8, "hinged: '" + side + "', open: 75");
    Together.Swing swing = design.folded().together().swings().getFirst();
    Vec3 out = new Vec3(x, y, 0);
    assertThat(swing.from().dot(out)).isCloseTo(31 + 10 * Math.abs(x), within(1e-6));
    assertThat(swing.to().dot(out)).isCloseTo(swing.from().dot(out), within(1e-6));
    assertThat(swing.from().z()).isCloseTo(42, within(1e-6));
    // The lid comes up over the box, and nothing else moves.
    for (int p = 0; p < design.net().panels().size(); p++) {
      Vec3 shut = design.folded().together().shut().get(p).apply(middle(design, p));
      Vec3 open = design.folded().together().poses().get(p).apply(middle(design, p));
      if (!swing.panels().contains(p)) {
        assertThat(open.distance(shut)).isCloseTo(0, within(1e-9));
      } else if (shut.dot(out) < 20) {
        assertThat(open.z()).isGreaterThan(shut.z());
      }
    }
  }

  private static Vec2 middle(Design design, int panel) {
    return design.net().panels().get(panel).outline().centroid();
  }

  @Test
  void sizesAreThoseOfTheWholeShut() throws ScriptException {
    Design open = run(60, 1, 8, "hinged: 'back', open: 75");
    Design shut = run(60, 1, 8, "");
    assertThat(open.folded().measures()).isEqualTo(shut.folded().measures());
  }

  @Test
  void thePathOpensAboutTheHingeWithoutAJump() throws ScriptException {
    Design design = run(60, 1, 8, "hinged: 'back', open: 75");
    int lid = design.folded().together().swings().getFirst().panels().getFirst();
    var last = Folding.path(design.laid()).at(1).get(lid);
    var before = Folding.path(design.laid()).at(1 - 1e-6).get(lid);
    assertThat(before.apply(middle(design, lid)).distance(last.apply(middle(design, lid))))
        .isLessThan(0.01);
    assertThat(Folding.path(design.laid()).at(0.88).get(lid).ez().z())
        .isNotCloseTo(last.ez().z(), within(0.1));
  }

  @Test
  void theHandoutTellsTheStripAndTheWayItOpens() throws ScriptException {
    Design design = run(60, 1, 8, "hinged: 'back', open: 75");
    String told =
        Handout.of(
                "Box",
                "",
                Order.usual(Unit.MM),
                design.laid(),
                design.gluing(),
                Judgement.of(design.laid(), design.folded(), design.findings()),
                Works.of(design.laid(), design.gluing(), Unit.MM, List.of(), 1))
            .sections()
            .toString();
    assertThat(told).contains("score a strip of card 20 mm wide and 82 mm long").contains("75°");
  }

  @Test
  void whatGoesToTheLidSwingsWithIt() throws ScriptException {
    String box = String.format(Locale.ROOT, BOX, 60.0, 1.0, 8.0, "hinged: 'left', open: 90");
    Design design =
        run(
            box.replace("height: 8.0 }).open(\"top\")", "height: 8.0 }).open(\"base\")")
                + """
                const knob = prism({ sides: 6, side: 5, height: 6 }).unfold({ part: "knob" });
                knob.on(lid);
                """);
    Together together = design.folded().together();
    int knob = design.net().parts().all().get(2).panels().getFirst();
    assertThat(together.swings().getFirst().panels()).contains(knob);
    assertThat(together.poses().get(knob).apply(middle(design, knob)).x()).isLessThan(-40);
    assertThat(swings(design)).isEmpty();
  }

  @Test
  void aCoverLiesOnItsBoxAndOpens() throws ScriptException {
    Design design = run(COVER);
    assertThat(design.findings()).isEmpty();
    assertThat(Summary.of(design.laid(), design.folded(), design.findings(), design.unit()))
        .contains("\"cover\" opens to 110°");
  }

  @Test
  void whatHangsDownToTheTableIsTold() throws ScriptException {
    Design design = run(COVER.replace("110", "240"));
    // A cover as wide as 60 comes from 30 high down to the table 30 degrees below level.
    assertThat(swings(design))
        .anyMatch(f -> f.message().contains("comes down to the table at 210°"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "lid.over(box, { open: 50 });|nothing is hinged",
        "lid.over(box, { hinged: 'top' });|none of the words",
        "lid.over(box, { hinged: 'back', open: 300 });|too large",
        "lid.into(box, { hinged: 'back' });|hinged",
      })
  void whatCantBeSaidIsToldWithWhatCan(String line, String told) {
    String script =
        String.format(Locale.ROOT, BOX, 60.0, 1.0, 8.0, "").replace("lid.over(box, {  });", line);
    assertThatThrownBy(() -> run(script)).hasMessageContaining(told);
  }

  @Test
  void aLidOfFiveCornersHasNoStraightEdgeToItsSide() throws ScriptException {
    Design design =
        run(
            """
            design("Five");
            const box = prism({ sides: 5, side: 40, height: 30 }).open("top").unfold({ part: "box" });
            const lid = prism({ sides: 5, side: 41, height: 8 }).open("top").unfold({ part: "lid" });
            lid.over(box, { hinged: "left" });
            """);
    assertThat(design.findings()).anyMatch(f -> f.message().contains("no straight edge"));
  }

  /** Two boards side by side, hinged at the back: they open about the edge between them. */
  @Test
  void besideIsHingedToo() throws ScriptException {
    for (String at : List.of("back", "front")) {
      Design design =
          Facetwright.evaluate(
              "screen.js",
              """
              design("Screen"); const left = box({ width: 60, depth: 12, height: 90 }).unfold({ part: "left" });
              const right = box({ width: 60, depth: 12, height: 90 }).unfold({ part: "right" });
              right.beside(left, { hinged: "%s", open: 90 });
              """
                  .formatted(at),
              Map.of(),
              Budget.USUAL);
      assertThat(design.findings()).extracting(Finding::rule).doesNotContain("placing", "swing");
      Together.Swing swing = design.folded().together().swings().getFirst();
      assertThat(swing.from().distance(swing.to())).isEqualTo(90, within(1e-6));
      double thick = design.laid().stock().caliper();
      assertThat(design.folded().measures().width()).isEqualTo(120 + thick, within(1e-6));
      Materials takes = Works.of(design.laid(), design.gluing(), Unit.MM, List.of(), 2).materials();
      assertThat(takes.hinges()).containsExactly(new HingeStrip(90, 2));
      assertThat(new WorksText(Order.usual(Unit.MM)).materials(takes, Prices.NONE))
          .anyMatch(l -> l.contains("2 of 20 mm × 90 mm"));
    }
  }

  @Test
  void besideIsHingedWhereTheTwoMeet() {
    assertThatThrownBy(
            () ->
                Facetwright.evaluate(
                    "screen.js",
                    """
                    design("Screen"); const left = box({ width: 60, depth: 12, height: 90 }).unfold({ part: "left" });
                    const right = box({ width: 60, depth: 12, height: 90 }).unfold({ part: "right" });
                    right.beside(left, { hinged: "right" });
                    """,
                    Map.of(),
                    Budget.USUAL))
        .isInstanceOf(ScriptException.class)
        .hasMessageContaining("nothing meets at the right")
        .satisfies(e -> assertThat(((ScriptException) e).remedy()).contains("\"back\""));
  }
}
