package facetwright.geom;

import java.util.List;

/** The plane of a loop of points in space, by Newell's method (Sutherland et al., 1974). */
public final class Newell {
  private Newell() {}

  /** Twice the area vector of the loop: it points to where the loop runs counter-clockwise. */
  public static Vec3 normal(List<Vec3> loop) {
    Vec3 origin = loop.getFirst();
    Vec3 sum = Vec3.ZERO;
    for (int i = 1; i + 1 < loop.size(); i++) {
      sum = sum.plus(loop.get(i).minus(origin).cross(loop.get(i + 1).minus(origin)));
    }
    return sum;
  }

  public static Vec3 middle(List<Vec3> points) {
    Vec3 sum = Vec3.ZERO;
    for (Vec3 p : points) {
      sum = sum.plus(p);
    }
    return sum.times(1.0 / points.size());
  }

  /** The largest distance of a point from the middle of all. */
  public static double size(List<Vec3> points) {
    Vec3 middle = middle(points);
    return points.stream().mapToDouble(middle::distance).max().orElse(0);
  }

  /** How far the loop leaves its plane, in mm. */
  public static double warp(List<Vec3> loop) {
    Vec3 normal = normal(loop).unit();
    Vec3 middle = middle(loop);
    return loop.stream().mapToDouble(p -> Math.abs(p.minus(middle).dot(normal))).max().orElse(0);
  }
}
