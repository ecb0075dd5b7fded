package facetwright.fold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import facetwright.fold.close.ClosingSolver;
import facetwright.fold.close.Solved;
import facetwright.fold.pose.Body;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.Dihedrals;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.ScoreAngles;
import facetwright.fold.solve.SolverSettings;
import facetwright.fold.walk.FoldPath;
import facetwright.geom.Motion3;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec3;
import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.PanelRole;
import facetwright.net.Sense;
import facetwright.net.draft.NetDraft;
import facetwright.net.draft.PanelDraft;
import facetwright.words.Site;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class FoldingTest {
  private static final double TINY = 1e-9;

  private static void assertMeasures(
      FoldedForm form, double width, double depth, double height, double volume) {
    assertThat(form.measures().width()).isCloseTo(width, within(TINY));
    assertThat(form.measures().depth()).isCloseTo(depth, within(TINY));
    assertThat(form.measures().height()).isCloseTo(height, within(TINY));
    assertThat(form.measures().volume()).isCloseTo(volume, within(1e-6));
  }

  private static List<Vec3> points(Net net, FoldedForm form) {
    return Body.corners(
        net, form.poses(), IntStream.range(0, net.panels().size()).boxed().toList());
  }

  @Test
  void trayClosesAndStandsOnItsBase() {
    Net net = Card.tray(40, 60, 25, Card.SQUARE).net();
    FoldedForm form = Folding.fold(net);
    assertThat(form.closure()).isEqualTo(Closure.CLOSES);
    assertThat(form.strain()).isZero();
    assertMeasures(form, 40, 60, 25, 60 * 40 * 25);
    assertThat(form.measures().area()).isCloseTo(60 * 40 + 200 * 25, within(TINY));
    assertThat(form.corners(net, 0)).allSatisfy(p -> assertThat(p.z()).isCloseTo(0, within(TINY)));
    assertThat(Math.abs(form.corners(net, 0).getFirst().x())).isCloseTo(20, within(TINY));
    assertThat(points(net, form).stream().mapToDouble(Vec3::z).min().orElseThrow())
        .isCloseTo(0, within(TINY));
  }

  @Test
  void wallsThatLeanOutLeaveGapsOfTheSizeTheyMust() {
    Net net = Card.tray(40, 60, 25, FoldAngle.degrees(80)).net();
    FoldedForm form = Folding.fold(net);
    assertThat(form.closure()).isEqualTo(Closure.OPEN);
    // Two neighbouring walls lean out by h·cos 80° each, square to each other.
    double gap = 25 * Math.cos(Math.toRadians(80)) * Math.sqrt(2);
    assertThat(form.gaps())
        .hasSize(4)
        .allSatisfy(g -> assertThat(g.mm()).isCloseTo(gap, within(TINY)));
    assertThat(form.gap()).isCloseTo(gap, within(TINY));
  }

  @Test
  void concaveWrapTurnsItsValleyInward() {
    // An L in plan: five corners out, one in; 40·40 − 20·20 in plan, 50 high, both ends open.
    Net net =
        Card.wrap(50, new double[] {40, 20, 20, 20, 20, 40}, new double[] {90, 90, -90, 90, 90})
            .net();
    FoldedForm form = Folding.fold(net);
    assertThat(form.closure()).isEqualTo(Closure.CLOSES);
    assertMeasures(form, 40, 40, 50, 1200 * 50);
    assertThat(Dihedrals.atScores(net, form).get(2)).isCloseTo(270, within(TINY));
    assertThat(Dihedrals.atScores(net, form).get(0)).isCloseTo(90, within(TINY));
  }

  @Test
  void windowsCountAsClosedInTheVolumeAndAreTakenOutOfTheArea() {
    Card card = Card.tray(40, 40, 30, Card.SQUARE);
    card.draft
        .panels()
        .get(1)
        .open(new Opening.Window(Polygon2.rectangle(10, -20, 20, 10), Site.NONE));
    FoldedForm form = Folding.fold(card.net());
    assertThat(form.measures().volume()).isCloseTo(40 * 40 * 30, within(1e-6));
    assertThat(form.measures().area()).isCloseTo(1600 + 4 * 1200 - 200, within(TINY));
  }

  @Test
  void tabsOfUnknownAngleLieUnderThePanelTheyAreGluedTo() {
    Card card = new Card();
    PanelDraft base = card.rectangle("base", 0, 0, 50, 50);
    PanelDraft one = card.flap(base.edge(0), "one", 30, Sense.MOUNTAIN, FoldAngle.degrees(90));
    PanelDraft two = card.flap(base.edge(1), "two", 30, Sense.MOUNTAIN, FoldAngle.degrees(90));
    PanelDraft tab = card.tab(one.edge(3), two.edge(1), 6, FoldAngle.TO_SOLVE);
    PanelDraft loose = card.flap(two.edge(2), "rim tab", 6, Sense.MOUNTAIN, FoldAngle.TO_SOLVE);
    loose.become(PanelRole.TAB);
    card.draft.standOn(base);
    Net net = card.net();
    FoldPath path = Folding.path(net);
    FoldedForm form = path.form();
    assertThat(form.closure()).isEqualTo(Closure.CLOSES);
    int at = card.draft.panels().indexOf(tab);
    Vec3 inside = form.poses().get(at).ez();
    assertThat(inside.distance(form.poses().get(2).ez())).isLessThan(TINY);
    assertThat(path.angles().radians().get(2)).isCloseTo(Math.PI / 2, within(TINY));
    assertThat(path.angles().isKnown(3)).isFalse();
    assertThat(form.measures().height()).isCloseTo(36, within(TINY));
  }

  @Test
  void unknownAnglesThatSeamsDetermineAreFound() {
    Net net = Card.tray(40, 60, 25, FoldAngle.TO_SOLVE).net();
    assertMeasures(Folding.fold(net), 40, 60, 25, 40 * 60 * 25);
    Solved solved = Solving.of(net);
    assertThat(solved.verdict()).isEqualTo(Closure.CLOSES);
    assertThat(solved.angles().radians())
        .allSatisfy(a -> assertThat(a).isCloseTo(Math.PI / 2, within(1e-12)));
    assertThat(Solving.of(net)).isEqualTo(solved);
  }

  @Test
  void anglesThatNothingDeterminesLeaveTheFormUnsolvedAndFlat() {
    Card card = new Card();
    PanelDraft base = card.rectangle("base", 0, 0, 40, 60);
    card.flap(base.edge(0), "wall", 25, Sense.MOUNTAIN, FoldAngle.TO_SOLVE);
    card.draft.standOn(base);
    FoldedForm form = Folding.fold(card.net());
    assertThat(form.closure()).isEqualTo(Closure.NOT_SOLVED);
    assertThat(form.gaps()).isEmpty();
    assertThat(form.gap()).isZero();
    assertThat(form.measures().height()).isCloseTo(0, within(TINY));
  }

  /** Four bars in a ring move freely: the seam that closes them tells no angle. */
  @Test
  void aRingOfFourWallsIsNotDetermined() {
    Card card = new Card();
    PanelDraft a = card.rectangle("a", 0, 0, 30, 30);
    PanelDraft b = card.flap(a.edge(1), "b", 30, Sense.MOUNTAIN, FoldAngle.TO_SOLVE);
    PanelDraft c = card.flap(b.edge(2), "c", 30, Sense.MOUNTAIN, FoldAngle.TO_SOLVE);
    PanelDraft d = card.flap(c.edge(2), "d", 30, Sense.MOUNTAIN, FoldAngle.TO_SOLVE);
    card.seam(d.edge(2), a.edge(3));
    assertThat(Solving.of(card.net()).verdict()).isEqualTo(Closure.NOT_SOLVED);
    // One angle known, it is.
    Solved solved =
        ClosingSolver.solve(
            card.net(),
            ScoreAngles.nominal(card.net()).with(0, Math.toRadians(70)),
            SolverSettings.USUAL);
    assertThat(solved.verdict()).isEqualTo(Closure.CLOSES);
    assertThat(solved.angles().radians().get(1)).isCloseTo(Math.toRadians(110), within(1e-9));
  }

  @Test
  void aFlatWrapOfUnknownAnglesLiesOutsideUp() {
    Card card = new Card();
    PanelDraft a = card.rectangle("a", 0, 0, 30, 30);
    PanelDraft b = card.flap(a.edge(1), "b", 30, Sense.MOUNTAIN, FoldAngle.TO_SOLVE);
    PanelDraft c = card.flap(b.edge(2), "c", 30, Sense.MOUNTAIN, FoldAngle.TO_SOLVE);
    card.draft.stance(
        List.of(
            new NetDraft.CornerDraft(a.edge(0)),
            new NetDraft.CornerDraft(b.edge(1)),
            new NetDraft.CornerDraft(c.edge(1))));
    FoldedForm form = Folding.fold(card.net());
    assertThat(form.closure()).isEqualTo(Closure.NOT_SOLVED);
    assertThat(form.poses().getFirst().ez().distance(Vec3.Z)).isLessThan(TINY);
  }

  @Test
  void aFormStandsTheSameWhereverItsNetLies() {
    Card far = new Card();
    PanelDraft base = far.panel("base", 900, 700, 930, 740, 890, 770, 860, 730);
    for (int i = 0; i < 4; i++) {
      far.wall(base.edge(i), "wall " + i, 20);
    }
    far.draft.standOn(base);
    assertMeasures(Folding.fold(far.net()), 50, 50, 20, 50 * 50 * 20);
  }

  @Test
  void tearsTellWhereAnglesRoundACornerDisagree() {
    // Four squares round a corner: a straight fold across works, three folds do not.
    assertThat(cross(90, 0, 90, 0).closure()).isEqualTo(Closure.CLOSES);
    FoldedForm torn = cross(90, 0, 60, 0);
    assertThat(torn.closure()).isEqualTo(Closure.OPEN);
    assertThat(torn.tears()).hasSize(1);
    // A square's far side, 10 mm from its score, stands 30° off.
    assertThat(torn.gap()).isCloseTo(2 * 10 * Math.sin(Math.toRadians(15)), within(TINY));
  }

  private static FoldedForm cross(double east, double north, double west, double south) {
    Card card = new Card();
    PanelDraft ne = card.rectangle("ne", 0, 0, 10, 10);
    PanelDraft nw = card.rectangle("nw", -10, 0, 10, 10);
    PanelDraft sw = card.rectangle("sw", -10, -10, 10, 10);
    PanelDraft se = card.rectangle("se", 0, -10, 10, 10);
    Sense m = Sense.MOUNTAIN;
    card.draft.score(se.edge(2), ne.edge(0), m, FoldAngle.degrees(east), Site.NONE);
    card.draft.score(ne.edge(3), nw.edge(1), m, FoldAngle.degrees(north), Site.NONE);
    card.draft.score(nw.edge(0), sw.edge(2), m, FoldAngle.degrees(west), Site.NONE);
    card.draft.score(sw.edge(1), se.edge(3), m, FoldAngle.degrees(south), Site.NONE);
    return Folding.fold(card.net());
  }

  @Test
  void anUnknownAngleThatOnlyClosesALoopDoesNoHarm() {
    Card card = new Card();
    PanelDraft ne = card.rectangle("ne", 0, 0, 10, 10);
    PanelDraft nw = card.rectangle("nw", -10, 0, 10, 10);
    PanelDraft sw = card.rectangle("sw", -10, -10, 10, 10);
    PanelDraft se = card.rectangle("se", 0, -10, 10, 10);
    Sense m = Sense.MOUNTAIN;
    card.draft.score(se.edge(2), ne.edge(0), m, FoldAngle.TO_SOLVE, Site.NONE);
    card.draft.score(ne.edge(3), nw.edge(1), m, FoldAngle.degrees(0), Site.NONE);
    card.draft.score(nw.edge(0), sw.edge(2), m, FoldAngle.degrees(40), Site.NONE);
    card.draft.score(sw.edge(1), se.edge(3), m, FoldAngle.degrees(0), Site.NONE);
    Net net = card.net();
    FoldedForm form = Folding.fold(net);
    assertThat(form.closure()).isEqualTo(Closure.CLOSES);
    assertThat(Dihedrals.atScores(net, form).getFirst()).isCloseTo(140, within(TINY));
  }

  @Test
  void wayFromFlatToMadeStartsFlatAndEndsMade() {
    Net net = Card.tray(40, 60, 25, Card.SQUARE).net();
    FoldPath path = Folding.path(net);
    assertThat(path.at(1)).isEqualTo(path.form().poses());
    List<Motion3> flat = path.at(0);
    assertThat(flat)
        .allSatisfy(p -> assertThat(p.ez().distance(flat.getFirst().ez())).isLessThan(TINY));
    assertThat(path.at(0.5).get(1).ez().dot(flat.getFirst().ez()))
        .isCloseTo(Math.cos(Math.PI / 4), within(TINY));
    for (double wrong : new double[] {-0.1, 1.1, Double.NaN}) {
      assertThatThrownBy(() -> path.at(wrong))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("0 to 1");
    }
  }

  @Test
  void foldingTwiceGivesTheSameBits() {
    assertThat(Folding.fold(Solid.named("j-J91-bilunabirotunda").net()))
        .isEqualTo(Folding.fold(Solid.named("j-J91-bilunabirotunda").net()));
  }
}
