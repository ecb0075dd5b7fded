package facetwright.geom;

import java.io.Serializable;
import java.util.List;

/**
 * The flat frame of a facet, seen from outside: windows and holes are given in it. Its origin is
 * the facet's centre of area. Its x runs along the facet's most level edge, the lowest of these
 * where several are level, the first listed where they are level at one height. Its y runs up the
 * facet: where that edge is the top one, the frame is turned so that y still points up. On a level
 * facet every edge is level; x then runs along its first edge.
 *
 * @param origin the facet's centre of area
 * @param x unit direction
 * @param y unit direction, a quarter turn left of x seen from outside
 * @param normal unit direction outward
 */
public record FacetFrame(Vec3 origin, Vec3 x, Vec3 y, Vec3 normal) implements Serializable {
  /** Cosines, and parts of a facet's size, that differ by no more are one. */
  private static final double SAME = 1e-7;

  public static FacetFrame of(List<Vec3> outline) {
    Vec3 normal = Newell.normal(outline).unit();
    int base = levelSide(outline);
    Vec3 from = outline.get(base);
    Vec3 x = outline.get((base + 1) % outline.size()).minus(from);
    x = x.minus(normal.times(x.dot(normal))).unit();
    Vec3 y = normal.cross(x);
    if (y.z() < -SAME) {
      x = x.times(-1);
      y = y.times(-1);
    }
    FacetFrame atCorner = new FacetFrame(from, x, y, normal);
    Vec2 centre = atCorner.flat(outline).centroid();
    double depth = outline.stream().mapToDouble(c -> c.minus(from).dot(normal)).average().orElse(0);
    return new FacetFrame(atCorner.space(centre).plus(normal.times(depth)), x, y, normal);
  }

  private static int levelSide(List<Vec3> outline) {
    double size = Newell.size(outline);
    int best = 0;
    double bestRise = Double.POSITIVE_INFINITY;
    double bestHeight = Double.POSITIVE_INFINITY;
    for (int i = 0; i < outline.size(); i++) {
      Vec3 from = outline.get(i);
      Vec3 to = outline.get((i + 1) % outline.size());
      double rise = Math.abs(to.minus(from).unit().z());
      double height = (from.z() + to.z()) / 2;
      boolean asLevel = rise <= bestRise + SAME;
      if (rise < bestRise - SAME || (asLevel && height < bestHeight - SAME * size)) {
        best = i;
        bestRise = rise;
        bestHeight = height;
      }
    }
    return best;
  }

  /** A point of space seen in this frame; its height over the facet is dropped. */
  public Vec2 flat(Vec3 p) {
    Vec3 d = p.minus(origin);
    return new Vec2(d.dot(x), d.dot(y));
  }

  /** A point of this frame in space. */
  public Vec3 space(Vec2 p) {
    return origin.plus(x.times(p.x())).plus(y.times(p.y()));
  }

  public Polygon2 flat(List<Vec3> outline) {
    return new Polygon2(outline.stream().map(this::flat).toList());
  }

  /**
   * The motion of the plane that takes a point given in this frame to the same point in another.
   */
  public Motion2 into(FacetFrame other) {
    Vec2 along = new Vec2(x.dot(other.x), x.dot(other.y)).unit();
    return new Motion2(along.x(), along.y(), other.flat(origin));
  }
}
