package facetwright.form;

/** The angle between the two facets of an edge, measured inside: under π at a convex edge. */
final class Dihedral {
  private Dihedral() {}

  /** In radians from 0 to 2π. */
  static double of(Form form, FormEdge edge) {
    return Math.PI - FormMeasure.fold(form, edge);
  }
}
