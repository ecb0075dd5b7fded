package facetwright.net.blank;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.message.Message;
import facetwright.net.Ask;
import facetwright.net.NetException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
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
    List<LineString> drawn = new ArrayList<>();
    Polygon2 edge = Polygon2.rectangle(0, 0, blank.width, blank.height);
    drawn.add(Planar.polygon(edge).getExteriorRing());
    blank.lines.forEach(l -> drawn.add(string(l.at())));
    Geometry noded =
        UnaryUnionNG.union(
            Planar.factory().buildGeometry(drawn), new PrecisionModel(Math.rint(1 / GRID.mm())));
    Polygonizer polygonizer = new Polygonizer();
    polygonizer.add(noded);
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
    Blank.Line line = lineAt(middle);
    throw new NetException(
        Message.of(
            "the %s from %s to %s ends inside a panel: run it on to another line or to the edge of"
                + " the blank",
            line.isCut() ? "cut" : "score", Ask.place(line.at().from()), Ask.place(line.at().to())),
        line.site());
  }

  /** What lies at a point of a line: a cut before a score, the later before the earlier. */
  Blank.Line lineAt(Vec2 point) {
    Blank.Line best = null;
    for (Blank.Line line : blank.lines) {
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
