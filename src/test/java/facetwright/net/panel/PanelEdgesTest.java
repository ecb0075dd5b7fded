package facetwright.net.panel;

import static facetwright.net.panel.PanelBuildTest.AT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import facetwright.net.FoldAngle;
import facetwright.net.Join;
import facetwright.net.NamedPanel;
import facetwright.net.Net;
import facetwright.net.Sense;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Edges that meet, whole or in parts. */
class PanelEdgesTest {
  private static List<String> seams(Net net) {
    return net.joins().stream()
        .map(Join.Seam.class::cast)
        .map(
            j ->
                String.format(
                    "%s %.0f, %s %.0f",
                    net.panels().get(j.a().panel()).name(),
                    net.segment(j.a()).length(),
                    net.panels().get(j.b().panel()).name(),
                    net.segment(j.b()).length()))
        .toList();
  }

  @Test
  void edgesOfUnlikeLengthMeetWhole() {
    PanelBuild build = new PanelBuild();
    CardPanel card = build.rectangle("card", 100, 60, AT);
    CardPanel other = build.rectangle("other", 50, 58, AT);
    build.join(card.edge("left", AT), other.edge("right", AT), null, AT);
    CardPanel tab =
        build.join(card, "right", other.edge("left", AT), new FlapShape.Tapered(8, 45), AT);
    Net net = build.build();
    assertThat(seams(net)).containsExactly("card 60, other 58", "card 60, other 58");
    assertThat(((Join.Seam) net.joins().getLast()).tab())
        .isEqualTo(net.panels().indexOf(NamedPanel.of(net, tab.name()).orElseThrow()));
  }

  /**
   * Of an edge in parts the longest takes the difference; from the left the parts go on in turn.
   */
  @Test
  void anEdgeInPartsMeetsALongerOrAShorterOne() {
    for (double more : new double[] {-2, 0, 2}) {
      PanelBuild build = new PanelBuild();
      CardPanel card = build.rectangle("card", 100, 60, AT);
      Hinge first = Hinge.at(0, 20, Sense.MOUNTAIN, FoldAngle.TO_SOLVE);
      CardPanel tab = card.tab("tab", "top", new FlapShape.Tapered(6, 30), first, AT);
      card.tab(
          "second",
          "top",
          new FlapShape.Tapered(6, 30),
          Hinge.at(70, 30, Sense.MOUNTAIN, FoldAngle.TO_SOLVE),
          AT);
      CardPanel other = build.rectangle("other", 100 + more, 40, AT);
      build.join(card.edge("top", AT), other.edge("bottom", AT), tab, AT);
      Net net = build.build();
      assertThat(seams(net))
          .containsExactlyInAnyOrder(
              "card 20, other 20",
              String.format("card 50, other %.0f", 50 + more),
              "card 30, other 30");
      // The left end of the one meets the right end of the other.
      Join.Seam atLeft =
          net.joins().stream()
              .map(Join.Seam.class::cast)
              .filter(j -> net.segment(j.a()).length() < 21)
              .findFirst()
              .orElseThrow();
      assertThat(atLeft.tab()).isNotEqualTo(Join.Seam.NO_TAB);
      // That of a bottom edge, seen from below, is its left in the net.
      double end = net.panels().get(atLeft.b().panel()).outline().box().minX();
      assertThat(net.segment(atLeft.b()).from().x()).isCloseTo(end, within(1e-9));
    }
  }

  @Test
  void anEdgeFarTooLongIsRefused() {
    PanelBuild build = new PanelBuild();
    CardPanel card = build.rectangle("card", 100, 60, AT);
    card.tab(
        "tab",
        "top",
        new FlapShape.Tapered(6, 30),
        Hinge.at(0, 45, Sense.MOUNTAIN, FoldAngle.TO_SOLVE),
        AT);
    CardPanel other = build.rectangle("other", 40, 40, AT);
    assertThatThrownBy(() -> build.join(card.edge("top", AT), other.edge("top", AT), null, AT))
        .hasMessageContaining("60 mm longer")
        .hasMessageContaining("meets nothing");
  }

  @Test
  void edgesDividedByANarrowTabMeetPartByPart() {
    PanelBuild build = new PanelBuild();
    CardPanel card = build.rectangle("card", 100, 60, AT);
    CardPanel other = build.rectangle("other", 60, 40, AT);
    Hinge narrow = Hinge.centred(20, Sense.MOUNTAIN, FoldAngle.TO_SOLVE);
    CardPanel tab = card.tab("tab", "right", new FlapShape.Tapered(6, 30), narrow, AT);
    build.join(card.edge("right", AT), other.edge("top", AT), tab, AT);
    Net net = build.build();
    assertThat(net.joins()).hasSize(3);
    assertThat(net.joins()).filteredOn(j -> ((Join.Seam) j).tab() != Join.Seam.NO_TAB).hasSize(1);
  }
}
