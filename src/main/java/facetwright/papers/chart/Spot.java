package facetwright.papers.chart;

/** A point of the blank. */
sealed interface Spot {
  /**
   * Told by two guides.
   *
   * @param across how far from left to right
   * @param down how far from top to bottom
   */
  record At(Guide across, Guide down) implements Spot {}

  /**
   * No point, but the way from the one before to the next: along an arc of half a circle at most.
   *
   * @param across its diameter, where it is half a circle; else twice its radius
   * @param isLeft whether one turns left along it
   * @param isHalf whether it is half a circle
   * @param toward where it bulges, such as "top" or "top right"
   */
  record Bow(Measure radius, Measure across, boolean isLeft, boolean isHalf, String toward)
      implements Spot {}

  /** A whole circle, in place of the corners of an outline. */
  record Circle(Spot centre, Measure radius) implements Spot {}

  /**
   * A point that was numbered before.
   *
   * @param number from 1
   */
  record Numbered(int number) implements Spot {}
}
