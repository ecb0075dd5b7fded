package facetwright.fold.pose;

import facetwright.geom.Motion3;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.Join;
import facetwright.net.Net;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * How far panels are from lying on each other as a lap asks: in the plane of the one over, a
 * caliper inside it, and on it, so that glue holds. One that lies in that plane, but beside,
 * misses.
 */
public final class Laps {
  /**
   * What two panels share has to be about so wide to be glued, in mm; common practice, no source.
   */
  public static final double HOLD = 1;

  private Laps() {}

  /**
   * Whether a lap misses most for lying beside its panel, or so little on it that nothing holds.
   */
  public static boolean isBeside(Net net, FoldedForm form, Join.Lap lap) {
    List<Vec3> corners = seen(net, form.poses(), lap);
    double aside = aside(net, lap, corners);
    return aside > 0 && aside >= off(corners, 0);
  }

  /** How far a lap {@link #miss misses} where its panels stand in these poses. */
  static double missAt(Net net, List<Motion3> poses, Join.Lap lap, double caliper) {
    return miss(net, lap, seen(net, poses, lap), caliper);
  }

  /**
   * The farthest that a corner of the panel under stands off where it lies on the panel over, which
   * counts both their distance and a slant. Nearer than a caliper is no miss, since scores are
   * reckoned without thickness and give by as much. Where the two do not share enough to be glued,
   * how far the middle of the one is from the other, if that is more.
   *
   * @param corners of the panel under as the panel over sees them, its outside along z
   * @param caliper the thickness of the design's card, in mm; parts may have others
   */
  public static double miss(Net net, Join.Lap lap, List<Vec3> corners, double caliper) {
    return Math.max(
        off(corners, net.parts().caliperAt(lap.over(), caliper)), aside(net, lap, corners));
  }

  /** How far the corners stand off, outside or more than a caliper inside. */
  private static double off(List<Vec3> corners, double caliper) {
    return corners.stream()
        .mapToDouble(p -> Math.max(p.z(), -caliper - p.z()))
        .reduce(0, Math::max);
  }

  private static List<Vec3> seen(Net net, List<Motion3> poses, Join.Lap lap) {
    Motion3 pose = poses.get(lap.under()).then(poses.get(lap.over()).inverse());
    // A tongue lies outside: seen from there it is as any other.
    double up = lap.hold() == Join.Hold.TONGUE ? -1 : 1;
    return net.panels().get(lap.under()).outline().corners().stream()
        .map(pose::apply)
        .map(c -> new Vec3(c.x(), c.y(), up * c.z()))
        .toList();
  }

  /** How far the one lies beside the other; 0 where the two share enough to be glued. */
  public static double aside(Net net, Join.Lap lap, List<Vec3> corners) {
    Polygon2 over = net.panels().get(lap.over()).outline();
    List<Vec2> flat = corners.stream().map(p -> new Vec2(p.x(), p.y())).toList();
    Geometry host = Planar.polygon(over);
    Geometry under = Planar.factory().createPolygon(ring(flat));
    if (!under.isValid()) {
      // On edge it has no width to lie with.
      under =
          Planar.factory()
              .createLineString(flat.stream().map(Planar::coordinate).toArray(Coordinate[]::new))
              .convexHull();
    }
    double held = 0;
    if (under.getEnvelopeInternal().intersects(host.getEnvelopeInternal())) {
      held = width(OverlayNGRobust.overlay(under, host, OverlayNG.INTERSECTION));
    }
    double own = width(Planar.polygon(net.panels().get(lap.under()).outline()));
    if (held >= Math.min(HOLD, Math.min(own, width(host)) / 2)) {
      return 0;
    }
    double away = host.distance(under.getCentroid());
    return Math.max(away, own / 2);
  }

  /** About how wide a region is: exact for a long strip, half of it for a square. */
  private static double width(Geometry region) {
    double round = region.getLength();
    return round == 0 ? 0 : 2 * region.getArea() / round;
  }

  private static Coordinate[] ring(List<Vec2> corners) {
    Coordinate[] ring = new Coordinate[corners.size() + 1];
    for (int i = 0; i <= corners.size(); i++) {
      ring[i] = Planar.coordinate(corners.get(i % corners.size()));
    }
    return ring;
  }
}
