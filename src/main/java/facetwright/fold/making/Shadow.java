package facetwright.fold.making;

import facetwright.geom.Box2;
import facetwright.geom.ConvexOutline;
import facetwright.geom.Vec2;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * What stands in the way of something that moves along a direction: panels as they are seen along
 * it, within the outline of the whole. The widest round thing that passes between them is found by
 * best-first quartering, to {@link #WITHIN}.
 */
final class Shadow {
  /** How much narrower than the widest gap the found one may be, in mm. */
  static final double WITHIN = 0.1;

  /** So many squares are looked at; a gap found among fewer may be narrower than the widest. */
  private static final int MOST = 3_000;

  private final List<Seen> shapes;
  private final List<Vec2> around;
  private final Ring bound;
  private final CrossSection within;

  /**
   * A panel as it is seen.
   *
   * @param outer its corners, in either sense
   * @param holes what is cut out of it
   */
  record Shape(List<Vec2> outer, List<List<Vec2>> holes) {}

  /**
   * Room for something round.
   *
   * @param across how wide, in mm
   */
  record Gap(Vec2 place, double across) {}

  private record Seen(Ring outer, List<Ring> holes) {
    static Seen of(Shape shape) {
      return new Seen(new Ring(shape.outer), shape.holes.stream().map(Ring::new).toList());
    }

    boolean covers(double x, double y) {
      return outer.holds(x, y) && holes.stream().noneMatch(h -> h.holds(x, y));
    }
  }

  private record Square(Vec2 middle, double half, double room) {
    double most() {
      return room + half * Math.sqrt(2);
    }
  }

  /**
   * @param all every point of the whole, whose convex outline bounds the gap
   * @param within where the middle of the gap has to lie
   */
  Shadow(List<Shape> shapes, List<Vec2> all, CrossSection within) {
    this.within = within;
    this.shapes = shapes.stream().map(Seen::of).toList();
    this.around = ConvexOutline.of(all);
    this.bound = new Ring(around);
  }

  /** The widest gap. */
  Gap widest() {
    return widest(Double.POSITIVE_INFINITY);
  }

  /**
   * The widest gap, or one that is wide enough, whichever is found first.
   *
   * @param enough how wide that is, in mm
   */
  Gap widest(double enough) {
    if (around.size() < 3) {
      return new Gap(Vec2.ZERO, 0);
    }
    Box2 box = Box2.around(around);
    double half = Math.max(box.width(), box.height()) / 2;
    PriorityQueue<Square> open =
        new PriorityQueue<>(Comparator.comparingDouble(Square::most).reversed());
    Square best = square(box.centre(), half);
    open.add(best);
    for (int i = 0; i < MOST && !open.isEmpty() && 2 * best.room < enough; i++) {
      Square next = open.remove();
      if (next.most() < best.room + WITHIN / 2) {
        break;
      }
      double quarter = next.half / 2;
      for (int sign = 0; sign < 4; sign++) {
        double dx = (sign & 1) == 0 ? quarter : -quarter;
        double dy = (sign & 2) == 0 ? quarter : -quarter;
        Square part = square(next.middle.plus(new Vec2(dx, dy)), quarter);
        open.add(part);
        best = part.room > best.room ? part : best;
      }
    }
    return new Gap(best.middle, 2 * best.room);
  }

  private Square square(Vec2 middle, double half) {
    double room = room(middle);
    return new Square(middle, half, room > 0 && within.holds(middle) ? room : 0);
  }

  /** How far a place is from all that is in the way; 0 where it is covered. */
  private double room(Vec2 place) {
    double x = place.x();
    double y = place.y();
    if (!bound.holds(x, y)) {
      return 0;
    }
    for (Seen shape : shapes) {
      if (shape.covers(x, y)) {
        return 0;
      }
    }
    double least = bound.distance(x, y, Double.POSITIVE_INFINITY);
    for (Seen shape : shapes) {
      least = shape.outer.distance(x, y, least);
      for (Ring hole : shape.holes) {
        least = hole.distance(x, y, least);
      }
    }
    return least;
  }
}
