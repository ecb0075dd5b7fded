package facetwright.fold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.form.Solids;
import facetwright.form.Tabs;
import facetwright.form.UnfoldStyle;
import facetwright.form.Unfolding;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.net.EdgeRef;
import facetwright.net.FoldAngle;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.Panel;
import facetwright.net.Pinch;
import facetwright.net.Site;
import facetwright.net.WrapDraft;
import facetwright.net.WrapRow;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A seam whose one side is 2 mm short misses by 2 mm and lets all others meet. */
class UnevenSeamTest {
  private static final double SHORT = 2;
  private static final Site AT = Site.NONE;

  /** The net with the first seam's side shortened at an end where its panel is free to be cut. */
  private static Net shortened(Net net) {
    Set<EdgeRef> seamed = new HashSet<>();
    for (Join join : net.joins()) {
      if (join instanceof Join.Seam s) {
        seamed.add(s.a());
        seamed.add(s.b());
      }
    }
    Set<EdgeRef> free = new HashSet<>(net.boundary());
    free.removeAll(seamed);
    for (Join join : net.joins()) {
      for (EdgeRef side :
          join instanceof Join.Seam s ? List.of(s.a(), s.b()) : List.<EdgeRef>of()) {
        int n = net.panels().get(side.panel()).outline().size();
        boolean boundary = net.boundary().contains(side);
        if (boundary && free.contains(new EdgeRef(side.panel(), (side.edge() + 1) % n))) {
          return cut(net, side, true);
        }
        if (boundary && free.contains(new EdgeRef(side.panel(), (side.edge() + n - 1) % n))) {
          return cut(net, side, false);
        }
      }
    }
    throw new AssertionError("no seam ends at a free side");
  }

  private static Net cut(Net net, EdgeRef side, boolean atEnd) {
    Panel panel = net.panels().get(side.panel());
    Vec2 along = net.segment(side).direction();
    List<Vec2> corners = new ArrayList<>(panel.outline().corners());
    int corner = atEnd ? (side.edge() + 1) % corners.size() : side.edge();
    corners.set(corner, corners.get(corner).plus(along.times(atEnd ? -SHORT : SHORT)));
    List<Panel> panels = new ArrayList<>(net.panels());
    panels.set(
        side.panel(),
        new Panel(
            panel.name(), panel.role(), new Polygon2(corners), panel.openings(), panel.site()));
    return new Net(
        panels, net.scores(), net.slits(), net.joins(), net.layers(), net.ticks(), net.stance());
  }

  private static void missesByTwo(Net whole) {
    assertThat(Folding.fold(whole).closure()).isEqualTo(Closure.CLOSES);
    FoldedForm form = Folding.fold(shortened(whole));
    assertThat(form.closure()).isEqualTo(Closure.OPEN);
    assertThat(form.gap()).isCloseTo(SHORT, within(1e-6));
    assertThat(form.gaps().stream().filter(g -> g.mm() > 1e-6)).hasSize(1);
    assertThat(form.strains()).isEmpty();
  }

  @Test
  void ofATray() {
    missesByTwo(Card.tray(60, 40, 25, Card.SQUARE).net());
    missesByTwo(Card.tray(60, 40, 25, FoldAngle.TO_SOLVE).net());
  }

  @Test
  void ofAPlainWrap() {
    missesByTwo(WrapDraft.equal(8, 24, WrapRow.usual(List.of(60.0)), AT).seam(0, AT).build());
  }

  @Test
  void ofAGussetedWrap() {
    for (int columns : new int[] {6, 8, 12}) {
      WrapDraft wrap =
          WrapDraft.equal(columns, 24, WrapRow.usual(List.of(80.0, 80.0)), AT).seam(0, AT);
      wrap.columns("even", AT).gusset(Pinch.IN, AT);
      missesByTwo(wrap.build());
    }
  }

  @Test
  void ofAFormsNet() {
    for (Tabs tabs : List.of(Tabs.NONE, Tabs.USUAL)) {
      missesByTwo(
          Unfolding.as(UnfoldStyle.PETALS)
              .with(tabs)
              .unfold(Solids.prismBySide(6, 30, 40).withoutFacet("top"))
              .net());
    }
  }
}
