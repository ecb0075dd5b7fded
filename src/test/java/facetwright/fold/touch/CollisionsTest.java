package facetwright.fold.touch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.fold.Card;
import facetwright.fold.Folding;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion3;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec3;
import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.Sense;
import facetwright.net.draft.PanelDraft;
import facetwright.words.Site;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Expected depths, lengths and places follow from plane trigonometry, beside each check. */
class CollisionsTest {
  private static final double TINY = 1e-9;
  private static final double SLANT = Math.toRadians(20);

  private static List<Collision> in(Card card) {
    Net net = card.net();
    return Collisions.of(net, Folding.fold(net).poses());
  }

  /**
   * A floor 60 wide and 40 deep, a wall 30 high on its left, and on its right a lid 80 long folded
   * in until it stands 20° over the floor: it meets the wall's plane 60·tan 20° = 21.8 up.
   */
  private static Card lidThroughWall(double wallHeight) {
    Card card = new Card();
    PanelDraft floor = card.rectangle("floor", 0, 0, 60, 40);
    card.wall(floor.edge(3), "wall", wallHeight);
    card.flap(floor.edge(1), "lid", 80, Sense.MOUNTAIN, FoldAngle.degrees(160));
    card.draft.standOn(floor);
    return card;
  }

  @Test
  void lidFoldedThroughAWall() {
    List<Collision> found = in(lidThroughWall(30));
    assertThat(found).hasSize(1);
    Collision c = found.getFirst();
    assertThat(c.a()).isEqualTo(1);
    assertThat(c.b()).isEqualTo(2);
    double up = 60 * Math.tan(SLANT);
    assertThat(c.depth()).isCloseTo((30 - up) * Math.cos(SLANT), within(1e-6));
    assertThat(c.length()).isCloseTo(40, within(1e-6));
    assertThat(c.place().z()).isCloseTo(up, within(1e-6));
    assertThat(c.place().y()).isCloseTo(0, within(1e-6));
  }

  @Test
  void lidThatClearsTheWallOrOnlyRestsOnIt() {
    double up = 60 * Math.tan(SLANT);
    assertThat(in(lidThroughWall(up - 1))).isEmpty();
    assertThat(in(lidThroughWall(up))).isEmpty();
    assertThat(in(lidThroughWall(up + 0.005))).isEmpty();
    assertThat(in(lidThroughWall(up + 0.02))).hasSize(1);
  }

  @Test
  void theToleranceIsTheCallers() {
    Net net = lidThroughWall(30).net();
    List<Motion3> poses = Folding.fold(net).poses();
    assertThat(Passed.in(net, poses, new LengthTolerance(7.6))).hasSize(1);
    assertThat(Passed.in(net, poses, new LengthTolerance(7.7))).isEmpty();
  }

  private static Card tongue(Polygon2 window) {
    Card card = new Card();
    PanelDraft wall = card.rectangle("wall", 0, 0, 40, 30);
    card.rectangle("tongue", 100, 0, 20, 50);
    wall.open(new Opening.Window(window, Site.NONE));
    return card;
  }

  /** The tongue stands square through the wall, 10 to 30 across and 15 up. */
  private static List<Collision> through(Card card) {
    Motion3 upright =
        Motion3.carrying(new Vec3(100, 25, 0), Vec3.X, Vec3.Z, new Vec3(10, 15, 0), Vec3.X, Vec3.Y);
    return Passed.in(card.net(), List.of(Motion3.NONE, upright), Collisions.TOUCHING);
  }

  @Test
  void tongueThroughAWindow() {
    assertThat(through(tongue(Polygon2.rectangle(9, 10, 22, 10)))).isEmpty();
    // Card on either side of a narrower window: stretches of 3 and 4 mm.
    List<Collision> narrow = through(tongue(Polygon2.rectangle(13, 10, 13, 10)));
    assertThat(narrow).hasSize(1);
    assertThat(narrow.getFirst().length()).isCloseTo(7, within(TINY));
    assertThat(narrow.getFirst().depth()).isCloseTo(15, within(TINY));
    assertThat(narrow.getFirst().place().distance(new Vec3(28, 15, 0))).isLessThan(TINY);
  }

  /** No corner, side or triangle of either has a special place for the line they share. */
  @Test
  void squaresThatCrossAlongADiagonal() {
    Card card = new Card();
    card.rectangle("one", 0, 0, 40, 40);
    card.rectangle("two", 100, 0, 40, 40);
    Vec3 diagonal = new Vec3(1, 1, 0);
    Motion3 across =
        Motion3.carrying(
            new Vec3(100, 0, 0), diagonal, Vec3.Z, Vec3.ZERO, diagonal, new Vec3(1, -1, 0));
    List<Collision> found =
        Passed.in(card.net(), List.of(Motion3.NONE, across), Collisions.TOUCHING);
    assertThat(found).hasSize(1);
    assertThat(found.getFirst().length()).isCloseTo(40 * Math.sqrt(2), within(0.1));
    assertThat(found.getFirst().depth()).isCloseTo(20 * Math.sqrt(2), within(0.1));
  }

  @Test
  void closedBoxesOnlyTouch() {
    assertThat(in(Card.tray(60, 40, 25, Card.SQUARE))).isEmpty();
    assertThat(in(Card.wrap(50, new double[] {30, 30, 30, 30}, new double[] {90, 90, 90})))
        .isEmpty();
  }

  @Test
  void wallsFoldedTooFarPassThroughTheirNeighbours() {
    List<Collision> found = in(Card.tray(60, 40, 25, FoldAngle.degrees(100)));
    assertThat(found)
        .extracting(c -> c.a() + "-" + c.b())
        .containsExactly("1-2", "1-4", "2-3", "3-4");
  }

  @Test
  void panelsFoldedFlatOnEachOtherOnlyTouch() {
    Card card = new Card();
    PanelDraft front = card.rectangle("front", 0, 0, 50, 40);
    PanelDraft back = card.flap(front.edge(1), "back", 50, Sense.MOUNTAIN, FoldAngle.degrees(180));
    card.flap(back.edge(2), "inner", 20, Sense.MOUNTAIN, FoldAngle.degrees(180));
    assertThat(in(card)).isEmpty();
  }

  @Test
  void gluedTabLiesUnderItsHost() {
    Card card = new Card();
    PanelDraft floor = card.rectangle("floor", 0, 0, 60, 20);
    PanelDraft one = card.wall(floor.edge(0), "one", 30);
    PanelDraft two = card.wall(floor.edge(1), "two", 30);
    card.tab(one.edge(3), two.edge(1), 8, FoldAngle.TO_SOLVE);
    assertThat(in(card)).isEmpty();
  }

  @Test
  void sameAnswerTwiceAndInOrder() {
    Net net = Card.tray(60, 40, 25, FoldAngle.degrees(110)).net();
    FoldedForm form = Folding.fold(net);
    assertThat(form.closure()).isEqualTo(Closure.OPEN);
    assertThat(Collisions.of(net, form.poses()))
        .isEqualTo(Collisions.of(net, form.poses()))
        .isNotEmpty();
  }
}
