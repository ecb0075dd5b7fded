package facetwright.fold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.geom.Motion3;
import facetwright.geom.Vec3;
import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.NetMerge;
import facetwright.net.Sense;
import facetwright.net.draft.PanelDraft;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.Room;
import facetwright.net.sheet.Stock;
import facetwright.net.wrap.Pinch;
import facetwright.words.Site;
import java.util.List;
import org.junit.jupiter.api.Test;

class PiecesTest {
  private static final double TINY = 1e-9;

  @Test
  void twoAnglePiecesMakeATube() {
    Card card = new Card();
    PanelDraft a = card.rectangle("a", 0, 0, 30, 80);
    PanelDraft b = card.flap(a.edge(1), "b", 30, Sense.MOUNTAIN, Card.SQUARE);
    PanelDraft c = card.rectangle("c", 500, 300, 30, 80);
    PanelDraft d = card.flap(c.edge(1), "d", 30, Sense.MOUNTAIN, Card.SQUARE);
    card.tab(b.edge(2), c.edge(3), 8, FoldAngle.TO_SOLVE);
    card.tab(d.edge(2), a.edge(3), 8, FoldAngle.TO_SOLVE);
    Net net = card.net();
    FoldedForm form = Folding.fold(net);
    assertThat(form.closure()).isEqualTo(Closure.CLOSES);
    assertThat(form.measures().volume()).isCloseTo(30 * 30 * 80, within(1e-6));
    assertThat(form.poses().get(4).ez().distance(form.poses().get(2).ez())).isLessThan(TINY);
  }

  @Test
  void piecesThatDoNotAgreeShareTheGap() {
    Card card = new Card();
    PanelDraft a = card.rectangle("a", 0, 0, 30, 80);
    PanelDraft b = card.flap(a.edge(1), "b", 30, Sense.MOUNTAIN, Card.SQUARE);
    PanelDraft c = card.rectangle("c", 500, 300, 30, 80);
    PanelDraft d = card.flap(c.edge(1), "d", 32, Sense.MOUNTAIN, Card.SQUARE);
    card.seam(b.edge(2), c.edge(3));
    card.seam(d.edge(2), a.edge(3));
    FoldedForm form = Folding.fold(card.net());
    assertThat(form.closure()).isEqualTo(Closure.OPEN);
    // The corners to meet are 30·√2 and √(30² + 32²) apart: half the difference on each seam.
    double half = (Math.hypot(30, 32) - Math.hypot(30, 30)) / 2;
    assertThat(form.gaps()).allSatisfy(g -> assertThat(g.mm()).isCloseTo(half, within(TINY)));
  }

  @Test
  void aPieceOnOneSeamFollowsItsTab() {
    Card card = new Card();
    PanelDraft base = card.rectangle("base", 0, 0, 50, 40);
    PanelDraft back = card.rectangle("back", 200, 200, 50, 70);
    card.tab(base.edge(2), back.edge(0), 6, FoldAngle.degrees(60));
    card.draft.standOn(base);
    FoldedForm form = Folding.fold(card.net());
    assertThat(form.closure()).isEqualTo(Closure.CLOSES);
    assertThat(form.measures().height()).isCloseTo(70 * Math.sin(Math.PI / 3), within(TINY));
  }

  @Test
  void aPieceCarryingTheTabFollowsItToo() {
    Card card = new Card();
    PanelDraft base = card.rectangle("base", 0, 0, 50, 40);
    PanelDraft back = card.rectangle("back", 200, 200, 50, 70);
    card.tab(back.edge(0), base.edge(2), 6, FoldAngle.degrees(60));
    card.draft.standOn(base);
    FoldedForm form = Folding.fold(card.net());
    assertThat(form.closure()).isEqualTo(Closure.CLOSES);
    assertThat(form.measures().height()).isCloseTo(70 * Math.sin(Math.PI / 3), within(TINY));
  }

  @Test
  void aPieceOnOneBareSeamGoesOnFlat() {
    Card card = new Card();
    PanelDraft base = card.rectangle("base", 0, 0, 50, 40);
    PanelDraft more = card.rectangle("more", 200, 200, 50, 70);
    card.seam(more.edge(0), base.edge(2));
    FoldedForm form = Folding.fold(card.net());
    assertThat(form.measures().height()).isCloseTo(0, within(TINY));
    assertThat(form.measures().width()).isCloseTo(50, within(TINY));
    assertThat(form.measures().depth()).isCloseTo(110, within(TINY));
  }

  @Test
  void aLapLaysMiddleOnMiddle() {
    Card card = Card.tray(60, 60, 20, Card.SQUARE);
    PanelDraft badge = card.rectangle("badge", 300, 0, 20, 10);
    card.draft.lap(badge, card.draft.panels().get(1), Site.NONE);
    Net net = card.net();
    FoldedForm form = Folding.fold(net);
    assertThat(form.closure()).isEqualTo(Closure.CLOSES);
    Vec3 middle = form.poses().get(5).apply(net.panels().get(5).outline().centroid());
    assertThat(middle.z()).isCloseTo(10, within(TINY));
    assertThat(form.measures().volume()).isCloseTo(60 * 60 * 20, within(1e-6));
    assertThat(form.measures().area()).isCloseTo(3600 + 4 * 1200, within(TINY));
  }

  @Test
  void aLapLiesACaliperInsideItsPanel() {
    for (boolean badgeUnder : new boolean[] {true, false}) {
      Card card = Card.tray(60, 60, 20, Card.SQUARE);
      PanelDraft badge = card.rectangle("badge", 300, 0, 20, 10);
      PanelDraft wall = card.draft.panels().get(1);
      if (badgeUnder) {
        card.draft.lap(badge, wall, Site.NONE);
      } else {
        card.draft.lap(wall, badge, Site.NONE);
      }
      Net net = card.net();
      Stock board = new Stock("board", 500, 400, 600, 0.75, Stock.Grain.UNKNOWN);
      FoldedForm form = Folding.fold(new Laid(net, board, 1, true, new Room(0, 0)));
      assertThat(form.closure()).isEqualTo(Closure.CLOSES);
      assertThat(form.gap()).isLessThan(TINY);
      Motion3 outside = form.poses().get(1).inverse();
      assertThat(form.corners(net, 5))
          .allSatisfy(
              c ->
                  assertThat(outside.apply(c).z())
                      .isCloseTo(badgeUnder ? -0.75 : 0.75, within(TINY)));
    }
  }

  /** A score folded right over brings its panels together; it gives by the caliper. */
  @Test
  void aSleeveOfThickCardCloses() {
    Card card = new Card();
    PanelDraft one = card.rectangle("one", 0, 0, 60, 40);
    PanelDraft two = card.flap(one.edge(1), "two", 60, Sense.MOUNTAIN, FoldAngle.degrees(180));
    PanelDraft flap = card.flap(two.edge(1), "flap", 12, Sense.MOUNTAIN, FoldAngle.degrees(180));
    card.draft.lap(flap, one, Site.NONE);
    Stock board = new Stock("board", 500, 400, 600, 0.75, Stock.Grain.UNKNOWN);
    assertThat(Folding.fold(new Laid(card.net(), board, 1, true, new Room(0, 0))).closure())
        .isEqualTo(Closure.CLOSES);
  }

  @Test
  void aLapOutsideOrTooFarInsideMissesByTheRest() {
    // Folded 180° less or more than it should be by a slant of 2 mm on 50: inside, less a caliper.
    double slant = Math.toDegrees(Math.asin(2.0 / 50));
    Card card = new Card();
    PanelDraft base = card.rectangle("base", 0, 0, 50, 50);
    PanelDraft over =
        card.flap(base.edge(1), "over", 50, Sense.MOUNTAIN, FoldAngle.degrees(180 - slant));
    card.draft.lap(over, base, Site.NONE);
    Stock board = new Stock("board", 500, 400, 600, 0.75, Stock.Grain.UNKNOWN);
    assertThat(Folding.fold(new Laid(card.net(), board, 1, true, new Room(0, 0))).gap())
        .isCloseTo(2 - 0.75, within(TINY));
  }

  /** Two open strips of two panels each, seamed to each other: a square tube, rigid by its end. */
  @Test
  void twoPiecesOfOpenAnglesDetermineEachOther() {
    Card card = new Card();
    PanelDraft floor = card.rectangle("floor", 0, 0, 40, 60);
    PanelDraft left = card.flap(floor.edge(3), "left", 25, Sense.MOUNTAIN, FoldAngle.TO_SOLVE);
    PanelDraft right = card.flap(floor.edge(1), "right", 25, Sense.MOUNTAIN, FoldAngle.TO_SOLVE);
    PanelDraft roof = card.rectangle("roof", 300, 0, 40, 60);
    PanelDraft back = card.flap(roof.edge(2), "back", 25, Sense.MOUNTAIN, FoldAngle.TO_SOLVE);
    card.seam(left.edge(2), roof.edge(1));
    card.seam(right.edge(2), roof.edge(3));
    card.seam(back.edge(2), floor.edge(2));
    card.seam(back.edge(1), left.edge(1));
    card.seam(back.edge(3), right.edge(3));
    card.draft.standOn(floor);
    Net net = card.net();
    assertThat(net.pieces()).isEqualTo(2);
    FoldedForm form = Folding.fold(net);
    assertThat(form.closure()).isEqualTo(Closure.CLOSES);
    assertThat(form.gap()).isLessThan(1e-6);
    assertThat(form.measures().height()).isCloseTo(25, within(1e-6));
    assertThat(form.measures().volume()).isCloseTo(40 * 60 * 25, within(1e-3));
  }

  /** A pinched wrap and its lid: the wrap closes as it does alone, the lid stands beside it. */
  @Test
  void aGussetedWrapWithALidBeside() {
    Net wrap = GussetedWrapTest.wrap(8, 24, 96, Pinch.IN);
    Card lid = Card.tray(70, 70, 15, Card.SQUARE);
    Net both = NetMerge.of(List.of(wrap, lid.net()));
    FoldedForm form = Folding.fold(both);
    FoldedForm alone = Folding.fold(wrap);
    assertThat(form.closure()).isEqualTo(Closure.CLOSES);
    assertThat(form.gap()).isLessThan(1e-6);
    assertThat(form.measures().height()).isCloseTo(alone.measures().height(), within(1e-9));
    assertThat(form.measures().volume()).isCloseTo(alone.measures().volume(), within(1e-6));
    int base = wrap.panels().size();
    assertThat(form.corners(both, base))
        .allSatisfy(c -> assertThat(c.z()).isCloseTo(0, within(TINY)));
    double right =
        wrap.panels().stream()
            .mapToInt(wrap.panels()::indexOf)
            .boxed()
            .flatMap(p -> form.corners(both, p).stream())
            .mapToDouble(Vec3::x)
            .max()
            .orElseThrow();
    assertThat(form.corners(both, base)).allSatisfy(c -> assertThat(c.x()).isGreaterThan(right));
  }

  /** A lid whose own angles are open too: both bodies are solved, each for itself. */
  @Test
  void twoBodiesOfOpenAngles() {
    Net wrap = GussetedWrapTest.wrap(6, 24, 96, Pinch.IN);
    Net lid = Card.tray(70, 50, 15, FoldAngle.TO_SOLVE).net();
    Net both = NetMerge.of(List.of(wrap, lid));
    FoldedForm form = Folding.fold(both);
    assertThat(form.closure()).isEqualTo(Closure.CLOSES);
    assertThat(form.measures().height())
        .isCloseTo(Folding.fold(wrap).measures().height(), within(1e-6));
    double tall =
        form.corners(both, wrap.panels().size() + 1).stream()
            .mapToDouble(Vec3::z)
            .max()
            .orElseThrow();
    assertThat(tall).isCloseTo(15, within(1e-6));
  }

  @Test
  void aLapThatStandsOffOrAsideTellsHowFar() {
    Card card = new Card();
    PanelDraft base = card.rectangle("base", 0, 0, 50, 50);
    PanelDraft over = card.flap(base.edge(1), "over", 50, Sense.MOUNTAIN, FoldAngle.degrees(170));
    card.draft.lap(over, base, Site.NONE);
    assertThat(Folding.fold(card.net()).gap())
        .isCloseTo(50 * Math.sin(Math.toRadians(10)), within(TINY));

    Card aside = new Card();
    PanelDraft first = aside.rectangle("first", 0, 0, 50, 50);
    PanelDraft middle =
        aside.flap(first.edge(1), "middle", 80, Sense.MOUNTAIN, FoldAngle.degrees(180));
    PanelDraft last = aside.flap(middle.edge(2), "last", 10, Sense.MOUNTAIN, FoldAngle.degrees(0));
    aside.draft.lap(last, first, Site.NONE);
    // Its far side is 30 mm off, its middle by half of its 10 mm more.
    assertThat(Folding.fold(aside.net()).gap()).isCloseTo(35, within(TINY));
  }

  @Test
  void aLidStandsBesideAndLeavesTheMeasuresAlone() {
    Card card = Card.tray(60, 40, 20, Card.SQUARE);
    PanelDraft lid = card.rectangle("lid", 300, 0, 62, 42);
    for (int i = 0; i < 4; i++) {
      card.wall(lid.edge(i), "lip " + i, 10);
    }
    Net net = card.net();
    FoldedForm form = Folding.fold(net);
    assertThat(form.measures().height()).isCloseTo(20, within(TINY));
    assertThat(form.measures().volume()).isCloseTo(60 * 40 * 20, within(1e-6));
    assertThat(form.measures().area()).isCloseTo(2400 + 200 * 20, within(TINY));
    assertThat(form.corners(net, 5))
        .allSatisfy(
            p -> {
              assertThat(p.z()).isCloseTo(0, within(TINY));
              assertThat(p.x()).isGreaterThan(30 + 19);
            });
  }
}
