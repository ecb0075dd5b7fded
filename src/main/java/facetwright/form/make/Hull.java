package facetwright.form.make;

import facetwright.form.Facet;
import facetwright.form.Form;
import facetwright.form.FormCheck;
import facetwright.geom.Newell;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The convex hull of points by gift wrapping: from one facet on, the plane is turned about each
 * edge until it meets the next points; all points in that plane within a tolerance make one facet.
 * For points that people give it is 1e-7 of the size of the cloud, far under what a knife can
 * follow and far over rounding.
 */
final class Hull {
  private static final int MOST_POINTS = 2000;

  /** The tolerance for points that people give. */
  static final double GIVEN = 1e-7;

  /** The tolerance for points that were computed. */
  static final double COMPUTED = 1e-11;

  private final List<Vec3> points;
  private final double slack;

  private Hull(List<Vec3> points, double slack) {
    this.points = points;
    this.slack = slack;
  }

  static Form form(List<Vec3> points) {
    List<List<Integer>> loops = facets(points, GIVEN);
    List<Facet> facets = new ArrayList<>();
    for (List<Integer> loop : loops) {
      facets.add(Facet.of("facet " + (facets.size() + 1), loop));
    }
    return Form.of(points, facets);
  }

  /**
   * The facets as loops of indices into the points, counter-clockwise seen from outside.
   *
   * @param flatness the tolerance, in parts of the size of the cloud
   */
  static List<List<Integer>> facets(List<Vec3> points, double flatness) {
    FormCheck.require(
        points.size() >= 4 && points.size() <= MOST_POINTS,
        "a hull needs 4 to " + MOST_POINTS + " points, not " + points.size());
    double size = Newell.size(points);
    FormCheck.require(size > 0, "all points of the hull lie at one place: spread them");
    return new Hull(points, size * flatness).wrap();
  }

  /** A supporting plane: all points on it or under it. */
  private record Plane(Vec3 on, Vec3 normal) {}

  private List<List<Integer>> wrap() {
    List<List<Integer>> loops = new ArrayList<>();
    Set<List<Integer>> edges = new HashSet<>();
    ArrayDeque<Pivot> open = new ArrayDeque<>();
    add(first(), loops, edges, open);
    while (!open.isEmpty()) {
      Pivot p = open.poll();
      if (edges.contains(List.of(p.to, p.from))) {
        continue;
      }
      Vec3 from = points.get(p.from);
      Vec3 along = points.get(p.to).minus(from).unit();
      Plane next = turned(from, along, p.normal);
      add(next, loops, edges, open);
      FormCheck.require(
          edges.contains(List.of(p.to, p.from)) && loops.size() <= 2 * points.size(),
          "some points of the hull lie nearly in one plane or at one place: move or drop them");
    }
    return loops;
  }

  /** An edge across which the next facet is to be found. */
  private record Pivot(int from, int to, Vec3 normal) {}

  private void add(
      Plane plane, List<List<Integer>> loops, Set<List<Integer>> edges, ArrayDeque<Pivot> open) {
    List<Integer> loop = outline(plane);
    FormCheck.require(
        loop.size() >= 3, "all points of the hull lie on one line: move one off the line");
    List<Vec3> corners = loop.stream().map(points::get).toList();
    Vec3 normal = Newell.normal(corners).unit();
    double deepest =
        points.stream().mapToDouble(p -> corners.getFirst().minus(p).dot(normal)).max().orElse(0);
    FormCheck.require(
        deepest > 10 * slack, "all points of the hull lie in one plane: move one off the plane");
    for (int i = 0; i < loop.size(); i++) {
      int from = loop.get(i);
      int to = loop.get((i + 1) % loop.size());
      FormCheck.require(
          edges.add(List.of(from, to)),
          "some points of the hull lie nearly in one plane or at one place: move or drop them");
      open.add(new Pivot(from, to, normal));
    }
    loops.add(loop);
  }

  private Plane first() {
    Vec3 low =
        points.stream()
            .min(
                Comparator.comparingDouble(Vec3::z)
                    .thenComparingDouble(Vec3::y)
                    .thenComparingDouble(Vec3::x))
            .orElseThrow();
    // The level plane under the lowest point, turned about a line through it until it meets a
    // point, then about the line through both.
    Vec3 down = Vec3.Z.times(-1);
    Plane touching = turned(low, Vec3.X, down);
    Vec3 other = farthestOn(touching, low);
    Vec3 along = other.minus(low).unit();
    Vec3 square = touching.normal.minus(along.times(along.dot(touching.normal))).unit();
    return turned(low, along, square);
  }

  private Vec3 farthestOn(Plane plane, Vec3 from) {
    return points.stream()
        .filter(p -> Math.abs(p.minus(plane.on).dot(plane.normal)) <= slack)
        .max(Comparator.comparingDouble(from::distance))
        .orElseThrow();
  }

  /**
   * Turns a supporting plane about a line in it, away from what lies left of the line (seen from
   * outside), until it meets a point.
   */
  private Plane turned(Vec3 on, Vec3 along, Vec3 normal) {
    Vec3 beyond = along.cross(normal);
    double best = Double.POSITIVE_INFINITY;
    double bestReach = 0;
    Vec3 met = null;
    for (Vec3 p : points) {
      Vec3 d = p.minus(on);
      double u = d.dot(beyond);
      double v = Math.max(0, -d.dot(normal));
      double reach = Math.hypot(u, v);
      if (reach <= 10 * slack) {
        continue;
      }
      double angle = Math.atan2(v, u);
      boolean same = Math.abs(angle - best) * Math.max(reach, bestReach) <= slack;
      if (same ? reach > bestReach : angle < best) {
        best = angle;
        bestReach = reach;
        met = p;
      }
    }
    FormCheck.require(met != null, "all points of the hull lie on one line: move one off the line");
    Vec3 to = normal.times(Math.cos(best)).plus(beyond.times(Math.sin(best)));
    return new Plane(on, to.unit());
  }

  /**
   * The corners of the hull's facet in a plane: Andrew's monotone chain, straight corners dropped.
   */
  private List<Integer> outline(Plane plane) {
    Vec3 n = plane.normal;
    Vec3 x = n.cross(Math.abs(n.x()) < 0.6 ? Vec3.X : Vec3.Y).unit();
    Vec3 y = n.cross(x);
    List<Integer> inPlane = new ArrayList<>();
    List<Vec2> flat = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      Vec3 d = points.get(i).minus(plane.on);
      flat.add(new Vec2(d.dot(x), d.dot(y)));
      if (Math.abs(d.dot(n)) <= slack) {
        inPlane.add(i);
      }
    }
    inPlane.sort(
        Comparator.comparingDouble((Integer i) -> flat.get(i).x())
            .thenComparingDouble(i -> flat.get(i).y()));
    List<Integer> distinct = new ArrayList<>();
    for (int i : inPlane) {
      if (distinct.stream().noneMatch(j -> points.get(i).distance(points.get(j)) <= 10 * slack)) {
        distinct.add(i);
      }
    }
    List<Integer> loop = half(distinct, flat);
    List<Integer> back = half(distinct.reversed(), flat);
    loop.removeLast();
    back.removeLast();
    loop.addAll(back);
    return loop;
  }

  private List<Integer> half(List<Integer> sorted, List<Vec2> flat) {
    List<Integer> chain = new ArrayList<>();
    for (int i : sorted) {
      while (chain.size() >= 2) {
        Vec2 a = flat.get(chain.get(chain.size() - 2));
        Vec2 b = flat.get(chain.getLast());
        Vec2 ac = flat.get(i).minus(a);
        if (ac.cross(b.minus(a)) < -slack * ac.length()) {
          break;
        }
        chain.removeLast();
      }
      chain.add(i);
    }
    return chain;
  }
}
