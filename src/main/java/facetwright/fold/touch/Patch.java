package facetwright.fold.touch;

import facetwright.geom.Planar;
import facetwright.geom.Vec3;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * A plane in which folded panels lie, with its own two directions, square to each other.
 *
 * @param origin a point of it
 * @param x a direction in it, length 1
 * @param y the other, length 1
 */
record Patch(Vec3 origin, Vec3 x, Vec3 y) {
  /**
   * Where a panel reaches across a line.
   *
   * @param left how far it reaches to the side of y, in mm
   * @param right how far to the other
   * @param length of the stretch, in mm
   * @param middle of the stretch
   */
  record Across(double left, double right, double length, Vec3 middle) {}

  static Patch of(PosedPanel panel) {
    Vec3 along = panel.outline().get(1).minus(panel.anchor()).unit();
    return new Patch(panel.anchor(), along, panel.normal().cross(along));
  }

  /** Whether panels of this plane share a place wider than this, in mm. */
  boolean share(List<PosedPanel> panels, double by) {
    Geometry common = polygon(panels.getFirst());
    for (PosedPanel panel : panels.subList(1, panels.size())) {
      Polygon next = polygon(panel);
      if (!common.getEnvelopeInternal().intersects(next.getEnvelopeInternal())) {
        return false;
      }
      common = OverlayNGRobust.overlay(common, next, OverlayNG.INTERSECTION);
    }
    return 2 * common.getArea() > by * common.getLength();
  }

  /** Whether what of this plane's panel lies over another's is as near as this to it, in mm. */
  boolean isNear(PosedPanel own, PosedPanel other, double by) {
    Polygon card = polygon(own);
    Polygon next = polygon(other);
    if (!card.getEnvelopeInternal().intersects(next.getEnvelopeInternal())) {
      return false;
    }
    Geometry common = OverlayNGRobust.overlay(card, next, OverlayNG.INTERSECTION);
    if (2 * common.getArea() <= by * common.getLength()) {
      return false;
    }
    for (Coordinate c : common.getCoordinates()) {
      if (Math.abs(other.above(origin.plus(x.times(c.x)).plus(y.times(c.y)))) > by) {
        return false;
      }
    }
    return true;
  }

  /**
   * Where a panel reaches farthest across the line that begins at the origin and runs along x.
   *
   * @param length of the line, in mm
   * @param by reaching across by no more than this is none, in mm
   */
  Optional<Across> across(double length, PosedPanel panel, double by) {
    Polygon card = polygon(panel);
    Envelope box = card.getEnvelopeInternal();
    boolean isBeside = Math.min(box.getMaxX(), length) - Math.max(box.getMinX(), 0) <= by;
    if (isBeside || box.getMaxY() <= by || box.getMinY() >= -by) {
      return Optional.empty();
    }
    Geometry met =
        OverlayNGRobust.overlay(
            Planar.factory()
                .createLineString(
                    new Coordinate[] {new Coordinate(0, 0), new Coordinate(length, 0)}),
            card,
            OverlayNG.INTERSECTION);
    Optional<Across> most = Optional.empty();
    for (int i = 0; i < met.getNumGeometries(); i++) {
      Envelope part = met.getGeometryN(i).getEnvelopeInternal();
      if (part.getWidth() <= by) {
        continue;
      }
      double left = reach(card, part, 1);
      double right = reach(card, part, -1);
      boolean is = left > by && right > by;
      if (is && most.stream().allMatch(m -> Math.min(m.left, m.right) < Math.min(left, right))) {
        Vec3 middle = origin.plus(x.times((part.getMinX() + part.getMaxX()) / 2));
        most = Optional.of(new Across(left, right, part.getWidth(), middle));
      }
    }
    return most;
  }

  /** How far card reaches to one side of the line, over a stretch of it; up is 1 or −1. */
  private static double reach(Polygon card, Envelope part, int up) {
    Coordinate[] ring = card.getExteriorRing().getCoordinates();
    double most = 0;
    for (int i = 1; i < ring.length; i++) {
      Coordinate a = ring[i - 1];
      Coordinate b = ring[i];
      if (Math.max(a.x, b.x) >= part.getMinX() && Math.min(a.x, b.x) <= part.getMaxX()) {
        most = Math.max(most, up * at(a, b, Math.clamp(a.x, part.getMinX(), part.getMaxX())));
        most = Math.max(most, up * at(a, b, Math.clamp(b.x, part.getMinX(), part.getMaxX())));
      }
    }
    return most;
  }

  /** How high a side runs at a place along the line, of an upright one its one end. */
  private static double at(Coordinate a, Coordinate b, double x) {
    return a.x == b.x ? (x == a.x ? a.y : b.y) : a.y + (b.y - a.y) * (x - a.x) / (b.x - a.x);
  }

  private Polygon polygon(PosedPanel panel) {
    List<LinearRing> rings = panel.rings().stream().map(this::ring).toList();
    return Planar.factory()
        .createPolygon(rings.getFirst(), rings.subList(1, rings.size()).toArray(LinearRing[]::new));
  }

  private LinearRing ring(List<Vec3> corners) {
    Coordinate[] ring = new Coordinate[corners.size() + 1];
    for (int i = 0; i <= corners.size(); i++) {
      Vec3 at = corners.get(i % corners.size()).minus(origin);
      ring[i] = new Coordinate(at.dot(x), at.dot(y));
    }
    return Planar.factory().createLinearRing(ring);
  }
}
