package facetwright.form.unfold;

import facetwright.form.EdgeTab;
import facetwright.form.FormEdge;
import facetwright.geom.Vec2;
import facetwright.net.FoldAngle;
import facetwright.net.Join.Hold;
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
      PairedFlap hook = new PairedFlap(said.depth(), bevel, Hold.HOOK, said.relief());
      return Optional.of(hook.corners(flat.length(edge), side, said.site()));
    }
    if (!said.isTuck()) {
      return Optional.empty();
    }
    TuckFlap tuck =
        new TuckFlap(said.depth(), said.relief(), 90 - said.bevel(), FoldAngle.TO_SOLVE);
    return Optional.of(tuck.corners(flat.length(edge), side, said.site()));
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
