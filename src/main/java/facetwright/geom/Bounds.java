package facetwright.geom;

/** A box that grows with the points it is given. */
final class Bounds {
  private double minX = Double.POSITIVE_INFINITY;
  private double minY = Double.POSITIVE_INFINITY;
  private double maxX = Double.NEGATIVE_INFINITY;
  private double maxY = Double.NEGATIVE_INFINITY;

  void add(double x, double y) {
    minX = x < minX ? x : minX;
    minY = y < minY ? y : minY;
    maxX = x > maxX ? x : maxX;
    maxY = y > maxY ? y : maxY;
  }

  /**
   * @throws IllegalArgumentException when no point was given
   */
  Box2 box() {
    if (minX > maxX) {
      throw new IllegalArgumentException("no points to put a box around");
    }
    return new Box2(minX, minY, maxX, maxY);
  }
}
