package facetwright.geom;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.stream.Stream;

/**
 * The place of a region with the most room about it: its pole of inaccessibility. Squares over the
 * region are looked at in order of the most room they may hold, and parted in four while that beats
 * the best found (best-first quartering, as in Garcia-Castellanos and Lombardo, "Poles of
 * inaccessibility", Scottish Geographical Journal 123, 2007; from memory). A square hands on to its
 * quarters only the sides that may be the nearest to a place in it or lie level with it, so that a
 * region of thousands of sides takes little longer than the squares near its best places.
 */
final class PoleOfInaccessibility {
  private static final double HALF_DIAGONAL = Math.sqrt(2);
  private final List<Polygon2> rings;

  private PoleOfInaccessibility(Polygon2 outline, List<Polygon2> openings) {
    rings = Stream.concat(Stream.of(outline), openings.stream()).toList();
  }

  private record Side(Vec2 from, Vec2 to) {}

  /**
   * A square about a middle, and how much room that has; below 0 outside the region.
   *
   * @param near the sides of which one is the nearest to each place in it
   * @param level the sides that a line level with a place in it may cross
   */
  private record Square(Vec2 middle, double half, double room, List<Side> near, List<Side> level) {
    /** No place of the square has more room than this. */
    double most() {
      return room + half * HALF_DIAGONAL;
    }
  }

  /**
   * @param within how much less room than the most it may have, in mm; more than 0
   */
  static Vec2 of(Polygon2 outline, List<Polygon2> openings, double within) {
    return new PoleOfInaccessibility(outline, openings).search(within);
  }

  private Vec2 search(double within) {
    List<Side> sides = new ArrayList<>();
    for (Polygon2 ring : rings) {
      Vec2 from = ring.corners().getLast();
      for (Vec2 to : ring.corners()) {
        sides.add(new Side(from, to));
        from = to;
      }
    }
    Box2 box = rings.getFirst().box();
    double half = Math.min(box.width(), box.height()) / 2;
    PriorityQueue<Square> open =
        new PriorityQueue<>(Comparator.comparingDouble(Square::most).reversed());
    for (double x = box.minX() + half; x - half < box.maxX(); x += 2 * half) {
      for (double y = box.minY() + half; y - half < box.maxY(); y += 2 * half) {
        open.add(square(x, y, half, sides, sides));
      }
    }
    Vec2 centroid = rings.getFirst().centroid();
    Square best = square(centroid.x(), centroid.y(), 0, sides, sides);
    while (!open.isEmpty() && open.peek().most() - best.room() > within) {
      Square next = open.remove();
      best = next.room() > best.room() ? next : best;
      double quarter = next.half() / 2;
      for (int i = 0; i < 4; i++) {
        open.add(
            square(
                next.middle().x() + (i % 2 == 0 ? -quarter : quarter),
                next.middle().y() + (i / 2 == 0 ? -quarter : quarter),
                quarter,
                next.near(),
                next.level()));
      }
    }
    return best.middle();
  }

  /** Tells its room, and keeps of the sides what its quarters need. */
  private static Square square(double x, double y, double half, List<Side> near, List<Side> level) {
    double[] squared = new double[near.size()];
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < squared.length; i++) {
      squared[i] = squaredDistance(x, y, near.get(i).from, near.get(i).to);
      nearest = Math.min(nearest, squared[i]);
    }
    // A place of the square lies half a diagonal off, and has its nearest side that much farther.
    double reach = (Math.sqrt(nearest) + 2 * half * HALF_DIAGONAL) * (1 + RoundOff.PART);
    List<Side> kept = new ArrayList<>();
    for (int i = 0; i < squared.length; i++) {
      if (squared[i] <= reach * reach) {
        kept.add(near.get(i));
      }
    }
    boolean inside = false;
    List<Side> beside = new ArrayList<>();
    for (Side side : level) {
      Vec2 from = side.from;
      Vec2 to = side.to;
      boolean crosses = from.y() > y != to.y() > y;
      if (crosses && x < from.x() + (y - from.y()) / (to.y() - from.y()) * (to.x() - from.x())) {
        inside = !inside;
      }
      if (Math.min(from.y(), to.y()) <= y + half && Math.max(from.y(), to.y()) >= y - half) {
        beside.add(side);
      }
    }
    double room = Math.sqrt(nearest);
    return new Square(new Vec2(x, y), half, inside ? room : -room, kept, beside);
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
