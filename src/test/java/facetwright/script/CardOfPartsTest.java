package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import facetwright.check.Summary;
import facetwright.check.Verdict;
import facetwright.measure.Unit;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.Stock;
import facetwright.papers.materials.Need;
import facetwright.papers.materials.Works;
import facetwright.papers.order.Order;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Parts cut from cards of their own, and parts made several times. */
class CardOfPartsTest {
  private static final String BOX =
      """
      design("Two cards");
      sheet("A3", { weight: 240 });
      const box = prism({ sides: 4, side: 50, height: 40 }).open("top").unfold({ part: "box" });
      const lid = prism({ sides: 4, side: 52, height: 15 }).open("top")
        .unfold({ part: "lid", sheet: "A4", weight: 400, colour: "navy" });
      lid.over(box);
      """;

  private static Design evaluate(String script) throws ScriptException {
    return Facetwright.evaluate("parts.js", script, Map.of(), Budget.USUAL);
  }

  @Test
  void eachCardLiesOnSheetsOfItsOwn() throws ScriptException {
    Design design = evaluate(BOX);
    Laid laid = design.laid();
    assertThat(laid.fits()).isTrue();
    assertThat(laid.kinds()).extracting(Stock::name).containsExactly("A3", "A4");
    assertThat(laid.kinds()).extracting(Stock::weight).containsExactly(240.0, 400.0);
    assertThat(laid.kinds()).extracting(Stock::colour).containsExactly("", "navy");
    for (int p = 0; p < design.net().panels().size(); p++) {
      boolean isLid = design.net().panels().get(p).name().startsWith("lid ");
      assertThat(laid.cardOf(p).name()).isEqualTo(isLid ? "A4" : "A3");
      assertThat(laid.sheet(isLid ? 1 : 0).grown(1e-6).minX())
          .isLessThan(design.net().panels().get(p).outline().box().minX());
    }
    assertThat(Summary.fits(laid))
        .isEqualTo("Fits A3 (240 g/m², 0.3 mm) and A4 (400 g/m², 0.5 mm, navy).");
  }

  @Test
  void bothCardsAreBought() throws ScriptException {
    Design design = evaluate(BOX);
    Works works = Works.of(design.laid(), design.gluing(), Unit.MM, List.of(), 3);
    List<Need> cards =
        works.materials().needs().stream().filter(n -> n.key().equals("sheet")).toList();
    assertThat(cards).extracting(Need::amount).containsExactly(3.0, 3.0);
    assertThat(cards.getLast().what().text(Order.usual(Unit.MM).telling()))
        .isEqualTo("card, A4, 400 g/m², 0.5 mm thick, navy");
  }

  /** Half of either card lies between the lines of two nets, and a whole one where a tab does. */
  @Test
  void whatTheFitTakesGoesByBothCards() throws ScriptException {
    Design thick = evaluate(BOX.replace("side: 52", "side: 54"));
    Design thin =
        evaluate(BOX.replace("side: 52", "side: 54").replace("weight: 400", "weight: 240"));
    double more = room(thin) - room(thick);
    assertThat(more).isPositive().isLessThan(4 * (0.5 - 0.3));
  }

  private static double room(Design design) {
    String verdict = Verdict.of(design.laid(), design.folded(), design.findings()).text(Unit.MM);
    return Double.parseDouble(verdict.replaceAll("(?s).*with ([0-9.]+).mm of room.*", "$1"));
  }

  @Test
  void whatIsMadeFourTimesIsThereFourTimes() throws ScriptException {
    Design table =
        evaluate(
            """
            design("Table");
            const top = prism({ sides: 4, side: 100, height: 8 }).unfold({ part: "top" });
            const leg = prism({ sides: 4, side: 10, height: 60 }).unfold({ part: "leg", count: 4 });
            leg.on(top, { at: [[-40, -40], [40, -40], [40, 40], [-40, 40]] });
            """);
    assertThat(table.net().parts().all()).hasSize(5);
    assertThat(table.net().parts().count(1)).isEqualTo(4);
    assertThat(table.net().panels())
        .extracting(p -> p.name())
        .contains("leg 1 side 1", "leg 4 side 1");
    assertThat(table.folded().measures().height()).isCloseTo(68, within(1e-6));
    assertThat(table.folded().measures().volume())
        .isCloseTo(100 * 100 * 8 + 4 * 10 * 10 * 60, within(1e-3));
    assertThat(table.isSound()).as(table.findings().toString()).isTrue();
  }

  @Test
  void asManyLidsGoOverAsManyBoxes() throws ScriptException {
    Design boxes =
        evaluate(
            """
            design("Two boxes");
            const floor = panel("floor", { width: 50, height: 50 });
            for (const edge of ["bottom", "right", "top", "left"]) floor.attach(edge, edge, { depth: 30, fold: 90 });
            const box = floor.part("box", { count: 2 });
            const lid = prism({ sides: 4, side: 52, height: 15 }).open("top").unfold({ part: "lid", count: 2 });
            lid.over(box);
            """);
    assertThat(boxes.folded().together().nests()).hasSize(2);
    assertThat(boxes.folded().together().refused()).isEmpty();
    assertThat(boxes.net().pieces()).isEqualTo(4);
  }

  @Test
  void threeLegsNeedThreePlaces() {
    ScriptException fault =
        catchThrowableOfType(
            ScriptException.class,
            () ->
                evaluate(
                    """
                    design("Stool");
                    const seat = prism({ sides: 6, side: 30, height: 8 }).unfold({ part: "seat" });
                    const leg = prism({ sides: 4, side: 10, height: 60 }).unfold({ part: "leg", count: 3 });
                    leg.on(seat);
                    """));
    assertThat(fault.getMessage()).contains("\"leg\" is made 3 times, and one place is named");
    assertThat(fault.remedy()).contains("Give at as a list of 3 places");
    assertThat(fault.site().line()).isEqualTo(4);
  }

  @Test
  void withoutASheetEachCardTakesTheSmallestThatHoldsIt() throws ScriptException {
    Design design =
        evaluate(
            """
            design("Two cards");
            const box = prism({ sides: 4, side: 50, height: 40 }).open("top").unfold({ part: "box" });
            const lid = prism({ sides: 4, side: 52, height: 15 }).open("top")
              .unfold({ part: "lid", colour: "navy" });
            """);
    assertThat(design.laid().kinds()).hasSize(2);
    assertThat(design.laid().fits()).isTrue();
    assertThat(design.folded().together().isSome()).isFalse();
  }

  /** What slides over is set off by both cards: half of either, and the thicker one for a tab. */
  @Test
  void aLidOfThickerCardIsSetOffByItsOwn() throws ScriptException {
    String script =
        """
        design("Two cards");
        sheet("A3", { weight: 240 });
        const foot = rectangle({ width: 60, height: 40 });
        say(foot.offset("card", { weight: 400 }).width());
        say(foot.offset("card").width());
        say(foot.offset("-card", { caliper: "0.5 mm" }).width());
        prism({ outline: foot, height: 30 }).open("top").unfold({ part: "box" });
        prism({ outline: foot.offset("card", { weight: 400 }), height: 12 }).open("top")
          .unfold({ part: "lid", weight: 400 });
        """;
    // 240 g/m² is 0.3 mm thick, 400 g/m² 0.5 mm: 0.4 + 0.5 mm, and 0.25 mm of play, on each side.
    assertThat(evaluate(script).said()).containsExactly("62.3", "61.7", "57.7");
  }

  @Test
  void aWeightGoesWithCardAlone() {
    ScriptException fault =
        catchThrowableOfType(
            ScriptException.class,
            () ->
                evaluate(
                    "design(\"a\");\n"
                        + "rectangle({ width: 60, height: 40 }).offset(2, { weight: 400 });"));
    assertThat(fault.getMessage()).contains("go with \"card\"");
    assertThat(fault.site().line()).isEqualTo(2);
  }

  /** Parts that say nothing of their card are of the design's, also where the first part is not. */
  @Test
  void partsAreAsThickAsTheirCard() throws ScriptException {
    Design design = evaluate(BOX.replace("{ part: \"box\" }", "{ part: \"box\", weight: 300 }"));
    assertThat(design.net().parts().all())
        .extracting(p -> Math.rint(p.caliper() * 1000) / 1000)
        .containsExactly(0.375, 0.5);
    Design plain = evaluate(BOX);
    assertThat(plain.net().parts().all().getFirst().caliper()).isCloseTo(0.3, within(1e-9));
    int lid = plain.net().parts().all().getLast().panels().getFirst();
    assertThat(plain.net().parts().caliperAt(lid, 0.3)).isCloseTo(0.5, within(1e-9));
  }
}
