package facetwright.form.make;

import facetwright.form.FormException;
import facetwright.geom.Newell;
import facetwright.geom.Vec3;
import java.util.ArrayList;
import java.util.List;

/**
 * The convex body under a set of planes, by polar duality: planes become points, the hull of these
 * has a facet for each corner of the body.
 */
public final class HalfSpaces {
  private HalfSpaces() {}

  /**
   * A plane with its outside.
   *
   * @param normal unit, outward
   * @param distance from the inner point, over 0
   */
  public record Plane(Vec3 normal, double distance) {}

  /**
   * The body's corners, and for each plane its facet as a loop of corner indices, empty where the
   * plane bounds nothing.
   */
  public record Body(List<Vec3> corners, List<List<Integer>> loops) {}

  public static Body under(Vec3 inner, List<Plane> planes) {
    double unit = planes.stream().mapToDouble(Plane::distance).average().orElseThrow();
    List<Vec3> poles = planes.stream().map(p -> p.normal().times(unit / p.distance())).toList();
    List<List<Integer>> around = Hull.facets(poles, Hull.COMPUTED);
    List<Vec3> corners = new ArrayList<>();
    for (List<Integer> loop : around) {
      List<Vec3> outline = loop.stream().map(poles::get).toList();
      Vec3 normal = Newell.normal(outline).unit();
      double distance = Newell.middle(outline).dot(normal);
      corners.add(inner.plus(normal.times(unit / distance)));
    }
    List<List<Integer>> loops = new ArrayList<>();
    for (int p = 0; p < planes.size(); p++) {
      loops.add(around(around, p));
    }
    return new Body(corners, loops);
  }

  /** The loops that name an index, in the order in which they stand round it. */
  private static List<Integer> around(List<List<Integer>> loops, int index) {
    List<Integer> found = new ArrayList<>();
    for (int start = 0; start < loops.size() && found.isEmpty(); start++) {
      int loop = start;
      while (loops.get(loop).contains(index) && !found.contains(loop)) {
        found.add(loop);
        int before = Math.floorMod(loops.get(loop).indexOf(index) - 1, loops.get(loop).size());
        loop = withEdge(loops, index, loops.get(loop).get(before));
      }
    }
    return found;
  }

  private static int withEdge(List<List<Integer>> loops, int from, int to) {
    for (int i = 0; i < loops.size(); i++) {
      int at = loops.get(i).indexOf(from);
      if (at >= 0 && loops.get(i).get((at + 1) % loops.get(i).size()) == to) {
        return i;
      }
    }
    throw new FormException("facets of the form lie nearly in one plane: move or drop some");
  }
}
