package facetwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.fold.Card;
import facetwright.geom.Vec2;
import facetwright.net.FoldAngle;
import facetwright.net.PanelRole;
import facetwright.net.Sense;
import facetwright.net.draft.PanelDraft;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class PanelThroughPanelTest {
  private static final String RULE = "panel-through-panel";

  /** A lid 80 long stands 20° over a floor 60 wide, with a wall 30 high at its far end. */
  private static Card lidThroughWall(double lid, PanelRole role) {
    return lidThroughWall(lid, 160, 30, role);
  }

  private static Card lidThroughWall(double lid, double fold, double wall, PanelRole role) {
    Card card = new Card();
    PanelDraft floor = card.rectangle("floor", 0, 0, 60, 40);
    card.wall(floor.edge(3), "wall", wall);
    card.flap(floor.edge(1), "lid", lid, Sense.MOUNTAIN, FoldAngle.degrees(fold)).become(role);
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
    assertThat(finding.fix()).startsWith("Make \"lid\" at least 16.15 mm shallower.");
  }

  @Test
  void aFormThatDoesNotCloseIsMendedThereFirst() {
    // Walls 10° too far in: 25·sin 10° = 4.3 mm off upright, their seams miss by more.
    List<Finding> found = Looks.at(Card.tray(60, 40, 25, FoldAngle.degrees(100)));
    assertThat(found).hasSize(1);
    assertThat(found.getFirst().rule()).isEqualTo("gap");
    assertThat(found.getFirst().message()).contains("3 others miss");
  }

  /** The advised length taken off, the lid ends before the wall; half of it is not enough. */
  @Property(tries = 40, seed = "20261130")
  void followedTheMendMends(
      @ForAll @DoubleRange(min = 10, max = 50) double lean,
      @ForAll @DoubleRange(min = 2, max = 50) double past,
      @ForAll @DoubleRange(min = 2, max = 40) double over,
      @ForAll boolean tab) {
    double lid = 60 / Math.cos(Math.toRadians(lean)) + past;
    double wall = 60 * Math.tan(Math.toRadians(lean)) + over;
    double fold = 180 - lean;
    PanelRole role = tab ? PanelRole.TAB : PanelRole.FACET;
    List<Finding> found = Looks.of(RULE, Looks.at(lidThroughWall(lid, fold, wall, role)));
    assertThat(found).hasSize(1);
    Matcher advised =
        Pattern.compile("Make \"(\\w+)\" at least ([\\d.]+) mm sh").matcher(found.getFirst().fix());
    assertThat(advised.find()).as(found.getFirst().fix()).isTrue();
    double off = Double.parseDouble(advised.group(2));
    boolean ofLid = advised.group(1).equals("lid");
    assertThat(ofLid || !tab).isTrue();
    for (double part : off < 1 ? new double[] {1} : new double[] {1, 0.5}) {
      double newLid = ofLid ? lid - part * off : lid;
      double newWall = ofLid ? wall : wall - part * off;
      assertThat(Looks.of(RULE, Looks.at(lidThroughWall(newLid, fold, newWall, role))).isEmpty())
          .isEqualTo(part == 1);
    }
  }

  @Test
  void silentBelowWhatAHandCanCutAndWhereNothingIsSolved() {
    assertThat(Looks.at(Card.tray(60, 40, 25, FoldAngle.degrees(90.2)))).isEmpty();
    assertThat(Looks.of(RULE, Looks.at(Card.tray(60, 40, 25, FoldAngle.TO_SOLVE)))).isEmpty();
  }

  /** A tab over a floor whose front runs inward, toward the tab, by so much over its length. */
  private static Card tabInACorner(double inward, double depth, double bevel) {
    Card card = new Card();
    PanelDraft floor = card.panel("floor", 0, 0, 60, 60 * inward, 60, 60, 0, 60);
    card.wall(floor.edge(0), "front", 50);
    PanelDraft left = card.wall(floor.edge(3), "left", 40);
    double in = depth * Math.tan(Math.toRadians(bevel));
    Vec2 foot = left.edge(2).segment().from();
    Vec2 end = left.edge(2).segment().to();
    Vec2 along = end.minus(foot).unit();
    Vec2 out = along.left().times(-depth);
    PanelDraft tab =
        card.draft.panel(
            "tab",
            PanelRole.TAB,
            List.of(
                end,
                foot,
                foot.plus(out).plus(along.times(in)),
                end.plus(out).minus(along.times(in))),
            card.next());
    card.draft.score(left.edge(2), tab.edge(0), Sense.MOUNTAIN, Card.SQUARE, card.next());
    card.draft.standOn(floor);
    return card;
  }

  /** A tab whose end is what goes through the wall beside it is told its bevel, too. */
  @Property(tries = 20, seed = "20261201")
  void theBevelThatMendsIsTold(
      @ForAll @DoubleRange(min = 0.1, max = 0.6) double inward,
      @ForAll @DoubleRange(min = 12, max = 30) double depth) {
    List<Finding> found = Looks.of(RULE, Looks.at(tabInACorner(inward, depth, 0)));
    assertThat(found).hasSize(1);
    Matcher told =
        Pattern.compile("[bB]evel (?:its ends|the ends of \"tab\") by (\\d+)°")
            .matcher(found.getFirst().fix());
    assertThat(told.find()).as(found.getFirst().fix()).isTrue();
    int bevel = Integer.parseInt(told.group(1));
    assertThat(bevel).isEqualTo((int) Math.ceil(Math.toDegrees(Math.atan(inward))));
    assertThat(Looks.of(RULE, Looks.at(tabInACorner(inward, depth, bevel)))).isEmpty();
    assertThat(Looks.of(RULE, Looks.at(tabInACorner(inward, depth, bevel - 3)))).isNotEmpty();
  }
}
