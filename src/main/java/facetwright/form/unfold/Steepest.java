package facetwright.form.unfold;

import facetwright.form.Form;
import facetwright.form.FormEdge;
import facetwright.geom.RoundOff;
import facetwright.geom.Vec3;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Optional;

/**
 * The steepest-edge cut: seen along a direction, every corner but the highest cuts the edge that
 * climbs most steeply from it (W. Schlickenrieder, Nets of polyhedra, 1997: from memory). For
 * convex forms it nearly always gives a net without overlap. Of edges as steep as each other the
 * form's first is cut.
 */
final class Steepest {
  private Steepest() {}

  static Optional<Layout> layout(FlatForm flat, int root, Vec3 direction) {
    Form form = flat.form();
    int[] best = new int[form.corners().size()];
    Arrays.fill(best, FormEdge.NONE);
    double[] slope = new double[best.length];
    for (int e = 0; e < form.edges().size(); e++) {
      FormEdge edge = flat.edge(e);
      Vec3 along = form.corners().get(edge.to()).minus(form.corners().get(edge.from())).unit();
      double climb = along.dot(direction);
      int low = climb > 0 ? edge.from() : edge.to();
      if (Math.abs(climb) > slope[low] + RoundOff.PART) {
        slope[low] = Math.abs(climb);
        best[low] = e;
      }
    }
    boolean[] cut = new boolean[form.edges().size()];
    for (int e : best) {
      if (e != FormEdge.NONE) {
        cut[e] = true;
      }
    }
    Layout layout = new Layout(flat);
    layout.start(root);
    ArrayDeque<Integer> open = new ArrayDeque<>();
    open.add(root);
    while (!open.isEmpty()) {
      int facet = open.poll();
      for (int e : flat.edgesOf(facet)) {
        if (!cut[e] && !flat.edge(e).isRim() && !layout.isPlaced(flat.across(e, facet))) {
          if (!layout.hang(e, facet)) {
            return Optional.empty();
          }
          open.add(flat.across(e, facet));
        }
      }
    }
    return layout.isComplete() ? Optional.of(layout) : Optional.empty();
  }
}
