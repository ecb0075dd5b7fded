package facetwright.geom;

import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.stream.Stream;

/**
 * The place of a region with the most room about it: its pole of inaccessibility. Squares over the
 * region are looked at in order of the most room they may hold, and parted in four while that beats
 * the best found (best-first quartering, as in Garcia-Castellanos and Lombardo, "Poles of
 * inaccessibility", Scottish Geographical Journal 123, 2007; from memory). It asks the sides one by
 * one, so it is for regions of tens of sides, not of thousands.
 */
final class Inmost {
  private final List<Polygon2> rings;

  private Inmost(Polygon2 outline, List<Polygon2> openings) {
    rings = Stream.concat(Stream.of(outline), openings.stream()).toList();
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
    Box2 box = rings.getFirst().box();
    double half = Math.min(box.width(), box.height()) / 2;
    PriorityQueue<Square> open =
        new PriorityQueue<>(Comparator.comparingDouble(Square::most).reversed());
    for (double x = box.minX() + half; x - half < box.maxX(); x += 2 * half) {
      for (double y = box.minY() + half; y - half < box.maxY(); y += 2 * half) {
        open.add(square(x, y, half));
      }
    }
    Vec2 centroid = rings.getFirst().centroid();
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
    boolean inside = false;
    double nearest = Double.POSITIVE_INFINITY;
    for (Polygon2 ring : rings) {
      Vec2 from = ring.corners().getLast();
      for (Vec2 to : ring.corners()) {
        boolean crosses = from.y() > y != to.y() > y;
        if (crosses && x < from.x() + (y - from.y()) / (to.y() - from.y()) * (to.x() - from.x())) {
          inside = !inside;
        }
        nearest = Math.min(nearest, squaredDistance(x, y, from, to));
        from = to;
      }
    }
    return inside ? Math.sqrt(nearest) : -Math.sqrt(nearest);
  }

  private static double squaredDistance(double x, double y, Vec2 from, Vec2 to) {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    double length = dx * dx + dy * dy;
    double along = length == 0 ? 0 : ((x - from.x()) * dx + (y - from.y()) * dy) / length;
    double on = Math.clamp(along, 0, 1);
    double offX = from.x() + on * dx - x;
    double offY = from.y() + on * dy - y;
    return offX * offX + offY * offY;
  }
}
