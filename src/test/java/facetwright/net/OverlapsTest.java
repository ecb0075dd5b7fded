package facetwright.net;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.net.draft.NetDraft;
import facetwright.net.draft.PanelDraft;
import facetwright.words.Site;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OverlapsTest {
  private static PanelDraft add(NetDraft draft, String name, Polygon2 outline) {
    return draft.panel(name, PanelRole.FACET, outline.corners(), Site.NONE);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e-3, 1, 1e3})
  void sharedAreaIsFoundAtEveryScale(double scale) {
    NetDraft draft = new NetDraft();
    add(draft, "a", Polygon2.rectangle(0, 0, 10 * scale, 10 * scale));
    add(draft, "b", Polygon2.rectangle(10 * scale, 0, 10 * scale, 10 * scale));
    add(draft, "c", Polygon2.rectangle(9 * scale, 9 * scale, 10 * scale, 10 * scale));
    List<Overlap> found = Overlaps.find(draft.build());
    assertThat(found).hasSize(2);
    assertThat(found.get(0).a()).isZero();
    assertThat(found.get(0).b()).isEqualTo(2);
    assertThat(found.get(0).area()).isCloseTo(scale * scale, within(1e-9 * scale * scale));
    assertThat(found.get(1).area()).isCloseTo(9 * scale * scale, within(1e-9 * scale * scale));
  }

  @Test
  void neighboursAlongAScoreDoNotOverlap() {
    NetDraft draft = new NetDraft();
    PanelDraft a = add(draft, "a", Polygon2.rectangle(0, 0, 300, 10));
    PanelDraft b = add(draft, "b", Polygon2.rectangle(0, 10 - 5e-7, 300, 10));
    draft.score(a.edge(2), b.edge(0), Sense.VALLEY, FoldAngle.TO_SOLVE, Site.NONE);
    assertThat(Overlaps.find(draft.build())).isEmpty();
  }

  @Test
  void aPanelInAnothersWindowDoesNotOverlap() {
    NetDraft draft = new NetDraft();
    PanelDraft frame = add(draft, "frame", Polygon2.rectangle(0, 0, 50, 50));
    frame.open(new Opening.Window(Polygon2.rectangle(10, 10, 30, 30), Site.NONE));
    add(draft, "inner", Polygon2.rectangle(12, 12, 20, 20));
    assertThat(Overlaps.find(draft.build())).isEmpty();
  }

  @Test
  void farOutlinesKeepTheirDigits() {
    NetDraft draft = new NetDraft();
    add(draft, "a", Polygon2.regular(new Vec2(1e6, 1e6), 6, 10, 0));
    add(draft, "b", Polygon2.regular(new Vec2(1e6, 1e6), 6, 10, 0));
    // Regular hexagon: area (3√3/2) r² (handbook).
    assertThat(Overlaps.find(draft.build()).getFirst().area())
        .isCloseTo(1.5 * Math.sqrt(3) * 100, within(1e-6));
  }
}
