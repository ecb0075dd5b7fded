package facetwright.workbench.lens;

import facetwright.fold.pose.Dihedrals;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.Vertices;
import facetwright.geom.Vec3;
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
    List<Vertices.Vertex> vertices = Vertices.of(net, form);
    return new Teaching(
        Dihedrals.atScores(net, form),
        form.together().isSome()
            ? vertices.stream().map(v -> together(form, v)).toList()
            : vertices);
  }

  /** The same where it is when all parts are together. */
  private static Vertices.Vertex together(FoldedForm form, Vertices.Vertex v) {
    int panel = v.corners().getFirst().panel();
    Vec3 place = form.poses().get(panel).inverse().then(form.whole().get(panel)).apply(v.place());
    return new Vertices.Vertex(v.corners(), place, v.angleSum(), v.closed(), v.interior());
  }
}
