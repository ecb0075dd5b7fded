package facetwright.papers.handout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.fold.Folding;
import facetwright.fold.making.Bond;
import facetwright.fold.making.GlueOrder;
import facetwright.fold.making.Gluing;
import facetwright.fold.making.Step;
import facetwright.fold.pose.FoldedForm;
import facetwright.form.make.Solids;
import facetwright.form.unfold.Nets;
import facetwright.form.unfold.Tabs;
import facetwright.form.unfold.UnfoldStyle;
import facetwright.form.unfold.Unfolding;
import facetwright.geom.Segment2;
import facetwright.geom.Vec3;
import facetwright.language.Telling;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.papers.order.Order;
import facetwright.script.LibraryDesigns;
import facetwright.script.design.Design;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AssemblyTest {
  private static Vec3 middle(Net net, FoldedForm form, Bond bond) {
    Join.Seam seam = (Join.Seam) net.joins().get(((Bond.Joined) bond).join());
    Segment2 side = net.segment(seam.b());
    return form.poses().get(seam.b().panel()).apply(side.middle());
  }

  /** A drum of an even number of sides stands centred on the table: opposite places sum to zero. */
  @ParameterizedTest
  @ValueSource(ints = {4, 6, 8, 10})
  void capsGoRoundInOppositePairs(int sides) {
    Net net =
        new Nets(
                Solids.prismBySide(sides, 30, 40),
                Unfolding.as(UnfoldStyle.STRIP).with(Tabs.deep(6)))
            .on(0, 0)
            .net();
    FoldedForm form = Folding.fold(net);
    List<Gluing.Stage> turns = GlueOrder.of(net, form).stages();
    assertThat(Gluing.numbered(turns))
        .containsExactlyInAnyOrderElementsOf(
            IntStream.range(0, net.joins().size()).<Bond>mapToObj(Bond.Joined::new).toList());
    // First the upright seam that closes the wrap, half way up.
    assertThat(turns.getFirst().bonds()).hasSize(1);
    assertThat(middle(net, form, turns.getFirst().bonds().getFirst()).z())
        .isCloseTo(20, within(0.1));
    for (Gluing.Stage turn : turns) {
      if (turn.bonds().size() == 2) {
        Vec3 sum =
            middle(net, form, turn.bonds().getFirst())
                .plus(middle(net, form, turn.bonds().getLast()));
        assertThat(Math.hypot(sum.x(), sum.y())).isLessThan(0.1);
      }
    }
    assertThat(turns.stream().filter(t -> t.bonds().size() == 2).count())
        .isGreaterThanOrEqualTo(sides - 2L);
  }

  /**
   * The harbour lantern: the seam's two tabs first, then the four tabs over one opening and the
   * four over the other. Column 8 carries the seam, so of the odd columns 3 and 7, and 5 and 1, lie
   * opposite (four columns apart of eight), and the pair with column 1, beside the seam, is last.
   */
  @Test
  void theLanternsTabsCloseInOppositePairsTheSeamSideLast() throws Exception {
    Design d = lantern();
    List<String> names =
        d.gluing().stages().stream()
            .map(
                t ->
                    t.bonds().stream()
                        .map(b -> b instanceof Bond.Closing(int tab) ? name(d, tab) : "seam")
                        .sorted()
                        .collect(Collectors.joining(" + ")))
            .toList();
    assertThat(names)
        .containsExactly(
            "seam",
            "seam",
            "rim 3 (row 1) + rim 7 (row 1)",
            "rim 1 (row 1) + rim 5 (row 1)",
            "rim 3 (row 4) + rim 7 (row 4)",
            "rim 1 (row 4) + rim 5 (row 4)");
  }

  /** Edges of gussets meet of themselves: the words name them once, and none of them by number. */
  @Test
  void pinchedEdgesTakeNoGlue() throws Exception {
    Design d = lantern();
    long pinched = d.net().joins().stream().filter(j -> Gluing.isPinch(d.net(), j)).count();
    assertThat(pinched).isEqualTo(8);
    List<Step> glued = d.gluing().steps().stream().filter(Step.Glue.class::isInstance).toList();
    Telling tell = Order.usual(d.unit()).telling();
    AssemblyText text =
        new AssemblyText(d.net(), d.gluing(), new FittingText(d.net(), d.gluing(), tell), tell);
    List<String> lines = text.lines(text.actions(glued));
    assertThat(lines).noneMatch(l -> l.contains("gusset of"));
    assertThat(lines.getFirst()).isEqualTo("Glue tab 1 under edge 1. Do the same with 2.");
    assertThat(lines.get(1)).contains("gussets", "no glue");
    assertThat(lines.get(2)).isEqualTo("Fold tab 3 in over the opening, without glue yet.");
    assertThat(lines.get(3))
        .isEqualTo(
            "Fold tab 4 over the opening and glue its inner face to tab 3. Do the same with 5"
                + " and 6.");
  }

  private static String name(Design d, int panel) {
    return d.net().panels().get(panel).name();
  }

  private static Design lantern() throws Exception {
    return LibraryDesigns.design("harbour-lantern");
  }
}
