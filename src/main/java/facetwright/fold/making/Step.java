package facetwright.fold.making;

/** One step of making a piece up; the pictures and the words of it are made of this. */
public sealed interface Step {
  /** Something is glued or closed. */
  record Glue(Gluing.Stage stage) implements Step {}

  /**
   * A thing goes in or on, or is told.
   *
   * @param fitting its index among the net's fittings
   */
  record Fit(int fitting) implements Step {}
}
