package facetwright.geom;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The outline that a thread pulled tight round points would take. */
public final class ConvexOutline {
  private ConvexOutline() {}

  /**
   * The corners of it, counter-clockwise, none of them on a straight side, by Andrew's monotone
   * chain (1979; from memory). Whatever is asked of the points as a whole, such as the box round
   * them however they are turned, can be asked of these.
   *
   * @param points one at least; of points that lie on a line its two ends are given
   */
  public static List<Vec2> of(List<Vec2> points) {
    List<Vec2> sorted = new ArrayList<>(points);
    sorted.sort(Comparator.comparingDouble(Vec2::x).thenComparingDouble(Vec2::y));
    List<Vec2> hull = new ArrayList<>();
    for (int pass = 0; pass < 2; pass++) {
      int start = hull.size();
      for (Vec2 p : sorted) {
        while (hull.size() >= start + 2 && !isLeft(hull, p)) {
          hull.removeLast();
        }
        hull.add(p);
      }
      hull.removeLast();
      sorted = sorted.reversed();
    }
    return hull.isEmpty() ? List.of(points.getFirst()) : hull;
  }

  /** Whether a point lies to the left of the line along the last two. */
  private static boolean isLeft(List<Vec2> hull, Vec2 p) {
    Vec2 from = hull.get(hull.size() - 2);
    Vec2 to = hull.getLast();
    return (to.x() - from.x()) * (p.y() - from.y()) - (to.y() - from.y()) * (p.x() - from.x()) > 0;
  }
}
