package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import facetwright.check.finding.Finding;
import facetwright.fold.pose.Together;
import facetwright.geom.LengthTolerance;
import facetwright.measure.Unit;
import facetwright.net.Parts;
import facetwright.net.sheet.Stock;
import facetwright.papers.handout.Handout;
import facetwright.papers.handout.Judgement;
import facetwright.papers.handout.Picture;
import facetwright.papers.handout.Section;
import facetwright.papers.materials.Works;
import facetwright.papers.order.Order;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Several parts go into one, side by side as they were put. */
class SideBySideTest {
  private static final int LONG = 180;

  private static Design cartons(double width, String placed) throws ScriptException {
    return cartons(width, 90, placed);
  }

  private static Design cartons(double width, int length, String placed) throws ScriptException {
    return Facetwright.evaluate(
        "two.js",
        """
        design("Two in a sleeve");
        const one = box({ width: 40, depth: 20, height: 90 }).unfold({ part: "carton one" });
        const two = box({ width: 40, depth: 20, height: 90 }).unfold({ part: "carton two" });
        const sleeve = wrap({ widths: [%1$s, 21, %1$s, 21], rows: [%2$s], seam: 10 }).part("sleeve");
        %3$s
        """
            .formatted(width, length, placed),
        Map.of(),
        Budget.USUAL);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "two.beside(one, { by: 0.4 }); sleeve.over(one);",
        "two.beside(one, { by: 0.4 }); one.into(sleeve);",
        "sleeve.over([one, two]);",
        "sleeve.over([two, one]);",
        "two.beside(one, { by: 0.4 }); sleeve.over([one, two]);",
        "one.into(sleeve); two.into(sleeve);",
        "one.into(sleeve); two.into(sleeve, { lie: 'right' });",
      })
  void bothGoInAtOnce(String placed) throws ScriptException {
    Design design = cartons(81.6, placed);
    assertThat(design.findings())
        .extracting(Finding::rule)
        .doesNotContain("fit", "placing", "collision");
    Together.Nest nest = design.folded().together().nests().getFirst();
    assertThat(nest.depth()).isEqualTo(90, within(LengthTolerance.FINE.mm()));
    assertThat(nest.with()).hasSize(2);
    assertThat(cartons(80.2, placed).findings()).extracting(Finding::rule).contains("fit");
  }

  @Test
  void whatDoesNotGoInAtAllIsTold() throws ScriptException {
    assertThat(cartons(36, "one.into(sleeve); two.into(sleeve, { lie: 'right' });").findings())
        .filteredOn(f -> f.rule().equals("placing"))
        .singleElement()
        .extracting(f -> f.what().toString())
        .asString()
        .contains("\"carton one\" and \"carton two\" do not go into \"sleeve\": together they are");
  }

  @Test
  void whatHasNoRoomBesideLiesOnTop() throws ScriptException {
    Design design = cartons(41, LONG, "one.into(sleeve); two.into(sleeve);");
    assertThat(design.findings()).extracting(Finding::rule).doesNotContain("fit", "placing");
    assertThat(design.folded().together().stages().getFirst().as())
        .isInstanceOf(Parts.Placing.On.class);
  }

  /** Boxes of random size and number, in a tray that is as large as rows of them and no larger. */
  @Test
  void alikeBoxesFillATray() throws ScriptException {
    Random random = new Random(16);
    double card = Stock.usualCaliper(Stock.USUAL_WEIGHT);
    for (int i = 0; i < 6; i++) {
      int row = 1 + random.nextInt(4);
      int rows = row == 1 ? 2 + random.nextInt(3) : 1 + random.nextInt(3);
      double wide = 20 + random.nextInt(20);
      double deep = 20 + random.nextInt(20);
      for (double play : new double[] {0.6, -0.3}) {
        double across = row * wide + (row + 1) * card + play;
        double along = rows * deep + (rows + 1) * card + play;
        Design design =
            Facetwright.evaluate(
                "tray.js",
                """
                design("Tray of boxes");
                const one = box({ width: %s, depth: %s, height: 30 }).unfold({ part: "one", count: %s });
                const tray = box({ width: %s, depth: %s, height: 33 }).open("top").unfold({ part: "tray" });
                one.into(tray);
                """
                    .formatted(wide, deep, row * rows, across, along),
                Map.of(),
                Budget.USUAL);
        String told = row + " by " + rows + " of " + wide + " by " + deep + " with " + play;
        Together together = design.folded().together();
        assertThat(together.refused()).as(told).isEmpty();
        assertThat(together.nests().getFirst().with()).as(told).hasSize(row * rows);
        if (play > 0) {
          assertThat(design.findings())
              .as(told)
              .extracting(Finding::rule)
              .doesNotContain("fit", "placing", "collision");
          assertThat(design.folded().measures().height()).as(told).isLessThan(33.01);
        } else {
          assertThat(design.findings()).as(told).extracting(Finding::rule).contains("fit");
        }
      }
    }
  }

  @Test
  void overSeveralAndIntoTheSameAreOne() throws ScriptException {
    assertThat(room("sleeve.over([one, two]);"))
        .isEqualTo(room("one.into(sleeve); two.into(sleeve);"), within(LengthTolerance.FINE.mm()));
  }

  private static double room(String placed) throws ScriptException {
    return cartons(81.6, placed).folded().together().nests().getFirst().room();
  }

  @Test
  void aHandoutTellsThemInOneBreath() throws ScriptException {
    Design design = cartons(81.6, "sleeve.over([one, two]);");
    Works works = Works.of(design.laid(), design.gluing(), Unit.MM, List.of(), 1);
    Handout handout =
        Handout.of(
            "",
            "",
            Order.usual(Unit.MM),
            design.laid(),
            design.gluing(),
            Judgement.of(design.laid(), design.folded(), design.findings()),
            works);
    assertThat(((Section.Steps) handout.sections().getLast()).pictures())
        .extracting(Picture::words)
        .contains(
            "Lay “carton one” and “carton two” side by side, as the picture shows; they go in"
                + " together.",
            "Put “sleeve” over “carton one” and “carton two”, 90 mm deep.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "sleeve.over([]);|too short",
        "sleeve.over([one, one]);|\"carton one\" is named twice",
        "sleeve.over([one, sleeve]);|\"sleeve\" can't go over itself",
        "one.on(two); sleeve.over([one, two]);|\"carton two\" can't go beside \"carton one\"",
        "two.on(sleeve); sleeve.over([one, two]);|\"carton two\" goes to two places",
        "one.into(sleeve, { lie: 'left' });|\"right\", \"back\", \"top\"",
      })
  void whatMakesNoSenseIsRefused(String placed, String told) {
    assertThatThrownBy(() -> cartons(81.6, placed))
        .isInstanceOf(ScriptException.class)
        .satisfies(e -> assertThat(((ScriptException) e).site().line()).isEqualTo(5))
        .satisfies(e -> assertThat(e.toString() + ((ScriptException) e).remedy()).contains(told));
  }

  @Test
  void aPanelStandsForItsName() throws ScriptException {
    Design design =
        Facetwright.evaluate(
            "names.js",
            """
            design("Corner");
            const front = panel("front", { width: 40, height: 50 });
            const side = front.attach("left", "side", { depth: 20, fold: 90 });
            const top = front.attach("top", "top", { depth: 20, fold: 90 });
            side.join("left", top, "left", { on: top });
            front.note("Look here.", { before: side });
            """,
            Map.of(),
            Budget.USUAL);
    assertThat(design.net().fittings().all()).hasSize(1);
  }
}
