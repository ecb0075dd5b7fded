package facetwright.papers.materials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.measure.Unit;
import facetwright.net.sheet.SheetSizes;
import facetwright.net.sheet.Stock;
import facetwright.papers.guide.PunchGuide;
import facetwright.papers.order.Order;
import facetwright.script.Facetwright;
import facetwright.script.LibraryDesigns;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What a design takes, by hand reckoning. The rules themselves: common practice, no source. */
class MaterialsTest {
  private static final Stock CARD = SheetSizes.named("A4").stock(Stock.USUAL_WEIGHT);

  private static Works works(Design d, int pieces) {
    return Works.of(d.laid(), d.gluing(), d.unit(), List.of(), pieces);
  }

  private static Design design(String script) throws Exception {
    return Facetwright.evaluate("test.js", script, Map.of(), Budget.USUAL);
  }

  private static Design lantern() throws Exception {
    return design(LibraryDesigns.text("harbour-lantern"));
  }

  private static Need need(Works works, String key) {
    return works.materials().needs().stream()
        .filter(n -> n.key().equals(key))
        .findFirst()
        .orElseThrow();
  }

  /**
   * The seam is 120 mm long; eight flaps of 28 mm have a hole each, of which the first over either
   * opening takes no tape; 8 layers of 57 x 25 mm.
   */
  @Test
  void theLanternsTapeHolesAndLayers() throws Exception {
    Works works = works(lantern(), 24);
    assertThat(need(works, "tape").amount()).isCloseTo(24 * (0.12 + 6 * 0.028), within(1e-9));
    assertThat(works.materials().holes()).isEqualTo(24 * 8);
    assertThat(works.materials().layerArea()).isCloseTo(24 * 8 * 57.0 * 25, within(1e-3));
    assertThat(need(works, "ribbon").amount()).isCloseTo(24 * 0.3, within(1e-9));
    assertThat(need(works, "light").amount()).isEqualTo(24);
    assertThat(need(works, "light").withSpare()).isEqualTo(27);
    assertThat(works.materials().perSheet()).isEqualTo(2);
    assertThat(need(works, "sheet").amount()).isEqualTo(12);
  }

  @Test
  void sparesAreOneInTenInWholeUnits() {
    assertThat(new Need("sheet", new Goods.Card(CARD), 1, Need.Unit.SHEETS).withSpare())
        .isEqualTo(2);
    assertThat(new Need("sheet", new Goods.Card(CARD), 10, Need.Unit.SHEETS).withSpare())
        .isEqualTo(11);
    assertThat(new Need("sheet", new Goods.Card(CARD), 11, Need.Unit.SHEETS).withSpare())
        .isEqualTo(13);
    assertThat(new Need("tape", new Goods.Tape(), 2.88, Need.Unit.METRES).withSpare()).isEqualTo(4);
  }

  /** Area times g/m² (ISO 536): 60 x 50 mm less a window of 20 x 30 mm is 2400 mm². */
  @Test
  void aPieceWeighsItsCardWithoutWhatFallsAway() throws Exception {
    String plate =
        """
        design("Plate", { units: "%s" });
        sheet("A4", { weight: %s });
        const plate = panel("plate", { width: %s, height: %s });
        plate.window({ width: %s, height: %s });
        """;
    Design metric = design(plate.formatted("mm", 250, 60, 50, 20, 30));
    assertThat(metric.laid().mass().grams()).isCloseTo(2400 * 250 / 1e6, within(1e-9));
    assertThat(told(works(metric, 7)))
        .anyMatch(l -> l.startsWith("Weight of one piece: about 0.6 g, glue aside."));
    // 10 x 5 in less 4 x 3 in: 38 in² at 645.16 mm² are 6.13 g, or 0.22 oz.
    Design inches = design(plate.formatted("in", 250, 10, 5, 4, 3));
    assertThat(inches.laid().mass().grams()).isCloseTo(38 * 645.16 * 250 / 1e6, within(1e-9));
    assertThat(
            new WorksText(Order.usual(inches.unit()))
                .materials(works(inches, 1).materials(), Prices.NONE))
        .anyMatch(l -> l.startsWith("Weight of one piece: about 0.22 oz, glue aside."));
  }

  /** Parts of cards of their own weigh what those weigh; layers come on top. */
  @Test
  void eachPartWeighsItsOwnCard() throws Exception {
    Design two =
        design(
            """
            design("Two cards");
            panel("thin", { width: 100, height: 100 }).part("thin", { weight: 100 });
            panel("thick", { width: 50, height: 100 }).layer({ reveal: 3 }).part("thick", { weight: 300 });
            """);
    assertThat(two.laid().mass().grams()).isCloseTo(1.0 + 1.5, within(1e-9));
    assertThat(told(works(two, 1)))
        .anyMatch(
            l ->
                l.startsWith(
                    "Weight of one piece: about 2.5 g of card; papers, film and glue come on"
                        + " top."));
  }

  private static List<String> told(Works works) {
    return new WorksText(Order.usual(Unit.MM)).materials(works.materials(), Prices.NONE);
  }

  @Test
  void costCountsWhatIsPricedOnly() throws Exception {
    Works works = works(lantern(), 24);
    Prices prices = new Prices("EUR", Map.of("sheet", 1.5, "tape", 0.25));
    // 12 sheets and two to spare; 6.912 m and a tenth more are 8 m.
    assertThat(works.materials().cost(prices)).hasValue(14 * 1.5 + 8 * 0.25);
    assertThat(works.materials().cost(Prices.NONE)).isEmpty();
  }

  @Test
  void moreDesignsTakeNoLessOfAnything() throws Exception {
    Design d = lantern();
    for (Need one : works(d, 1).materials().needs()) {
      assertThat(need(works(d, 5), one.key()).amount()).isGreaterThanOrEqualTo(one.amount());
    }
    assertThat(works(d, 5).materials().minutes()).isGreaterThan(works(d, 1).materials().minutes());
  }

  /** Each hole of the lantern's tabs stands over the middle of its tab's edge. */
  @Test
  void theLanternsHolesHaveOneGuide() throws Exception {
    List<PunchGuide> guides = PunchGuide.of(lantern().net());
    assertThat(guides).hasSize(1);
    PunchGuide guide = guides.getFirst();
    assertThat(guide.panels()).hasSize(8);
    assertThat(guide.diameter()).isEqualTo(3);
    assertThat(guide.along()).isCloseTo(guide.edge() / 2, within(0.01));
    assertThat(guide.centred()).isTrue();
  }

  /** A hole 12 mm and 9 mm from a corner's sides, at mirrored corners: one guide, turned over. */
  @Test
  void mirroredHolesShareAGuide() throws Exception {
    Design d =
        design(
            """
            design("Two holes");
            const plate = panel("plate", { width: 60, height: 50 });
            plate.hole({ across: 4, at: [-18, -16] });
            plate.hole({ across: 4, at: [18, -16] });
            sheet("A4");
            """);
    List<PunchGuide> guides = PunchGuide.of(d.net());
    assertThat(guides).hasSize(1);
    assertThat(guides.getFirst().along()).isCloseTo(12, within(1e-9));
    assertThat(guides.getFirst().up()).isCloseTo(9, within(1e-9));
    assertThat(guides.getFirst().panels()).containsExactly("plate", "plate");
    assertThat(guides.getFirst().centred()).isFalse();
  }
}
