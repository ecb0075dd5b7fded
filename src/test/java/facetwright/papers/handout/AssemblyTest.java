package facetwright.papers.handout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.fold.FoldedForm;
import facetwright.fold.Folding;
import facetwright.form.Solids;
import facetwright.form.Tabs;
import facetwright.form.UnfoldStyle;
import facetwright.form.Unfolding;
import facetwright.geom.Segment2;
import facetwright.geom.Vec3;
import facetwright.net.Join;
import facetwright.net.Net;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AssemblyTest {
  private static Vec3 middle(Net net, FoldedForm form, int join) {
    Join.Seam seam = (Join.Seam) net.joins().get(join);
    Segment2 side = net.segment(seam.b());
    return form.poses().get(seam.b().panel()).apply(side.middle());
  }

  /** A drum of an even number of sides stands centred on the table: opposite places sum to zero. */
  @ParameterizedTest
  @ValueSource(ints = {4, 6, 8, 10})
  void capsGoRoundInOppositePairs(int sides) {
    Net net =
        Unfolding.as(UnfoldStyle.STRIP)
            .with(Tabs.deep(6))
            .unfold(Solids.prismBySide(sides, 30, 40))
            .net();
    FoldedForm form = Folding.fold(net);
    List<Assembly.Turn> turns = Assembly.of(net, form);
    assertThat(turns.stream().flatMap(t -> t.joins().stream()))
        .containsExactlyInAnyOrderElementsOf(
            IntStream.range(0, net.joins().size()).boxed().toList());
    // First the upright seam that closes the wrap, half way up.
    assertThat(turns.getFirst().joins()).hasSize(1);
    assertThat(middle(net, form, turns.getFirst().joins().getFirst()).z())
        .isCloseTo(20, within(0.1));
    for (Assembly.Turn turn : turns) {
      if (turn.joins().size() == 2) {
        Vec3 sum =
            middle(net, form, turn.joins().getFirst())
                .plus(middle(net, form, turn.joins().getLast()));
        assertThat(Math.hypot(sum.x(), sum.y())).isLessThan(0.1);
      }
    }
    assertThat(turns.stream().filter(t -> t.joins().size() == 2).count())
        .isGreaterThanOrEqualTo(sides - 2L);
  }
}
