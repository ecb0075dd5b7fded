package facetwright.fold;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.geom.Motion3;
import facetwright.geom.Vec3;
import facetwright.net.Net;
import facetwright.net.Pinch;
import facetwright.net.Score;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The way of a gusseted wrap, whose scores close loops round its waist. */
class LoopWayTest {
  @Test
  void panelsHoldTogetherOnTheWay() {
    Net net = GussetedWrapTest.wrap(8, 28, 60, Pinch.IN);
    FoldPath path = Folding.path(net);
    for (double t : new double[] {0.25, 0.5, 0.75}) {
      List<Motion3> poses = path.at(t);
      for (Score s : net.scores()) {
        Vec3 one = poses.get(s.a().panel()).apply(net.segment(s.a()).from());
        Vec3 two = poses.get(s.b().panel()).apply(net.segment(s.b()).to());
        assertThat(one.distance(two)).isLessThan(1e-6);
      }
    }
    assertThat(path.at(1)).isEqualTo(path.form().poses());
  }
}
