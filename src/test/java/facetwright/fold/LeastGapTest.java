package facetwright.fold;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.fold.close.LeastGap;
import facetwright.fold.pose.FoldTree;
import facetwright.fold.pose.Gaps;
import facetwright.fold.pose.ScoreAngles;
import facetwright.geom.Vec2;
import facetwright.net.EdgeRef;
import facetwright.net.FoldAngle;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.net.Sense;
import facetwright.net.draft.NetDraft;
import facetwright.net.draft.PanelDraft;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The bound on how near two sides come, against folds that bring them nearer or together. */
class LeastGapTest {
  private static final double MEETS = 1e-6;

  static Stream<Solid> solids() throws Exception {
    return Solid.all();
  }

  /** What closes is never called apart: nets cut from solids, every seam of each. */
  @ParameterizedTest
  @MethodSource("solids")
  void seamsOfSolidsComeTogether(Solid solid) {
    Net net = solid.net();
    for (Join join : net.joins()) {
      if (join instanceof Join.Seam s) {
        assertThat(LeastGap.of(net, s.a(), s.b(), MEETS)).isZero();
        assertThat(LeastGap.of(net, s.a(), s.b(), ScoreAngles.nominal(net), 1e-4)).isZero();
      }
    }
  }

  /** So many triangles in a row, each scored to the one before. */
  private static Net strip(Random chance, int panels) {
    NetDraft net = new NetDraft();
    Vec2 low = Vec2.ZERO;
    Vec2 high = new Vec2(0, 30 + 40 * chance.nextDouble());
    PanelDraft before = null;
    for (int i = 0; i < panels; i++) {
      double x = 15 + 35 * (i + chance.nextDouble());
      boolean isUp = i % 2 == 0;
      Vec2 next = new Vec2(x, isUp ? 0 : 30 + 40 * chance.nextDouble());
      PanelDraft panel =
          net.panel("panel " + i, PanelRole.FACET, List.of(high, low, next), Site.NONE);
      if (before != null) {
        // The side that the panel before has for its third, or its second one, is the first here.
        net.score(
            before.edge(isUp ? 1 : 2),
            panel.edge(0),
            Sense.MOUNTAIN,
            FoldAngle.TO_SOLVE,
            Site.NONE);
      }
      before = panel;
      if (isUp) {
        low = next;
      } else {
        high = next;
      }
    }
    return net.build();
  }

  @Test
  void noFoldBeatsTheBound() {
    Random chance = new Random(20);
    int told = 0;
    for (int i = 0; i < 24; i++) {
      int panels = 2 + i % 3;
      Net net = strip(chance, panels);
      EdgeRef a = new EdgeRef(0, 2);
      EdgeRef b = new EdgeRef(panels - 1, 1 + (panels % 2));
      double least = LeastGap.of(net, a, b, MEETS);
      double found = Double.POSITIVE_INFINITY;
      for (int t = 0; t < 3000; t++) {
        List<Double> angles = new ArrayList<>();
        net.scores().forEach(_ -> angles.add(Math.PI * (2 * chance.nextDouble() - 1)));
        ScoreAngles folds = new ScoreAngles(angles);
        found =
            Math.min(found, Gaps.seam(net, FoldTree.of(net, List.of(0), folds).fold(folds), a, b));
      }
      assertThat(least).isLessThanOrEqualTo(found + 1e-9);
      if (least > 0) {
        told++;
        // By chance one comes near, in three angles not very.
        assertThat(least).isGreaterThan(0.7 * found - 2);
      }
    }
    assertThat(told).isGreaterThan(5);
  }

  /** Two leaves with a hinge between: the bound is exact, by hand. */
  @Test
  void oneHinge() {
    NetDraft net = new NetDraft();
    List<Vec2> square = List.of(new Vec2(0, 0), new Vec2(50, 0), new Vec2(50, 40), new Vec2(0, 40));
    List<Vec2> other =
        List.of(new Vec2(50, 0), new Vec2(80, 0), new Vec2(80, 40), new Vec2(50, 40));
    PanelDraft one = net.panel("one", PanelRole.FACET, square, Site.NONE);
    PanelDraft two = net.panel("two", PanelRole.FACET, other, Site.NONE);
    net.score(one.edge(1), two.edge(3), Sense.MOUNTAIN, FoldAngle.TO_SOLVE, Site.NONE);
    Net built = net.build();
    // Folded right over, the far side of 30 lies 20 from the far side of 50.
    double least = LeastGap.of(built, new EdgeRef(0, 3), new EdgeRef(1, 1), MEETS);
    assertThat(least).isBetween(19.97, 20.0);
    assertThat(LeastGap.enough(least)).isGreaterThanOrEqualTo(20);
  }
}
