package facetwright.fold.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.fold.Card;
import facetwright.fold.Folding;
import facetwright.fold.GussetedWrapTest;
import facetwright.fold.Miura;
import facetwright.fold.Solid;
import facetwright.fold.close.Unknowns;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.Dihedrals;
import facetwright.geom.Motion3;
import facetwright.geom.Vec3;
import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.NetMerge;
import facetwright.net.Score;
import facetwright.net.Sense;
import facetwright.net.draft.PanelDraft;
import facetwright.net.wrap.Pinch;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The way from flat to made: its ends, its smoothness, its panels. */
class FoldPathTest {
  private static final double THIRD = Math.toRadians(60);

  private static Net miura(double degrees, int columns, int rows) {
    return new Miura(20, 30, THIRD, Math.toRadians(degrees), columns, rows).net(_ -> true);
  }

  /** Four squares round a corner whose angles do not agree. */
  private static Net torn() {
    Card card = new Card();
    PanelDraft ne = card.rectangle("ne", 0, 0, 10, 10);
    PanelDraft nw = card.rectangle("nw", -10, 0, 10, 10);
    PanelDraft sw = card.rectangle("sw", -10, -10, 10, 10);
    PanelDraft se = card.rectangle("se", 0, -10, 10, 10);
    Sense m = Sense.MOUNTAIN;
    card.draft.score(se.edge(2), ne.edge(0), m, FoldAngle.degrees(90), Site.NONE);
    card.draft.score(ne.edge(3), nw.edge(1), m, FoldAngle.degrees(30), Site.NONE);
    card.draft.score(nw.edge(0), sw.edge(2), m, FoldAngle.degrees(60), Site.NONE);
    card.draft.score(sw.edge(1), se.edge(3), m, FoldAngle.degrees(0), Site.NONE);
    return card.net();
  }

  /** A tetrahedron one of whose sides is a thousandth too long on the one panel. */
  private static Net strained() {
    Card card = new Card();
    double high = 50 * Math.sqrt(0.75);
    PanelDraft base = card.panel("base", 0, 0, 50, 0, 25, high);
    List<PanelDraft> sides = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      var side = base.edge(i).segment();
      var out = side.direction().left().times(-high * (i == 0 ? 1.001 : 1));
      var tip = side.middle().plus(out);
      PanelDraft panel =
          card.panel(
              "side " + i,
              side.to().x(),
              side.to().y(),
              side.from().x(),
              side.from().y(),
              tip.x(),
              tip.y());
      card.draft.score(base.edge(i), panel.edge(0), Sense.MOUNTAIN, FoldAngle.TO_SOLVE, Site.NONE);
      sides.add(panel);
    }
    for (int i = 0; i < 3; i++) {
      card.seam(sides.get(i).edge(2), sides.get((i + 1) % 3).edge(1));
    }
    card.draft.standOn(base);
    return card.net();
  }

  private static Net several() {
    return NetMerge.of(
        List.of(
            GussetedWrapTest.wrap(8, 28, 60, Pinch.IN),
            miura(50, 4, 3),
            Card.tray(40, 60, 25, Card.SQUARE).net()));
  }

  /** Nets with the tear, in mm, that their ways may have. */
  static Stream<Arguments> nets() {
    List<Arguments> all = new ArrayList<>();
    for (int n : new int[] {6, 8, 12, 16}) {
      for (Pinch pinch : Pinch.values()) {
        all.add(Arguments.of("wrap " + n + pinch, GussetedWrapTest.wrap(n, 24, 72, pinch), 1e-6));
      }
    }
    all.add(Arguments.of("sheet of parallelograms", miura(60, 6, 5), 1e-6));
    all.add(Arguments.of("steep sheet", miura(80, 4, 4), 1e-6));
    all.add(Arguments.of("solid", Solid.named("p-dodecahedron").net(), 1e-9));
    all.add(Arguments.of("tray", Card.tray(40, 60, 25, Card.SQUARE).net(), 1e-9));
    all.add(Arguments.of("several", several(), 1e-6));
    all.add(Arguments.of("strained", strained(), 0.1));
    all.add(Arguments.of("torn", torn(), 6));
    return all.stream();
  }

  /** The farthest that any corner moves. */
  private static double moved(Net net, List<Motion3> from, List<Motion3> to) {
    double most = 0;
    for (int p = 0; p < from.size(); p++) {
      for (var c : net.panels().get(p).outline().corners()) {
        most = Math.max(most, from.get(p).apply(c).distance(to.get(p).apply(c)));
      }
    }
    return most;
  }

  private static double longestStep(Net net, FoldPath path, int steps) {
    double most = 0;
    List<Motion3> last = path.at(0);
    for (int i = 1; i <= steps; i++) {
      List<Motion3> next = path.at((double) i / steps);
      most = Math.max(most, moved(net, last, next));
      last = next;
    }
    return most;
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("nets")
  void startsFlatAndEndsMade(String name, Net net, double tear) {
    FoldPath path = Folding.path(net);
    int[] piece = net.pieceOfPanel();
    List<Motion3> flat = path.at(0);
    double off = 0;
    for (int p = 0; p < flat.size(); p++) {
      int its = piece[p];
      int first =
          IntStream.range(0, piece.length).filter(q -> piece[q] == its).findFirst().orElseThrow();
      Motion3 seen = flat.get(p).then(flat.get(first).inverse());
      for (var c : net.panels().get(p).outline().corners()) {
        off = Math.max(off, seen.apply(c).distance(new Vec3(c.x(), c.y(), 0)));
      }
    }
    assertThat(off).isLessThan(1e-9);
    assertThat(path.at(1)).isEqualTo(path.form().poses());
    assertThat(moved(net, path.at(1 - 1e-12), path.at(1))).isLessThan(1e-7);
  }

  /** No jumps: halve the steps often enough and the longest of them halves. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("nets")
  void movesHalfAsFarInHalfTheTime(String name, Net net, double tear) {
    FoldPath path = Folding.path(net);
    double longest = longestStep(net, path, 200);
    double half = longestStep(net, path, 400);
    assertThat(half).isBetween(0.45 * longest, 0.55 * longest);
    // Wherever one looks closer, nothing is quicker than that.
    double speed = half * 400;
    double step = 1e-6;
    for (double t :
        new double[] {0, 1e-4, 0.015625, 0.123456, 0.5, 0.6, 0.875, 0.984375, 1 - step}) {
      assertThat(moved(net, path.at(t), path.at(t + step))).isLessThan(1.1 * speed * step + 1e-8);
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("nets")
  void panelsStayRigidAndScoresHold(String name, Net net, double tear) {
    FoldPath path = Folding.path(net);
    for (int i = 0; i <= 60; i++) {
      FoldPath.State state = path.state(i / 60.0);
      assertThat(state.tear()).as("tear at %s", state.t()).isLessThan(tear);
      double off = 0;
      for (int p = 0; p < net.panels().size(); p++) {
        var outline = net.panels().get(p).outline();
        Motion3 pose = state.poses().get(p);
        for (int a = 0; a < outline.size(); a++) {
          for (int b = 0; b < a; b++) {
            double flat = outline.corner(a).distance(outline.corner(b));
            double made = pose.apply(outline.corner(a)).distance(pose.apply(outline.corner(b)));
            off = Math.max(off, Math.abs(made - flat));
          }
        }
      }
      assertThat(off).isLessThan(1e-9);
      double told = 0;
      for (Score s : net.scores()) {
        Vec3 one = state.poses().get(s.a().panel()).apply(net.segment(s.a()).from());
        Vec3 two = state.poses().get(s.b().panel()).apply(net.segment(s.b()).to());
        told = Math.max(told, one.distance(two));
      }
      assertThat(told).isLessThanOrEqualTo(state.tear());
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("nets")
  void isTheSameFromWhereverItIsEntered(String name, Net net, double tear) {
    double[] parts = IntStream.range(0, 24).mapToDouble(i -> i / 23.0).toArray();
    FoldPath one = Folding.path(net);
    List<FoldPath.State> upward = Arrays.stream(parts).mapToObj(one::state).toList();
    FoldPath other = Folding.path(net);
    List<FoldPath.State> together =
        IntStream.range(0, 24).parallel().mapToObj(i -> other.state(parts[23 - i])).toList();
    assertThat(together.reversed()).isEqualTo(upward);
  }

  @Test
  void strainAndTearsAreTold() {
    FoldPath even = Folding.path(GussetedWrapTest.wrap(8, 28, 60, Pinch.IN));
    assertThat(strains(even)).allMatch(strain -> strain < 1e-7);
    FoldPath bent = Folding.path(strained());
    assertThat(bent.form().closure()).isEqualTo(Closure.CLOSES_WITH_STRAIN);
    assertThat(strains(bent)).last().isEqualTo(Collections.max(strains(bent)));
    assertThat(bent.state(1).strain()).isEqualTo(bent.form().strain()).isPositive();
    assertThat(bent.state(0.5).strain()).isZero();
    FoldPath torn = Folding.path(torn());
    assertThat(torn.form().closure()).isEqualTo(Closure.OPEN);
    assertThat(torn.state(1).tear()).isBetween(1.0, 6.0);
    assertThat(torn.state(0.5).tear()).isLessThan(1e-6);
  }

  /** By how much panels bend at even steps of the way. */
  private static List<Double> strains(FoldPath path) {
    return IntStream.rangeClosed(0, 32).mapToObj(i -> path.state(i / 32.0).strain()).toList();
  }

  /** Every state of the sheet is again one of the published ones, at another slant. */
  @ParameterizedTest
  @MethodSource("slants")
  void aSheetOfParallelogramsKeepsItsFormulasAllTheWay(double degrees) {
    Miura whole = new Miura(20, 30, THIRD, Math.toRadians(degrees), 5, 4);
    FoldPath path = Folding.path(whole.net(_ -> true));
    double last = 0;
    for (int i = 1; i <= 40; i++) {
      List<Motion3> poses = path.at(i / 40.0);
      Vec3 o = place(whole, poses, 0, 0);
      Vec3 x = place(whole, poses, 2, 0).minus(o);
      Vec3 y = place(whole, poses, 0, 2).minus(o);
      Vec3 up = x.cross(y).unit();
      double high = place(whole, poses, 0, 1).minus(o).dot(up);
      double theta = Math.asin(Math.abs(high) / (whole.a() * Math.sin(whole.gamma())));
      Miura part = new Miura(20, 30, THIRD, theta, 5, 4);
      assertThat(x.length()).isCloseTo(2 * part.across(), within(1e-5));
      assertThat(y.length()).isCloseTo(2 * part.along(), within(1e-5));
      assertThat(place(whole, poses, 1, 0).minus(o).dot(y.unit()))
          .isCloseTo(part.shift(), within(1e-5));
      assertThat(theta).isGreaterThan(last);
      last = theta;
    }
    assertThat(last).isCloseTo(whole.theta(), within(1e-9));
  }

  static Stream<Double> slants() {
    return Stream.of(20.0, 45.0, 60.0, 75.0);
  }

  private static Vec3 place(Miura sheet, List<Motion3> poses, int i, int j) {
    int column = Math.min(i, sheet.columns() - 1);
    int row = Math.min(j, sheet.rows() - 1);
    return poses.get(sheet.panel(column, row)).apply(sheet.flat(i, j));
  }

  /** What only hangs on a loop folds by its exact part; so does a loop that nothing tears. */
  @Test
  void scoresOutsideLoopsFoldByTheirPart() {
    Net net = GussetedWrapTest.wrap(8, 28, 60, Pinch.IN);
    FoldPath path = Folding.path(net);
    List<Motion3> poses = path.at(0.3);
    Unknowns looped = LoopPanels.of(net);
    int hanging = 0;
    for (int s = 0; s < net.scores().size(); s++) {
      Score score = net.scores().get(s);
      if (!looped.scores().contains(s)) {
        double turn =
            Dihedrals.turn(
                poses.get(score.a().panel()), net.segment(score.a()), poses.get(score.b().panel()));
        assertThat(turn).isCloseTo(0.3 * path.angles().foldBy(s), within(1e-12));
        hanging++;
      }
    }
    // Eight rim tabs, and the flap of the seam in its rows.
    assertThat(hanging).isBetween(8, 12);
    Net straight = GussetedWrapTest.wrap(8, 28, 60, Pinch.IN);
    Net flat =
        straight.scored(
            straight.scores().stream().map(s -> s.folded(FoldAngle.degrees(0))).toList());
    assertThat(Folding.path(flat).state(0.5).tear()).isLessThan(1e-9);
  }
}
