package facetwright.geom;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.valid.IsValidOp;

/** The one door to the plane-geometry library: sure signs, and our outlines as its polygons. */
public final class Planar {
  /** How far a corner may reach, in border widths, before it is cut off. */
  private static final double MITRE_LIMIT = 10;

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private static final PrecisionModel GRID = new PrecisionModel(1e9);

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

  /** Where an outline through these corners crosses or touches itself; empty where it is simple. */
  public static Optional<Vec2> selfContact(List<Vec2> corners) {
    Coordinate[] closed = new Coordinate[corners.size() + 1];
    Arrays.setAll(closed, i -> coordinate(corners.get(i % corners.size())));
    return Optional.ofNullable(new IsValidOp(FACTORY.createPolygon(closed)).getValidationError())
        .map(e -> new Vec2(e.getCoordinate().x, e.getCoordinate().y));
  }

  public static Polygon polygon(Polygon2 outline, List<Polygon2> openings) {
    return FACTORY.createPolygon(
        ring(outline), openings.stream().map(Planar::ring).toArray(LinearRing[]::new));
  }

  /**
   * What is left of an outline when a border of this width is taken off all round: one or more
   * outlines with sharp corners, none when the border takes all. Arcs stay arcs while none of them
   * and no side is gone.
   *
   * @param by 0 or more, in mm
   */
  public static List<Polygon2> inset(Polygon2 outline, double by) {
    if (!outline.arcs().isEmpty()) {
      Optional<Polygon2> round = RoundCorners.setOff(outline, -by);
      if (round.isPresent()) {
        return List.of(round.get());
      }
    }
    if (outline.isConvex()) {
      return ConvexInset.of(outline, by).stream().toList();
    }
    BufferParameters sharp = new BufferParameters();
    sharp.setJoinStyle(BufferParameters.JOIN_MITRE);
    sharp.setMitreLimit(MITRE_LIMIT);
    return outlines(BufferOp.bufferOp(polygon(outline), -by, sharp));
  }

  /** The width from which on a border taken off all round leaves nothing, in mm, to 1e-3. */
  public static double mostInset(Polygon2 outline) {
    double left = 0;
    double none = Math.sqrt(outline.area() / Math.PI) + 1e-3;
    while (none - left > 1e-3) {
      double middle = (left + none) / 2;
      if (inset(outline, middle).isEmpty()) {
        none = middle;
      } else {
        left = middle;
      }
    }
    return none;
  }

  /** How far the farthest place of an outline lies outside another, in mm; 0 where none does. */
  public static double past(Polygon2 inner, Polygon2 outer) {
    Polygon card = polygon(outer);
    return inner.corners().stream()
        .mapToDouble(c -> card.distance(FACTORY.createPoint(new Coordinate(c.x(), c.y()))))
        .max()
        .orElse(0);
  }

  /** Whether a circle of this radius, in mm, lies in a region somewhere. */
  public static boolean hasRoom(Polygon2 outline, List<Polygon2> openings, double radius) {
    return (openings.isEmpty() && outline.isConvex())
        ? ConvexInset.of(outline, radius).isPresent()
        : !BufferOp.bufferOp(polygon(outline, openings), -radius).isEmpty();
  }

  /**
   * A place of a region with nearly the most room about it; in a convex one without openings the
   * middle of them where there are more.
   *
   * @param openings clear of each other and of the outline
   * @param within how much less room than the most it may have, in mm; more than 0
   */
  public static Vec2 inmost(Polygon2 outline, List<Polygon2> openings, double within) {
    return (openings.isEmpty() && outline.isConvex())
        ? ConvexInset.inmost(outline, within)
        : PoleOfInaccessibility.of(outline, openings, within);
  }

  /** How much of a line lies in an outline, in mm. */
  public static double sharedLength(Segment2 line, Polygon2 outline) {
    Coordinate[] ends = {coordinate(line.from()), coordinate(line.to())};
    return OverlayNGRobust.overlay(
            FACTORY.createLineString(ends), polygon(outline), OverlayNG.INTERSECTION)
        .getLength();
  }

  /**
   * All that any of some outlines covers. What crosses itself, as the shadow of a ring that is not
   * flat may, is first taken apart where it does.
   */
  public static Geometry union(List<Polygon2> outlines) {
    List<Geometry> sound =
        outlines.stream()
            .map(o -> o.isSimple() ? polygon(o) : GeometryFixer.fix(polygon(o)))
            .toList();
    return OverlayNGRobust.union(FACTORY.buildGeometry(sound));
  }

  /** Area that two outlines share, in mm²; see {@link #sharedArea(Polygon, Polygon)}. */
  public static double sharedArea(Polygon2 a, Polygon2 b) {
    return PartingSides.isApart(a, b) ? 0 : sharedArea(polygon(a), polygon(b));
  }

  /**
   * Area that two regions share, in mm². Corners are brought onto a grid of 1e-9 mm about the first
   * one first, on which the overlay can't go astray where sides nearly coincide; the area is off by
   * that much along the outline.
   */
  public static double sharedArea(Polygon a, Polygon b) {
    Coordinate o = a.getCoordinate();
    AffineTransformation near = AffineTransformation.translationInstance(-o.x, -o.y);
    return OverlayNG.overlay(near.transform(a), near.transform(b), OverlayNG.INTERSECTION, GRID)
        .getArea();
  }

  /** A shape turned and shifted. */
  public static Geometry moved(Geometry shape, Motion2 by) {
    return new AffineTransformation(
            by.cos(), -by.sin(), by.shift().x(), by.sin(), by.cos(), by.shift().y())
        .transform(shape);
  }

  /** The outer rings of a polygon or of a collection of polygons, as far as they have a width. */
  public static List<Polygon2> outlines(Geometry geometry) {
    List<Polygon2> all = new ArrayList<>();
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      if (geometry.getGeometryN(i) instanceof Polygon p && !p.isEmpty() && p.getArea() > 0) {
        Polygon2.wide(outline(p.getExteriorRing()).corners()).ifPresent(all::add);
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
    return FACTORY.createLinearRing(closed(outline));
  }

  /** The corners, the first again at the end. */
  static Coordinate[] closed(Polygon2 outline) {
    Coordinate[] ring = new Coordinate[outline.size() + 1];
    for (int i = 0; i <= outline.size(); i++) {
      ring[i] = coordinate(outline.corner(i));
    }
    return ring;
  }
}
