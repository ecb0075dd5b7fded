package facetwright.geom;

/** How many copies of a piece may be seated in a ring, and how well. */
public final class RingCount {
  public static final int LEAST = 3;

  /** Beyond it the angles of a ring can't be told apart with card. */
  public static final int MOST = 72;

  /**
   * What card and glue make up at the outer end of a joint, in mm: about as much as card is thick;
   * common practice, no source.
   */
  public static final double FORGIVEN = 0.3;

  private RingCount() {}

  /**
   * Whether card and glue make up what neighbours miss each other by.
   *
   * @param opening how far they stand open at the outer end of a joint, in mm; below 0 too thick
   */
  public static boolean isForgiven(double opening) {
    return Math.abs(opening) <= FORGIVEN;
  }

  /**
   * The same count.
   *
   * @throws IllegalArgumentException when it is out of range; the message has no full stop
   */
  public static int checked(int count) {
    if (count < LEAST || count > MOST) {
      throw new IllegalArgumentException(
          "a ring is of " + LEAST + " to " + MOST + " pieces, not " + count);
    }
    return count;
  }
}
