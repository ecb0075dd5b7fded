package facetwright.form.unfold;

import facetwright.form.EdgeTab;
import facetwright.form.FlapCut;
import facetwright.form.FormEdge;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.FoldAngle;
import facetwright.net.Join.Hold;
import facetwright.net.Opening;
import facetwright.net.draft.PanelDraft;
import facetwright.net.panel.LatchFlap;
import facetwright.net.panel.PairedFlap;
import facetwright.net.panel.TuckFlap;
import java.util.List;
import java.util.Optional;

/** Flaps whose shape follows from what their maker said: those that hold without glue. */
final class SaidFlap {
  private SaidFlap() {}

  /**
   * The corners of such a flap, seen with the whole side at the bottom, from its left end; nothing
   * where an edge bears none.
   *
   * @throws facetwright.net.NetException where no such flap is possible on a side so long
   */
  static Optional<List<Vec2>> shape(FlatForm flat, int edge) {
    EdgeTab said = flat.tab(edge).orElse(null);
    if (said == null || said.hold() == Hold.GLUE) {
      return Optional.empty();
    }
    String side = "the side of " + both(flat, edge);
    if (said.hold() == Hold.HOOK) {
      double bevel = said.bevel() > 0 ? 90 - said.bevel() : Double.NaN;
      PairedFlap hook = new PairedFlap(said.depth(), bevel, Hold.HOOK, said.cut().relief());
      return Optional.of(hook.corners(flat.length(edge), side, said.site()));
    }
    if (said.hold() == Hold.LATCH) {
      return Optional.of(latch(said).corners(flat.length(edge), side, said.site()));
    }
    return said.isTuck()
        ? Optional.of(tuck(said).corners(flat.length(edge), side, said.site()))
        : Optional.empty();
  }

  private static TuckFlap tuck(EdgeTab said) {
    FlapCut cut = said.cut();
    return new TuckFlap(
        said.depth(), cut.relief(), 90 - said.bevel(), cut.radius(), FoldAngle.TO_SOLVE);
  }

  private static LatchFlap latch(EdgeTab said) {
    FlapCut cut = said.cut();
    return new LatchFlap(said.depth(), cut.inset(), cut.width(), cut.slot());
  }

  /** Rounds a flap made, where those of its kind are. */
  static void round(FlatForm flat, int edge, PanelDraft flap) {
    flat.tab(edge).filter(EdgeTab::isTuck).ifPresent(t -> tuck(t).round(flap, t.site()));
  }

  /**
   * The slot for a tongue along an edge.
   *
   * @param side the side that it lies along, its panel on its left
   */
  static Optional<Opening.Slot> slot(FlatForm flat, int edge, Segment2 side) {
    return flat.tab(edge)
        .filter(t -> t.hold() == Hold.LATCH)
        .map(t -> latch(t).opening(side, t.site()));
  }

  /** Whether what was said of an edge keeps tabs from being alike. */
  static boolean isOneSided(FlatForm flat, int edge) {
    return flat.tab(edge)
        .filter(t -> t.hold() != Hold.GLUE || t.bearer() == EdgeTab.Bearer.BOTH)
        .isPresent();
  }

  /** What a maker calls the flap along an edge. */
  static String word(FlatForm flat, int edge) {
    return flat.tab(edge).map(t -> t.hold().word()).orElse(Hold.GLUE.word());
  }

  /** The two facets along an edge. */
  static String both(FlatForm flat, int edge) {
    FormEdge e = flat.edge(edge);
    return "\"" + name(flat, e.left()) + "\" and \"" + name(flat, e.right()) + "\"";
  }

  static String name(FlatForm flat, int facet) {
    return flat.form().facets().get(facet).name();
  }
}
