package facetwright.form;

import java.util.ArrayList;
import java.util.List;

/** Which edge a side of a facet is, and what stands round a corner. */
public final class Sides {
  private Sides() {}

  public static int[][] edgeOfSide(Form form) {
    int[][] edgeOf = new int[form.facets().size()][];
    for (int f = 0; f < edgeOf.length; f++) {
      edgeOf[f] = new int[form.facets().get(f).size()];
    }
    for (int e = 0; e < form.edges().size(); e++) {
      FormEdge edge = form.edges().get(e);
      edgeOf[edge.left()][edge.leftSide()] = e;
      if (!edge.isRim()) {
        edgeOf[edge.right()][edge.rightSide()] = e;
      }
    }
    return edgeOf;
  }

  /** The facets round a corner of a closed form, counter-clockwise seen from outside. */
  public static List<Integer> facetsRound(Form form, int[][] edgeOf, int corner) {
    return round(form, edgeOf, corner, /* facets= */ true);
  }

  /** The edges at a corner of a closed form, counter-clockwise seen from outside. */
  public static List<Integer> edgesRound(Form form, int[][] edgeOf, int corner) {
    return round(form, edgeOf, corner, /* facets= */ false);
  }

  private static List<Integer> round(Form form, int[][] edgeOf, int corner, boolean facets) {
    List<Integer> found = new ArrayList<>();
    int start = 0;
    while (!form.facets().get(start).corners().contains(corner)) {
      start++;
    }
    int facet = start;
    do {
      int at = form.facets().get(facet).corners().indexOf(corner);
      int leaving = edgeOf[facet][at];
      found.add(facets ? facet : leaving);
      // The side that arrives at the corner is shared with the next facet counter-clockwise.
      int sides = form.facets().get(facet).size();
      FormEdge arriving = form.edges().get(edgeOf[facet][Math.floorMod(at - 1, sides)]);
      facet = arriving.left() == facet ? arriving.right() : arriving.left();
    } while (facet != start);
    return found;
  }
}
