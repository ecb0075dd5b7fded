package facetwright.papers.chart;

/** How one coordinate of the blank is told. */
sealed interface Guide {
  /** An edge of the blank. */
  record Edge(Side side) implements Guide {}

  /** A line scored before. */
  record Line(String label) implements Guide {}

  /** The middle between two neighbours, each an edge or a line scored before. */
  record Halfway(Guide one, Guide other) implements Guide {}

  /**
   * A measure from an edge or from a line scored before.
   *
   * @param from where the ruler's 0 lies
   * @param toward the edge toward which one measures
   */
  record Measured(Measure measure, Guide from, Side toward) implements Guide {}
}
