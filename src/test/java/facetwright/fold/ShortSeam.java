package facetwright.fold;

import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.Panel;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Nets one of whose seams is cut too short on one side. */
public final class ShortSeam {
  private ShortSeam() {}

  /** The net with the first seam's side shortened at an end where its panel is free to be cut. */
  public static Net in(Net net, double mm) {
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
          return cut(net, side, mm, true);
        }
        if (boundary && free.contains(new EdgeRef(side.panel(), (side.edge() + n - 1) % n))) {
          return cut(net, side, mm, false);
        }
      }
    }
    throw new AssertionError("no seam ends at a free side");
  }

  private static Net cut(Net net, EdgeRef side, double mm, boolean atEnd) {
    Panel panel = net.panels().get(side.panel());
    Vec2 along = net.segment(side).direction();
    List<Vec2> corners = new ArrayList<>(panel.outline().corners());
    int corner = atEnd ? (side.edge() + 1) % corners.size() : side.edge();
    corners.set(corner, corners.get(corner).plus(along.times(atEnd ? -mm : mm)));
    List<Panel> panels = new ArrayList<>(net.panels());
    panels.set(
        side.panel(),
        new Panel(
            panel.name(), panel.role(), new Polygon2(corners), panel.openings(), panel.site()));
    return new Net(
        panels,
        net.scores(),
        net.slits(),
        net.joins(),
        net.layers(),
        net.ticks(),
        net.cutaways(),
        net.stance());
  }
}
