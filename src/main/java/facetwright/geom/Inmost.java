package facetwright.geom;

import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.stream.Stream;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.algorithm.RayCrossingCounter;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;

/**
 * The place of a region with the most room about it: its pole of inaccessibility. Squares over the
 * region are looked at in order of the most room they may hold, and parted in four while that beats
 * the best found (best-first quartering, as in Garcia-Castellanos and Lombardo, "Poles of
 * inaccessibility", Scottish Geographical Journal 123, 2007; from memory). It asks the sides one by
 * one, so it is for regions of tens of sides, not of thousands.
 */
final class Inmost {
  private final Polygon2 outline;
  private final List<Coordinate[]> rings;

  private Inmost(Polygon2 outline, List<Polygon2> openings) {
    this.outline = outline;
    rings = Stream.concat(Stream.of(outline), openings.stream()).map(Planar::closed).toList();
  }

  /** A square about a middle, and how much room that has; below 0 outside the region. */
  private record Square(Vec2 middle, double half, double room) {
    /** No place of the square has more room than this. */
    double most() {
      return room + half * Math.sqrt(2);
    }
  }

  /**
   * @param within how much less room than the most it may have, in mm; more than 0
   */
  static Vec2 of(Polygon2 outline, List<Polygon2> openings, double within) {
    return new Inmost(outline, openings).search(within);
  }

  private Vec2 search(double within) {
    Box2 box = outline.box();
    double half = Math.min(box.width(), box.height()) / 2;
    PriorityQueue<Square> open =
        new PriorityQueue<>(Comparator.comparingDouble(Square::most).reversed());
    for (double x = box.minX() + half; x - half < box.maxX(); x += 2 * half) {
      for (double y = box.minY() + half; y - half < box.maxY(); y += 2 * half) {
        open.add(square(x, y, half));
      }
    }
    Vec2 centroid = outline.centroid();
    Square best = square(centroid.x(), centroid.y(), 0);
    while (!open.isEmpty() && open.peek().most() - best.room() > within) {
      Square next = open.remove();
      best = next.room() > best.room() ? next : best;
      double quarter = next.half() / 2;
      for (int i = 0; i < 4; i++) {
        open.add(
            square(
                next.middle().x() + (i % 2 == 0 ? -quarter : quarter),
                next.middle().y() + (i / 2 == 0 ? -quarter : quarter),
                quarter));
      }
    }
    return best.middle();
  }

  private Square square(double x, double y, double half) {
    return new Square(new Vec2(x, y), half, room(x, y));
  }

  /** How far the nearest side is, in mm; below 0 outside the region. */
  private double room(double x, double y) {
    Coordinate place = new Coordinate(x, y);
    boolean inside = false;
    double nearest = Double.POSITIVE_INFINITY;
    for (Coordinate[] ring : rings) {
      // In the outline and in no opening: inside an odd number of rings.
      inside ^= RayCrossingCounter.locatePointInRing(place, ring) != Location.EXTERIOR;
      nearest = Math.min(nearest, Distance.pointToSegmentString(place, ring));
    }
    return inside ? nearest : -nearest;
  }
}
