package facetwright.fold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.geom.Vec3;
import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.PanelDraft;
import facetwright.net.Sense;
import facetwright.net.Site;
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
    assertThat(form.measures().width()).isCloseTo(110, within(TINY));
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
    assertThat(Folding.fold(aside.net()).gap()).isCloseTo(30, within(TINY));
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
