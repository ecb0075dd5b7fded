package facetwright.net.panel;

import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Ask;
import facetwright.net.draft.EdgeDraft;
import facetwright.net.draft.NetDraft;
import facetwright.net.draft.PanelDraft;
import facetwright.words.Site;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;

/**
 * A notch in a free edge.
 *
 * @param at where its middle is along the edge, from the left, in mm; NaN for the edge's middle
 * @param width of its mouth, in mm
 * @param depth in mm
 */
public record Notch(double at, double width, double depth, NotchShape shape)
    implements Serializable {

  /**
   * Cuts it into a side of a panel in the making.
   *
   * @param name what messages call the side
   * @throws facetwright.net.NetException where the side is not free there, or the notch would part
   *     the panel
   */
  public void cut(NetDraft net, EdgeDraft side, String name, Site site) {
    cut(new CardEdge(net, name, side), side.panel(), site);
  }

  void cut(CardEdge edge, PanelDraft panel, Site site) {
    Ask.length("a notch's width", width, edge.length(), site);
    Ask.length("a notch's depth", depth, site);
    double middle = Double.isNaN(at) ? edge.length() / 2 : at;
    EdgeDraft part = edge.isolate(middle - width / 2, middle + width / 2, site);
    Vec2 from = part.from();
    Vec2 to = part.to();
    Polygon2 plain = panel.outline();
    List<EdgeDraft> sides = new ArrayList<>(List.of(part));
    sides.addAll(panel.detour(part, shape.corners(from, to, depth)));
    if (shape.isCircle(width, depth)) {
      panel.round(sides, from.toward(to, 0.5));
    }
    edge.forget(part);
    Ask.that(
        panel.isSimple(),
        () ->
            Message.of(
                "the notch in %s, %s deep, reaches across the panel: make it at most %s deep",
                edge.name(),
                Value.limit(depth),
                Value.atMost(shape.deepest(plain, from, to, depth))),
        site);
  }
}
