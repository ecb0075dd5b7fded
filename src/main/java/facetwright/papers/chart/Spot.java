package facetwright.papers.chart;

/** A point of the blank. */
sealed interface Spot {
  /** Short enough to stand in a list, such as "B2" or "B top". */
  String text();

  /**
   * Told by two guides.
   *
   * @param across how far from left to right
   * @param down how far from top to bottom
   */
  record At(Guide across, Guide down) implements Spot {
    @Override
    public String text() {
      return switch (across) {
        case Guide.Line(String letter) when down instanceof Guide.Line(String number) ->
            letter + number;
        case Guide.Line(String letter) when down instanceof Guide.Edge(Side side) ->
            letter + " " + side.word();
        case Guide.Edge(Side side) when down instanceof Guide.Line(String number) ->
            number + " " + side.word();
        case Guide.Edge(Side side) when down instanceof Guide.Edge(Side other) ->
            other.word() + " " + side.word() + " corner";
        default -> "(" + across.label() + ", " + down.label() + ")";
      };
    }
  }

  /**
   * No point, but the way from the one before to the next: along an arc of half a circle at most.
   *
   * @param across its diameter, where it is half a circle; else twice its radius
   * @param isLeft whether one turns left along it
   * @param isHalf whether it is half a circle
   * @param toward where it bulges, such as "top" or "top right"
   */
  record Bow(Measure radius, Measure across, boolean isLeft, boolean isHalf, String toward)
      implements Spot {
    @Override
    public String text() {
      return (isHalf
              ? "half circle, " + across.text() + " across"
              : "arc of " + radius.text() + " radius")
          + ", bulging to the "
          + toward;
    }
  }

  /** A whole circle, in place of the corners of an outline. */
  record Circle(Spot centre, Measure radius) implements Spot {
    @Override
    public String text() {
      return "a circle of " + radius.text() + " from its middle, " + centre.text();
    }
  }

  /**
   * A point that was numbered before.
   *
   * @param number from 1
   */
  record Numbered(int number) implements Spot {
    @Override
    public String text() {
      return String.valueOf(number);
    }
  }
}
