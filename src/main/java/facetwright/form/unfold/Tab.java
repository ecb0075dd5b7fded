package facetwright.form.unfold;

import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Polygon2;
import facetwright.geom.RoundOff;

/**
 * A tab as planned.
 *
 * @param edge the cut edge it closes
 * @param carrier the facet it hangs on
 * @param host the facet it is glued under
 * @param outline in the layout of the carrier's piece; its first side runs back along the carrier's
 *     side
 * @param hidden the same outline in the host's flat frame
 * @param box around the outline
 * @param depth in mm
 */
record Tab(
    int edge, int carrier, int host, Polygon2 outline, Polygon2 hidden, Box2 box, double depth) {

  /** Whether another tab falls on this one: by its edge, its facet, its depth and its area. */
  boolean isImage(Tab other, Likeness under) {
    return under.edge(other.edge) == edge
        && under.facet(other.carrier) == carrier
        && LengthTolerance.FINE.same(depth, other.depth)
        && Math.abs(outline.area() - other.outline.area()) <= RoundOff.PART * outline.area();
  }
}
