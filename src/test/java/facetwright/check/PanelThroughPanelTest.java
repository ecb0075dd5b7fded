package facetwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.fold.Card;
import facetwright.net.FoldAngle;
import facetwright.net.PanelDraft;
import facetwright.net.PanelRole;
import facetwright.net.Sense;
import java.util.List;
import org.junit.jupiter.api.Test;

class PanelThroughPanelTest {
  private static final String RULE = "panel-through-panel";

  /** A lid 80 long stands 20° over a floor 60 wide, with a wall 30 high at its far end. */
  private static Card lidThroughWall(double lid, PanelRole role) {
    Card card = new Card();
    PanelDraft floor = card.rectangle("floor", 0, 0, 60, 40);
    card.wall(floor.edge(3), "wall", 30);
    card.flap(floor.edge(1), "lid", lid, Sense.MOUNTAIN, FoldAngle.degrees(160)).become(role);
    card.draft.standOn(floor);
    return card;
  }

  @Test
  void namesBothPanelsTheirLinesDepthAndPlace() {
    List<Finding> found = Looks.at(lidThroughWall(80, PanelRole.FACET));
    assertThat(found).hasSize(1);
    Finding finding = found.getFirst();
    assertThat(finding.rule()).isEqualTo(RULE);
    assertThat(finding.severity()).isEqualTo(Finding.Severity.ERROR);
    // 60·tan 20° = 21.84 up; (30 − 21.84)·cos 20° = 7.67 deep.
    assertThat(finding.message())
        .isEqualTo(
            "When folded, \"wall\" (line 2) and \"lid\" (line 3) pass through each other: 7.67 mm"
                + " deep, 40 mm long, 21.84 mm above the table.");
    assertThat(finding.place()).isEqualTo(new Place.AtPanel(2));
    assertThat(finding.site().line()).isEqualTo(3);
    assertThat(finding.fix()).contains("fold angle");
  }

  @Test
  void shortEnoughALidIsClear() {
    // It ends over the floor: 63·cos 20° = 59.2 mm.
    assertThat(Looks.at(lidThroughWall(63, PanelRole.FACET))).isEmpty();
  }

  @Test
  void tabsHaveTheirOwnMending() {
    Finding finding = Looks.of(RULE, Looks.at(lidThroughWall(80, PanelRole.TAB))).getFirst();
    assertThat(finding.fix()).startsWith("Make \"lid\" shallower");
  }

  @Test
  void aFormThatDoesNotCloseIsMendedThereFirst() {
    // Walls 10° too far in: 25·sin 10° = 4.3 mm off upright, their seams miss by more.
    List<Finding> found = Looks.at(Card.tray(60, 40, 25, FoldAngle.degrees(100)));
    assertThat(Looks.of("gap", found)).hasSize(4);
    assertThat(Looks.of(RULE, found))
        .hasSize(4)
        .allMatch(f -> f.severity() == Finding.Severity.WARNING)
        .allMatch(f -> f.fix().startsWith("First mend what keeps the form from closing"));
  }

  @Test
  void silentBelowWhatAHandCanCutAndWhereNothingIsSolved() {
    assertThat(Looks.at(Card.tray(60, 40, 25, FoldAngle.degrees(90.2)))).isEmpty();
    assertThat(Looks.of(RULE, Looks.at(Card.tray(60, 40, 25, FoldAngle.TO_SOLVE)))).isEmpty();
  }
}
