package facetwright.geom;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** The one door to the plane-geometry library: sure signs, and our outlines as its polygons. */
public final class Planar {
  /** How far a corner may reach, in border widths, before it is cut off. */
  private static final double MITRE_LIMIT = 10;

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private Planar() {}

  /**
   * The side of c seen along the line from a to b: 1 left, −1 right, 0 on the line. Exact for
   * double coordinates (a fast filter, then extended precision).
   */
  public static int orientation(Vec2 a, Vec2 b, Vec2 c) {
    return Orientation.index(coordinate(a), coordinate(b), coordinate(c));
  }

  public static Polygon polygon(Polygon2 outline) {
    return FACTORY.createPolygon(ring(outline));
  }

  public static Polygon polygon(Polygon2 outline, List<Polygon2> openings) {
    return FACTORY.createPolygon(
        ring(outline), openings.stream().map(Planar::ring).toArray(LinearRing[]::new));
  }

  /**
   * What is left of an outline when a border of this width is taken off all round: one or more
   * outlines with sharp corners, none when the border takes all.
   *
   * @param by 0 or more, in mm
   */
  public static List<Polygon2> inset(Polygon2 outline, double by) {
    BufferParameters sharp = new BufferParameters();
    sharp.setJoinStyle(BufferParameters.JOIN_MITRE);
    sharp.setMitreLimit(MITRE_LIMIT);
    return outlines(BufferOp.bufferOp(polygon(outline), -by, sharp));
  }

  /** Area that two outlines share, in mm². */
  public static double sharedArea(Polygon2 a, Polygon2 b) {
    return a.box().meets(b.box()) ? polygon(a).intersection(polygon(b)).getArea() : 0;
  }

  /** The outer rings of a polygon or of a collection of polygons. */
  public static List<Polygon2> outlines(Geometry geometry) {
    List<Polygon2> all = new ArrayList<>();
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      if (geometry.getGeometryN(i) instanceof Polygon p && !p.isEmpty() && p.getArea() > 0) {
        all.add(outline(p.getExteriorRing()));
      }
    }
    return all;
  }

  /** A ring as an outline, its repeated last corner dropped. */
  public static Polygon2 outline(LinearRing ring) {
    List<Vec2> corners = new ArrayList<>();
    for (int i = 0; i + 1 < ring.getNumPoints(); i++) {
      Coordinate c = ring.getCoordinateN(i);
      corners.add(new Vec2(c.x, c.y));
    }
    return Polygon2.ofEitherSense(corners);
  }

  public static Coordinate coordinate(Vec2 p) {
    return new Coordinate(p.x(), p.y());
  }

  public static GeometryFactory factory() {
    return FACTORY;
  }

  private static LinearRing ring(Polygon2 outline) {
    Coordinate[] ring = new Coordinate[outline.size() + 1];
    for (int i = 0; i <= outline.size(); i++) {
      ring[i] = coordinate(outline.corner(i));
    }
    return FACTORY.createLinearRing(ring);
  }
}
