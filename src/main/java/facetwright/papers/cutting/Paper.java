package facetwright.papers.cutting;

/**
 * A sheet of paper to cut from, as it lies before the maker.
 *
 * @param name what it is called
 * @param width over 0, in mm
 * @param height along the pattern where it has a direction, over 0, in mm
 */
public record Paper(String name, double width, double height) {

  /**
   * @throws IllegalArgumentException when a measure is not over 0
   */
  public Paper {
    if (!(width > 0 && height > 0 && width < Long.MAX_VALUE && height < Long.MAX_VALUE)) {
      throw new IllegalArgumentException(
          "a sheet needs a width and height over 0 mm, not " + width + " × " + height);
    }
  }

  /** In mm². */
  public double area() {
    return width * height;
  }
}
