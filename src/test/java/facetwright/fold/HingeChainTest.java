package facetwright.fold;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.fold.walk.FoldPath;
import facetwright.geom.Motion3;
import facetwright.geom.Vec3;
import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.Sense;
import facetwright.net.draft.EdgeDraft;
import facetwright.net.draft.PanelDraft;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

class HingeChainTest {
  private static final double SIDE = 20;

  /** A link: which side of the last panel it hangs on, and how far it folds, mountain positive. */
  record Link(int side, double angle) {}

  @Provide
  Arbitrary<List<Link>> chains() {
    Arbitrary<Integer> side = Arbitraries.integers().between(1, 3);
    Arbitrary<Double> angle = Arbitraries.doubles().between(-180, 180);
    return Combinators.combine(side, angle).as(Link::new).list().ofMinSize(1).ofMaxSize(12);
  }

  private static Net net(List<Link> chain) {
    Card card = new Card();
    PanelDraft last = card.rectangle("start", 0, 0, SIDE, SIDE);
    for (Link link : chain) {
      EdgeDraft side = last.edge(link.side);
      last =
          card.flap(
              side,
              "link",
              SIDE,
              link.angle < 0 ? Sense.VALLEY : Sense.MOUNTAIN,
              FoldAngle.degrees(Math.abs(link.angle)));
    }
    return card.net();
  }

  @Property(tries = 200, seed = "20261125")
  void panelsKeepTheirDistancesAndScoresHold(
      @ForAll("chains") List<Link> chain, @ForAll @DoubleRange(min = 0, max = 1) double t) {
    Net net = net(chain);
    List<Motion3> poses = Folding.path(net).at(t);
    for (int p = 0; p < poses.size(); p++) {
      var outline = net.panels().get(p).outline();
      for (int i = 0; i < outline.size(); i++) {
        for (int j = 0; j < i; j++) {
          double flat = outline.corner(i).distance(outline.corner(j));
          double made =
              poses.get(p).apply(outline.corner(i)).distance(poses.get(p).apply(outline.corner(j)));
          assertThat(Math.abs(flat - made)).isLessThan(1e-10);
        }
      }
    }
    for (var score : net.scores()) {
      var a = net.segment(score.a());
      var b = net.segment(score.b());
      Vec3 one = poses.get(score.a().panel()).apply(a.from());
      assertThat(one.distance(poses.get(score.b().panel()).apply(b.to()))).isLessThan(1e-10);
    }
  }

  @Property(tries = 100, seed = "20261125")
  void anyChainStartsFlat(@ForAll("chains") List<Link> chain) {
    Net net = net(chain);
    List<Motion3> poses = Folding.path(net).at(0);
    Vec3 first = poses.getFirst().apply(net.panels().getFirst().outline().corner(0));
    for (int p = 0; p < poses.size(); p++) {
      for (var corner : net.panels().get(p).outline().corners()) {
        double flat = corner.distance(net.panels().getFirst().outline().corner(0));
        assertThat(Math.abs(poses.get(p).apply(corner).distance(first) - flat)).isLessThan(1e-9);
      }
    }
  }

  /** No corner moves farther than the sum of all turns takes the farthest reach. */
  @Property(tries = 100, seed = "20261125")
  void foldingNeverJumps(
      @ForAll("chains") List<Link> chain, @ForAll @DoubleRange(min = 0, max = 0.99) double t) {
    Net net = net(chain);
    FoldPath path = Folding.path(net);
    double step = 0.01;
    double turns = chain.stream().mapToDouble(l -> Math.toRadians(Math.abs(l.angle))).sum();
    double reach = (chain.size() + 1) * SIDE * Math.sqrt(2);
    List<Motion3> before = path.at(t);
    List<Motion3> after = path.at(t + step);
    for (int p = 0; p < before.size(); p++) {
      for (var corner : net.panels().get(p).outline().corners()) {
        assertThat(before.get(p).apply(corner).distance(after.get(p).apply(corner)))
            .isLessThanOrEqualTo(step * turns * reach + 1e-9);
      }
    }
  }
}
