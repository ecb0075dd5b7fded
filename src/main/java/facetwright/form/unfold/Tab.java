package facetwright.form.unfold;

import facetwright.form.EdgeTab;
import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.geom.RoundOff;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import java.util.List;

/**
 * A tab as planned.
 *
 * @param edge the cut edge it closes
 * @param carrier the facet it hangs on
 * @param host the facet it lies under
 * @param outline in the layout of the carrier's piece; its first side runs back along the carrier's
 *     side, or part of it
 * @param hidden the same outline in the host's flat frame
 * @param box around the outline
 * @param depth in mm
 */
record Tab(
    int edge, int carrier, int host, Polygon2 outline, Polygon2 hidden, Box2 box, double depth) {

  /** The side that a facet has for its tab: half of it, where both bear one. */
  static Segment2 side(Layout layout, int edge, int carrier) {
    Segment2 side = layout.outline(carrier).side(layout.flat().sideOf(edge, carrier));
    boolean isShared =
        layout.flat().tab(edge).filter(t -> t.bearer() == EdgeTab.Bearer.BOTH).isPresent();
    return isShared ? new Segment2(side.middle(), side.to()) : side;
  }

  /** One whose ends run in at these angles. */
  static Tab slanted(
      Layout layout, int edge, int carrier, double depth, double atFrom, double atTo) {
    Segment2 side = side(layout, edge, carrier);
    Vec2 along = side.direction();
    Vec2 out = along.left().times(-depth);
    return of(
        layout,
        edge,
        carrier,
        List.of(
            side.to(),
            side.from(),
            side.from().plus(along.times(depth / Math.tan(atFrom))).plus(out),
            side.to().minus(along.times(depth / Math.tan(atTo))).plus(out)),
        depth);
  }

  /**
   * One of its own shape.
   *
   * @param corners seen with the whole side at the bottom, from its left end, its hinge first
   */
  static Tab shaped(Layout layout, int edge, int carrier, List<Vec2> corners) {
    Segment2 side = layout.outline(carrier).side(layout.flat().sideOf(edge, carrier));
    Vec2 back = side.direction().times(-1);
    Vec2 out = back.left();
    return of(
        layout,
        edge,
        carrier,
        corners.stream()
            .map(c -> side.to().plus(back.times(c.x())).plus(out.times(c.y())))
            .toList(),
        corners.stream().mapToDouble(Vec2::y).max().orElseThrow());
  }

  private static Tab of(Layout layout, int edge, int carrier, List<Vec2> corners, double depth) {
    FlatForm flat = layout.flat();
    Polygon2 outline = new Polygon2(corners);
    Segment2 side = layout.outline(carrier).side(flat.sideOf(edge, carrier));
    int host = flat.across(edge, carrier);
    Segment2 hostSide = flat.side(edge, host);
    Motion2 under = Motion2.carrying(side.from(), side.to(), hostSide.to(), hostSide.from());
    return new Tab(edge, carrier, host, outline, under.apply(outline), outline.box(), depth);
  }

  /** Whether another tab falls on this one: by its edge, its facet, its depth and its area. */
  boolean isImage(Tab other, Likeness under) {
    return under.edge(other.edge) == edge
        && under.facet(other.carrier) == carrier
        && LengthTolerance.FINE.same(depth, other.depth)
        && Math.abs(outline.area() - other.outline.area()) <= RoundOff.PART * outline.area();
  }
}
