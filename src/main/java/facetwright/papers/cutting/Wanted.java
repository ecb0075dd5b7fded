package facetwright.papers.cutting;

/**
 * A rectangle that is wanted.
 *
 * @param name what the maker calls it
 * @param width across the sheet, over 0, in mm
 * @param height up the sheet, over 0, in mm
 * @param count how many at most, or how many exactly where a plan is to make all; over 0
 * @param mayTurn whether it may lie turned a quarter; not where the paper's pattern has a direction
 * @param value what one is worth where not all fit, over 0; its area where only waste matters
 */
public record Wanted(
    String name, double width, double height, int count, boolean mayTurn, double value) {
  /** As many as fit. */
  public static final int UNLIMITED = Integer.MAX_VALUE;

  /**
   * @throws IllegalArgumentException when a measure, the count or the value is not over 0
   */
  public Wanted {
    if (!(width > 0 && height > 0 && width < Long.MAX_VALUE && height < Long.MAX_VALUE)) {
      throw new IllegalArgumentException(
          "\"" + name + "\" needs a width and height over 0 mm, not " + width + " × " + height);
    }
    if (count < 1 || !(value > 0)) {
      throw new IllegalArgumentException(
          "\"" + name + "\" needs a count and a value over 0, not " + count + " and " + value);
    }
  }

  /** Worth its area. */
  public static Wanted of(String name, double width, double height, int count, boolean mayTurn) {
    return new Wanted(name, width, height, count, mayTurn, width * height);
  }

  /** In mm². */
  double area() {
    return width * height;
  }

  Wanted worth(double other) {
    return new Wanted(name, width, height, count, mayTurn, other);
  }
}
