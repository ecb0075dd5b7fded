package facetwright.net.blank;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.message.Message;
import facetwright.net.NetException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/** The regions between a blank's lines: a planar subdivision on a grid of 1e-7 mm. */
final class BlankRegions {
  /** The grid lines are noded on: below the tolerance of a net's scores. */
  static final LengthTolerance GRID = new LengthTolerance(1e-7);

  /** A place so near a line lies on it. */
  private static final LengthTolerance ON_LINE = LengthTolerance.FINE;

  private final Blank blank;

  BlankRegions(Blank blank) {
    this.blank = blank;
  }

  /**
   * A region.
   *
   * @param outline its corners, with a corner wherever another line meets it
   * @param inner the outlines of what lies inside it
   */
  record Region(Polygon2 outline, List<Polygon2> inner, Polygon shape) {}

  /** All regions, bottom to top, then left to right. */
  List<Region> find() {
    Polygonizer polygonizer = polygonizer();
    refuseLoose(polygonizer);
    List<Region> regions = new ArrayList<>();
    for (Object found : polygonizer.getPolygons()) {
      Polygon shape = (Polygon) found;
      List<Polygon2> inner = new ArrayList<>();
      for (int i = 0; i < shape.getNumInteriorRing(); i++) {
        inner.add(outline(shape.getInteriorRingN(i)));
      }
      regions.add(new Region(outline(shape.getExteriorRing()), inner, shape));
    }
    regions.sort(
        Comparator.comparingDouble((Region r) -> Math.rint(r.outline().box().minY() * 1e4))
            .thenComparingDouble(r -> r.outline().box().minX())
            .thenComparingDouble(r -> r.outline().centroid().y())
            .thenComparingDouble(r -> r.outline().centroid().x()));
    return regions;
  }

  private Polygonizer polygonizer() {
    List<LineString> drawn = new ArrayList<>();
    Polygon2 edge = Polygon2.rectangle(0, 0, blank.width, blank.height);
    drawn.add(Planar.polygon(edge).getExteriorRing());
    blank.lines.forEach(l -> drawn.add(string(l.at())));
    Geometry noded =
        UnaryUnionNG.union(
            Planar.factory().buildGeometry(drawn), new PrecisionModel(Math.rint(1 / GRID.mm())));
    Polygonizer polygonizer = new Polygonizer();
    polygonizer.add(noded);
    return polygonizer;
  }

  /** The stretches of a line that lie in the region at a point, lines that end inside it or not. */
  List<Segment2> clipped(Segment2 line, Vec2 point) {
    List<Segment2> found = new ArrayList<>();
    Point at = Planar.factory().createPoint(Planar.coordinate(point));
    for (Object region : polygonizer().getPolygons()) {
      if (((Polygon) region).contains(at)) {
        Geometry in = string(line).intersection((Polygon) region);
        for (int i = 0; !in.isEmpty() && i < in.getNumGeometries(); i++) {
          Coordinate[] ends = in.getGeometryN(i).getCoordinates();
          Vec2 from = new Vec2(ends[0].x, ends[0].y);
          Vec2 to = new Vec2(ends[ends.length - 1].x, ends[ends.length - 1].y);
          if (from.distance(to) > ON_LINE.mm()) {
            found.add(new Segment2(from, to));
          }
        }
      }
    }
    return found;
  }

  /**
   * Which stretch of a line lies at a point of it: they are counted from its start, from crossing
   * to crossing.
   */
  static int stretch(Line line, Vec2 point, List<Region> regions) {
    Vec2 start = line.at().from();
    Vec2 along = line.at().direction();
    double here = point.minus(start).dot(along);
    TreeSet<Long> before = new TreeSet<>();
    for (Region region : regions) {
      for (int e = 0; e < region.outline().size(); e++) {
        Vec2 middle = region.outline().side(e).middle();
        double there = middle.minus(start).dot(along);
        if (there < here - ON_LINE.mm() && line.at().distance(middle) <= ON_LINE.mm()) {
          before.add(Math.round(there / ON_LINE.mm()));
        }
      }
    }
    return before.size();
  }

  /** Corners from the lowest left one on, so that the same lines always give the same panels. */
  private static Polygon2 outline(LinearRing ring) {
    List<Vec2> corners = new ArrayList<>(Planar.outline(ring).corners());
    Vec2 first =
        corners.stream()
            .min(Comparator.comparingDouble(Vec2::y).thenComparingDouble(Vec2::x))
            .orElseThrow();
    Collections.rotate(corners, -corners.indexOf(first));
    return new Polygon2(corners);
  }

  private void refuseLoose(Polygonizer polygonizer) {
    List<LineString> loose = new ArrayList<>();
    for (Collection<?> part : List.of(polygonizer.getDangles(), polygonizer.getCutEdges())) {
      part.forEach(l -> loose.add((LineString) l));
    }
    loose.sort(
        Comparator.comparingDouble((LineString l) -> l.getCoordinateN(0).y)
            .thenComparingDouble(l -> l.getCoordinateN(0).x));
    if (loose.isEmpty()) {
      return;
    }
    Coordinate a = loose.getFirst().getCoordinateN(0);
    Coordinate b = loose.getFirst().getCoordinateN(1);
    Vec2 middle = new Vec2((a.x + b.x) / 2, (a.y + b.y) / 2);
    Line line = lineAt(middle);
    throw new NetException(
        Message.of(
            "%s ends inside a panel: run it on to another line or to the edge of the blank",
            line.told()),
        line.site());
  }

  /** What lies at a point of a line: a cut before a score, the later before the earlier. */
  Line lineAt(Vec2 point) {
    Line best = null;
    for (Line line : blank.lines) {
      if (line.at().distance(point) <= ON_LINE.mm()
          && (best == null || !best.isCut() || line.isCut())) {
        best = line;
      }
    }
    return best;
  }

  private static LineString string(Segment2 s) {
    return Planar.factory()
        .createLineString(
            new Coordinate[] {Planar.coordinate(s.from()), Planar.coordinate(s.to())});
  }
}
