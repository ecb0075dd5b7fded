package facetwright.papers.chart;

import facetwright.geom.Vec2;

/** How the blank lies against the board's stops. */
public enum Placing {
  FIRST(0, Side.TOP, Side.LEFT),
  /** Turned a quarter to the left from the first. */
  QUARTER_LEFT(1, Side.RIGHT, Side.TOP),
  END_FOR_END(2, Side.BOTTOM, Side.RIGHT),
  /** Turned a quarter to the right from the first. */
  QUARTER_RIGHT(3, Side.LEFT, Side.BOTTOM);

  private final int quarters;
  private final Side atTop;
  private final Side atLeft;

  Placing(int quarters, Side atTop, Side atLeft) {
    this.quarters = quarters;
    this.atTop = atTop;
    this.atLeft = atLeft;
  }

  /** The edge that lies against the top stop. */
  public Side atTop() {
    return atTop;
  }

  /** The edge that lies against the left stop: measures count from it. */
  public Side atLeft() {
    return atLeft;
  }

  /** How many quarter turns to the left lead here from the first placing, 0 to 3. */
  public int quarters() {
    return quarters;
  }

  /** Whether lines scored so run down the blank as it lies first. */
  public boolean scoresDown() {
    return atLeft.isUpright();
  }

  /** The placing in which measures count from this edge. */
  static Placing from(Side edge) {
    for (Placing p : values()) {
      if (p.atLeft == edge) {
        return p;
      }
    }
    throw new IllegalArgumentException(edge.word());
  }

  /**
   * Where a place of the blank lies on the board.
   *
   * @param place in mm from the blank's lower left corner as it lies first
   * @return in mm from the lower left corner of the blank as it lies now
   */
  public Vec2 onBoard(Vec2 place, double width, double height) {
    return switch (this) {
      case FIRST -> place;
      case QUARTER_LEFT -> new Vec2(height - place.y(), place.x());
      case END_FOR_END -> new Vec2(width - place.x(), height - place.y());
      case QUARTER_RIGHT -> new Vec2(place.y(), width - place.x());
    };
  }
}
