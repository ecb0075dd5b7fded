package facetwright.export;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion3;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.Panel;
import facetwright.pace.Pace;
import facetwright.words.Count;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.triangulate.polygon.ConstrainedDelaunayTriangulator;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;

/**
 * Panels of a folded form as triangles whose outsides face outward. Corners nearer than 0.001 mm,
 * or than what bending brings together, are one vertex, and a side on which another panel's corner
 * lies is divided there, so that a closed body is closed in the file too.
 */
final class FoldedMesh {
  /** Corners that lie no farther apart are one vertex of the mesh. */
  private static final LengthTolerance WELD = LengthTolerance.UNSEEN;

  /** Of a region with more corners, triangles are not made as even as may be: that takes long. */
  private static final int MOST_EVEN = 1000;

  private final double weld;
  private final List<Vec3> vertices = new ArrayList<>();
  private final Map<Cell, List<Integer>> near = new HashMap<>();
  private final List<Part> parts = new ArrayList<>();

  /**
   * @param panel index in the net
   * @param outline vertices round the panel
   * @param triangles three vertices each, openings left out
   * @param whole whether the outline alone tells the panel: convex, without openings
   */
  record Part(int panel, List<Integer> outline, List<int[]> triangles, boolean whole) {}

  private record Cell(long x, long y, long z) {}

  FoldedMesh(Job job, List<Integer> panels) {
    Pace.doing("dividing " + Count.of(panels.size(), "panel") + " into triangles");
    Net net = job.laid().net();
    weld = Math.max(WELD.mm(), 1.01 * job.form().bend(net));
    for (int p : panels) {
      for (Vec2 corner : net.panels().get(p).outline().corners()) {
        number(job.form().whole().get(p).apply(corner));
      }
    }
    int corners = vertices.size();
    for (int p : panels) {
      add(p, net.panels().get(p), job.form().whole().get(p), corners);
    }
  }

  List<Vec3> vertices() {
    return vertices;
  }

  List<Part> parts() {
    return parts;
  }

  private void add(int index, Panel panel, Motion3 pose, int corners) {
    Polygon2 outline = divided(panel.outline(), pose, corners);
    Geometry region =
        Planar.polygon(outline, panel.openings().stream().map(Opening::outline).toList());
    Geometry pieces =
        region.getNumPoints() <= MOST_EVEN
            ? ConstrainedDelaunayTriangulator.triangulate(region)
            : PolygonTriangulator.triangulate(region);
    List<int[]> triangles = new ArrayList<>();
    for (int i = 0; i < pieces.getNumGeometries(); i++) {
      Pace.step();
      Coordinate[] c = pieces.getGeometryN(i).getCoordinates();
      Vec2 a = new Vec2(c[0].x, c[0].y);
      Vec2 b = new Vec2(c[1].x, c[1].y);
      Vec2 d = new Vec2(c[2].x, c[2].y);
      boolean left = Planar.orientation(a, b, d) > 0;
      int[] triangle = {
        number(pose.apply(a)), number(pose.apply(left ? b : d)), number(pose.apply(left ? d : b))
      };
      if (triangle[0] != triangle[1] && triangle[1] != triangle[2] && triangle[2] != triangle[0]) {
        triangles.add(triangle);
      }
    }
    List<Integer> round = outline.corners().stream().map(c -> number(pose.apply(c))).toList();
    parts.add(
        new Part(
            index, round, triangles, panel.openings().isEmpty() && panel.outline().isConvex()));
  }

  /** The outline with corners added where another panel's corner lies on a side. */
  private Polygon2 divided(Polygon2 outline, Motion3 pose, int corners) {
    List<Vec2> all = new ArrayList<>();
    for (int i = 0; i < outline.size(); i++) {
      Segment2 side = outline.side(i);
      Vec3 from = pose.apply(side.from());
      Vec3 along = pose.apply(side.to()).minus(from);
      double length = along.length();
      List<Double> stops = new ArrayList<>();
      for (Vec3 v : vertices.subList(0, corners)) {
        double way = v.minus(from).dot(along) / length;
        if (way > weld
            && way < length - weld
            && v.distance(from.plus(along.times(way / length))) < weld) {
          stops.add(way / length);
        }
      }
      stops.sort(Comparator.naturalOrder());
      all.add(side.from());
      stops.forEach(t -> all.add(side.from().toward(side.to(), t)));
    }
    return new Polygon2(all);
  }

  private int number(Vec3 p) {
    for (long x = cell(p.x() - weld); x <= cell(p.x() + weld); x++) {
      for (long y = cell(p.y() - weld); y <= cell(p.y() + weld); y++) {
        for (long z = cell(p.z() - weld); z <= cell(p.z() + weld); z++) {
          for (int i : near.getOrDefault(new Cell(x, y, z), List.of())) {
            if (vertices.get(i).distance(p) < weld) {
              return i;
            }
          }
        }
      }
    }
    near.computeIfAbsent(new Cell(cell(p.x()), cell(p.y()), cell(p.z())), _ -> new ArrayList<>())
        .add(vertices.size());
    vertices.add(p);
    return vertices.size() - 1;
  }

  private long cell(double coordinate) {
    return Math.round(coordinate / (10 * weld));
  }

  /** All panels of the net. */
  static List<Integer> all(Net net) {
    Integer[] all = new Integer[net.panels().size()];
    Arrays.setAll(all, i -> i);
    return List.of(all);
  }
}
