package facetwright.workbench.lens;

import facetwright.fold.pose.Dihedrals;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.Vertices;
import facetwright.net.Net;
import java.util.List;

/**
 * Angles for those who teach.
 *
 * @param dihedrals at each score, in degrees
 * @param vertices with their angle sums
 */
record Teaching(List<Double> dihedrals, List<Vertices.Vertex> vertices) {
  static Teaching of(Net net, FoldedForm form) {
    return new Teaching(Dihedrals.atScores(net, form), Vertices.of(net, form));
  }
}
