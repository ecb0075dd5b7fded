package facetwright.geom;

import java.io.Serializable;
import java.util.Collection;

/** An upright rectangle, in mm. */
public record Box2(double minX, double minY, double maxX, double maxY) implements Serializable {

  /**
   * The smallest box around the points.
   *
   * @throws IllegalArgumentException when there is no point
   */
  public static Box2 around(Collection<Vec2> points) {
    Bounds bounds = new Bounds();
    for (Vec2 p : points) {
      bounds.add(p.x(), p.y());
    }
    return bounds.box();
  }

  public double width() {
    return maxX - minX;
  }

  public double height() {
    return maxY - minY;
  }

  public Vec2 centre() {
    return new Vec2((minX + maxX) / 2, (minY + maxY) / 2);
  }

  public Box2 union(Box2 other) {
    return new Box2(
        Math.min(minX, other.minX),
        Math.min(minY, other.minY),
        Math.max(maxX, other.maxX),
        Math.max(maxY, other.maxY));
  }

  /** Grown outward on all four sides. */
  public Box2 grown(double by) {
    return new Box2(minX - by, minY - by, maxX + by, maxY + by);
  }

  public boolean meets(Box2 other) {
    return minX <= other.maxX && other.minX <= maxX && minY <= other.maxY && other.minY <= maxY;
  }

  /** Whether the other box lies inside this one, given some slack. */
  public boolean holds(Box2 other, LengthTolerance slack) {
    return other.minX >= minX - slack.mm()
        && other.minY >= minY - slack.mm()
        && other.maxX <= maxX + slack.mm()
        && other.maxY <= maxY + slack.mm();
  }
}
