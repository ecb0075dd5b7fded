package facetwright.form.unfold;

import facetwright.form.Form;
import facetwright.form.FormEdge;
import facetwright.geom.RoundOff;
import facetwright.geom.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * A ring of facets round the form: those that a plane square to the axis passes through, in the
 * order in which it meets them.
 *
 * @param facets in order
 * @param edges edge {@code i} leads from facet {@code i} to the next, the last back to the first
 */
record Belt(List<Integer> facets, List<Integer> edges) {

  /** Belts between each two neighbouring levels of corners, the one nearest half height first. */
  static List<Belt> round(FlatForm flat, Vec3 axis) {
    Form form = flat.form();
    double[] height = form.corners().stream().mapToDouble(axis::dot).toArray();
    double slack = RoundOff.SOLVED * flat.size();
    List<Double> levels = new ArrayList<>();
    for (double h : Arrays.stream(height).sorted().toArray()) {
      if (levels.isEmpty() || h > levels.getLast() + slack) {
        levels.add(h);
      }
    }
    double half = (levels.getFirst() + levels.getLast()) / 2;
    List<Double> cuts = new ArrayList<>();
    for (int i = 0; i + 1 < levels.size(); i++) {
      cuts.add((levels.get(i) + levels.get(i + 1)) / 2);
    }
    cuts.sort(Comparator.comparingLong(c -> Math.round(Math.abs(c - half) / slack)));
    List<Belt> belts = new ArrayList<>();
    for (double cut : cuts) {
      Belt belt = at(flat, height, cut);
      if (belt.facets.size() >= 3) {
        belts.add(belt);
      }
    }
    return belts;
  }

  /** The belt at a height; empty where the plane meets more than one ring, or an open one. */
  private static Belt at(FlatForm flat, double[] height, double cut) {
    List<Integer> inPlane = new ArrayList<>();
    for (int f = 0; f < flat.count(); f++) {
      if (!crossed(flat, height, cut, f).isEmpty()) {
        inPlane.add(f);
      }
    }
    Belt none = new Belt(List.of(), List.of());
    if (inPlane.isEmpty()) {
      return none;
    }
    List<Integer> facets = new ArrayList<>();
    List<Integer> edges = new ArrayList<>();
    int facet = inPlane.getFirst();
    int came = crossed(flat, height, cut, facet).getFirst();
    do {
      List<Integer> crossed = crossed(flat, height, cut, facet);
      if (crossed.size() != 2) {
        return none;
      }
      int leave = crossed.get(0) == came ? crossed.get(1) : crossed.get(0);
      facets.add(facet);
      edges.add(leave);
      came = leave;
      facet = flat.across(leave, facet);
    } while (facet != FormEdge.NONE && facet != facets.getFirst());
    return facet == FormEdge.NONE || facets.size() < inPlane.size()
        ? none
        : new Belt(facets, edges);
  }

  private static List<Integer> crossed(FlatForm flat, double[] height, double cut, int facet) {
    List<Integer> crossed = new ArrayList<>();
    for (int e : flat.edgesOf(facet)) {
      FormEdge edge = flat.edge(e);
      if ((height[edge.from()] < cut) != (height[edge.to()] < cut)) {
        crossed.add(e);
      }
    }
    return crossed;
  }
}
