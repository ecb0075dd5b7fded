package facetwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.check.finding.Finding;
import facetwright.check.fit.ClosingStack;
import facetwright.fold.Card;
import facetwright.fold.Folding;
import facetwright.net.FoldAngle;
import facetwright.net.Sense;
import facetwright.net.draft.PanelDraft;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.Room;
import facetwright.net.sheet.SheetLayout;
import facetwright.net.sheet.SheetSizes;
import facetwright.net.sheet.Stock;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What lies on one place at a closing, in thicknesses of card. */
class ClosingStacksTest {
  private static final String STACK = "closing-stack";

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
    Laid laid =
        SheetLayout.lay(
            card.net(), SheetSizes.named("A3").stock(220), new Room(0, SheetLayout.USUAL_GAP));
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
