package facetwright.fold.place;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import java.util.List;

/**
 * How one outline lies in another, of whatever corners: turned so that sides lie along sides, and
 * moved to where there is most room.
 *
 * @param mm the room where there is least, in mm; below 0 where the inner one stands over
 * @param turn the direction onto which the inner one's first axis is turned
 * @param from a place of the inner one
 * @param to where that place goes
 */
record Room(double mm, Vec2 turn, Vec2 from, Vec2 to) {
  /** Less room, or less standing over, is none. */
  static final LengthTolerance LEAST = LengthTolerance.UNSEEN;

  /** Steps by which the best place is sought begin at this part of the outline's size. */
  private static final double FIRST_STEP = 0.05;

  private static final int STEPS = 18;

  /** Turns that differ by less, in radians, are one. */
  private static final double ONE_TURN = 1e-6;

  /** The turn with most room, and of those alike the least turn; only unturned where not free. */
  static Room of(Polygon2 outer, Polygon2 inner, boolean mayTurn) {
    Room best = turned(outer, inner, 0);
    if (mayTurn) {
      for (double angle : angles(outer, inner)) {
        Room room = turned(outer, inner, angle);
        boolean isMore = room.mm > best.mm + LEAST.mm();
        boolean isLess =
            room.mm > best.mm - LEAST.mm() && Math.abs(angle) < best.angle() - ONE_TURN;
        best = isMore || isLess ? room : best;
      }
    }
    return best.settled(outer, inner);
  }

  private double angle() {
    return Math.abs(Math.atan2(turn.y(), turn.x()));
  }

  /** The angles by which a side of the one comes to lie along a side of the other. */
  private static double[] angles(Polygon2 outer, Polygon2 inner) {
    int longest = longest(outer);
    int first = longest(inner);
    double[] angles = new double[outer.size() + inner.size()];
    for (int i = 0; i < outer.size(); i++) {
      angles[i] = between(inner.side(first), outer.side(i));
    }
    for (int i = 0; i < inner.size(); i++) {
      angles[outer.size() + i] = between(inner.side(i), outer.side(longest));
    }
    return angles;
  }

  private static double between(Segment2 a, Segment2 b) {
    Vec2 from = a.direction();
    Vec2 to = b.direction();
    return Math.atan2(from.cross(to), from.dot(to));
  }

  private static int longest(Polygon2 outline) {
    int longest = 0;
    for (int i = 1; i < outline.size(); i++) {
      if (outline.side(i).length() > outline.side(longest).length() + LEAST.mm()) {
        longest = i;
      }
    }
    return longest;
  }

  /** Middle on middle. */
  private static Room turned(Polygon2 outer, Polygon2 inner, double angle) {
    Vec2 turn = Vec2.polar(1, angle);
    Room room = new Room(0, turn, inner.centroid(), outer.centroid());
    return new Room(room.least(outer, inner), turn, room.from, room.to);
  }

  /** Moved by ever smaller steps to where there is more room. */
  @SuppressWarnings("ReferenceEquality") // Whether none was better.
  private Room settled(Polygon2 outer, Polygon2 inner) {
    Room best = this;
    double step = FIRST_STEP * Math.sqrt(outer.area());
    for (int i = 0; i < STEPS; i++) {
      Room better = best;
      for (Vec2 way :
          List.of(new Vec2(step, 0), new Vec2(-step, 0), new Vec2(0, step), new Vec2(0, -step))) {
        Room moved = new Room(0, turn, from, best.to.plus(way));
        double mm = moved.least(outer, inner);
        if (mm > better.mm + LengthTolerance.FINE.mm()) {
          better = new Room(mm, turn, from, moved.to);
        }
      }
      step = better == best ? step / 2 : step;
      best = better;
    }
    return best;
  }

  /** Where a place of the inner one goes. */
  Vec2 apply(Vec2 place) {
    return place.minus(from).turned(turn).plus(to);
  }

  private double least(Polygon2 outer, Polygon2 inner) {
    List<Vec2> laid = inner.corners().stream().map(this::apply).toList();
    return least(outer.corners(), laid);
  }

  /** The room of one outline in another, as they lie. */
  static double least(List<Vec2> outer, List<Vec2> inner) {
    double least = Double.POSITIVE_INFINITY;
    for (Vec2 corner : inner) {
      least = Math.min(least, inside(outer, corner));
    }
    for (Vec2 corner : outer) {
      least = Math.min(least, -inside(inner, corner));
    }
    return least;
  }

  /** How far inside an outline a place lies, in mm; below 0 outside. */
  static double inside(List<Vec2> outline, Vec2 place) {
    boolean within = false;
    double near = Double.POSITIVE_INFINITY;
    int n = outline.size();
    for (int i = 0, j = n - 1; i < n; j = i++) {
      double ax = outline.get(j).x();
      double ay = outline.get(j).y();
      double bx = outline.get(i).x();
      double by = outline.get(i).y();
      double px = place.x() - ax;
      double py = place.y() - ay;
      double dx = bx - ax;
      double dy = by - ay;
      double part = Math.clamp((px * dx + py * dy) / (dx * dx + dy * dy), 0, 1);
      near = Math.min(near, Math.hypot(px - part * dx, py - part * dy));
      if (ay > place.y() != by > place.y() && px < dx * py / dy) {
        within = !within;
      }
    }
    return within ? near : -near;
  }
}
