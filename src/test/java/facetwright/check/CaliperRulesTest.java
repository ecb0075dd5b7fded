package facetwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.fold.Card;
import facetwright.fold.Folding;
import facetwright.form.Solids;
import facetwright.form.Tabs;
import facetwright.form.UnfoldStyle;
import facetwright.form.Unfolding;
import facetwright.net.FoldAngle;
import facetwright.net.Laid;
import facetwright.net.Net;
import facetwright.net.NetMerge;
import facetwright.net.PanelDraft;
import facetwright.net.Sense;
import facetwright.net.SheetLayout;
import facetwright.net.SheetSizes;
import facetwright.net.Stock;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the thickness of the card asks for. Limits are common practice, no source. */
class CaliperRulesTest {
  /** Of 220 g/m²: 0.275 mm. */
  private static final double CALIPER = Stock.usualCaliper(220);

  private static final String LID = "lid-tight";
  private static final String STACK = "closing-stack";

  private static void tray(Card card, String name, double x, double w, double d, double h) {
    PanelDraft base = card.rectangle(name, x, 0, w, d);
    List<PanelDraft> walls = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      walls.add(card.wall(base.edge(i), name + " wall " + (i + 1), h));
    }
    for (int i = 0; i < 4; i++) {
      card.seam(walls.get(i).edge(3), walls.get((i + 1) % 4).edge(1));
    }
  }

  private static List<Finding> boxAndLid(double lidWidth, double lidDepth, double lidHeight) {
    Card card = new Card();
    tray(card, "floor", 0, 60, 40, 30);
    tray(card, "top", 200, lidWidth, lidDepth, lidHeight);
    return Looks.of(LID, Looks.at(card));
  }

  @Test
  void lidMadeAtNoClearance() {
    List<Finding> found = boxAndLid(60, 40, 12);
    assertThat(found).hasSize(1);
    assertThat(found.getFirst().message())
        .isEqualTo(
            "The lid with \"top\" is made exactly as wide as the box with \"floor\". The card is"
                + " 0.28 mm thick, so the lid does not go over it.");
    assertThat(found.getFirst().fix()).startsWith("Make the lid 0.55 mm wider across");
    assertThat(found.getFirst().place()).isEqualTo(new Place.AtPanel(5));
    assertThat(found.getFirst().severity()).isEqualTo(Finding.Severity.WARNING);
    assertThat(boxAndLid(60 + 0.55, 40 + 0.55, 12)).isEmpty();
  }

  @Test
  void lidOneCaliperTooTight() {
    List<Finding> found = boxAndLid(60 + CALIPER, 40 + CALIPER, 12);
    assertThat(found).hasSize(1);
    assertThat(found.getFirst().message()).contains("only 0.14 mm wider on a side than the box");
    assertThat(found.getFirst().fix()).startsWith("Make the lid 0.28 mm wider across");
    assertThat(boxAndLid(60 + CALIPER + 0.28, 40 + CALIPER + 0.28, 12)).isEmpty();
  }

  @Test
  void lidWideEnoughOneWayOnly() {
    assertThat(boxAndLid(61, 40, 12)).hasSize(1);
    assertThat(boxAndLid(60, 41, 12)).hasSize(1);
    assertThat(boxAndLid(61, 41, 12)).isEmpty();
    // Turned a quarter it still is the lid of this box.
    assertThat(boxAndLid(40, 60, 12)).hasSize(1);
  }

  @Test
  void lidNarrowerThanTheBox() {
    assertThat(boxAndLid(59.8, 39.8, 12).getFirst().message())
        .contains("is made 0.1 mm narrower on a side than the box");
  }

  @Test
  void otherTraysAreNoLids() {
    // A copy, one of quite another size, and one of another shape.
    assertThat(boxAndLid(60, 40, 30)).isEmpty();
    assertThat(boxAndLid(80, 60, 12)).isEmpty();
    assertThat(boxAndLid(50, 50, 12)).isEmpty();
  }

  private static List<Finding> hexagons(double slip) {
    List<Net> nets = new ArrayList<>();
    double lidSide = 30 + 2 * slip * Math.tan(Math.PI / 6);
    for (double[] size : new double[][] {{30, 40}, {lidSide, 12}}) {
      nets.add(
          Unfolding.as(UnfoldStyle.PETALS)
              .with(Tabs.deep(8))
              .unfold(Solids.prismBySide(6, size[0], size[1]).withoutFacet("top"))
              .net());
    }
    return Looks.of(LID, Looks.at(NetMerge.of(nets), SheetSizes.named("A3").stock(220)));
  }

  @Test
  void hexagonLidsAreMeasuredSquareToTheirSides() {
    assertThat(hexagons(CALIPER)).isEmpty();
    assertThat(hexagons(0.8 * CALIPER)).hasSize(1);
    // 0.2 · 0.275 mm on both sides: 0.11 mm.
    assertThat(hexagons(0.8 * CALIPER).getFirst().fix()).startsWith("Make the lid 0.11 mm wider");
  }

  /** Flaps folded right over onto a square of 60 mm. */
  private static Card packet(double depth) {
    return packet(depth, false);
  }

  private static Card packet(double depth, boolean glued) {
    Card card = new Card();
    PanelDraft base = card.rectangle("base", 0, 0, 60, 60);
    for (int i = 0; i < 4; i++) {
      PanelDraft flap =
          card.flap(base.edge(i), "flap " + (i + 1), depth, Sense.MOUNTAIN, FoldAngle.degrees(180));
      if (glued) {
        card.draft.lap(flap, base, card.next());
      }
    }
    return card;
  }

  @Test
  void flapsThatAllMeetOverOnePlace() {
    List<Finding> found = Looks.of(STACK, Looks.at(packet(40, true)));
    assertThat(found).hasSize(1);
    assertThat(found.getFirst().severity()).isEqualTo(Finding.Severity.NOTE);
    // Five times 0.275 mm.
    assertThat(found.getFirst().message())
        .startsWith(
            "5 panels lie on each other when folded (\"base\", \"flap 1\", \"flap 2\", \"flap 3\""
                + " and more): the card is 1.38 mm thick there");
    // Two flaps and the base at the corners: usual.
    assertThat(Looks.of(STACK, Looks.at(packet(25, true)))).isEmpty();
    // Nothing is glued over them: that they meet is what the design asks for.
    assertThat(Looks.of(STACK, Looks.at(packet(40)))).isEmpty();
    assertThat(stacks(packet(40))).hasSize(1);
  }

  @Test
  void thickCardStacksSooner() {
    Stock board = SheetSizes.named("A3").stock(600);
    Finding found = Looks.of(STACK, Looks.at(packet(40).net(), board)).getFirst();
    assertThat(found.severity()).isEqualTo(Finding.Severity.WARNING);
    assertThat(found.message()).contains("3.75 mm");
    Stock paper = SheetSizes.named("A3").stock(120);
    assertThat(Looks.of(STACK, Looks.at(packet(40).net(), paper))).isEmpty();
  }

  @Test
  void sliversOnEdgeAreNoLayers() {
    Card card = new Card();
    PanelDraft base = card.rectangle("base", 0, 0, 60, 60);
    for (int i = 0; i < 4; i++) {
      card.wall(base.edge(i), "sliver " + (i + 1), 0.1);
    }
    assertThat(Looks.of(STACK, Looks.at(card))).isEmpty();
  }

  private static List<ClosingStack> stacks(Card card) {
    Laid laid = SheetLayout.lay(card.net(), SheetSizes.named("A3").stock(220));
    return ClosingStack.of(laid, Folding.fold(laid));
  }

  private static Card rimTabs(double depth) {
    Card card = new Card();
    PanelDraft base = card.rectangle("base", 0, 0, 60, 60);
    for (int i = 0; i < 4; i++) {
      PanelDraft wall = card.wall(base.edge(i), "wall " + (i + 1), 30);
      card.wall(wall.edge(2), "rim " + (i + 1), depth);
    }
    return card;
  }

  /** What they are for is no finding; how thick they are is known to who asks. */
  @Test
  void rimTabsLappingOverAnOpening() {
    assertThat(Looks.of(STACK, Looks.at(rimTabs(50)))).isEmpty();
    ClosingStack stack = stacks(rimTabs(50)).getFirst();
    assertThat(stack.panels()).hasSize(4);
    assertThat(stack.thickness()).isCloseTo(1.1, within(1e-9));
    assertThat(stacks(rimTabs(20))).isEmpty();
    // More than any pressing makes up is told all the same.
    Stock board = SheetSizes.named("A3").stock(600);
    Finding thick = Looks.of(STACK, Looks.at(rimTabs(50).net(), board)).getFirst();
    assertThat(thick.severity()).isEqualTo(Finding.Severity.WARNING);
    assertThat(thick.message()).contains("3 mm thick");
  }
}
