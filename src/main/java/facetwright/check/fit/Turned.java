package facetwright.check.fit;

import facetwright.geom.Peak;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import java.util.function.DoubleFunction;

/**
 * How an outline without inward corners goes round another of whatever corners, turned by a half
 * degree at a time and moved to where there is most room.
 *
 * @param room on the side where there is least, in mm; below 0 where the inner one stands over
 * @param turn the direction that the inner one's first axis is turned to
 * @param finer how much more there could be between two of those turns, in mm
 */
record Turned(double room, Vec2 turn, double finer) {
  private static final int TURNS = 720;

  /** Thirds by which the best place is found: what is left of the reach is less than 1e-4 of it. */
  private static final int THIRDS = 24;

  private static final int HALVINGS = 24;

  /** The turn with most room; an outline with an inward corner has none. */
  static Turned of(Polygon2 outer, Polygon2 inner) {
    Turned best = new Turned(Double.NEGATIVE_INFINITY, new Vec2(1, 0), 0);
    if (!outer.isConvex()) {
      return best;
    }
    Vec2 middle = inner.centroid();
    double far = inner.corners().stream().mapToDouble(c -> c.distance(middle)).max().orElseThrow();
    double finer = far * Math.PI / TURNS;
    for (int i = 0; i < TURNS; i++) {
      Vec2 turn = Vec2.polar(1, 2 * Math.PI * i / TURNS);
      double room = room(outer, inner, turn);
      if (room > best.room()) {
        best = new Turned(room, turn, finer);
      }
    }
    return best;
  }

  /**
   * How many times as large the outer one has to be for so much room, turned like this.
   *
   * @param outer the outline made so many times as large
   */
  double times(DoubleFunction<Polygon2> outer, Polygon2 inner, double wanted) {
    double low = 0.1;
    double high = 100;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      boolean isEnough = room(outer.apply(middle), inner, turn) >= wanted;
      low = isEnough ? low : middle;
      high = isEnough ? middle : high;
    }
    return Math.ceil(1e4 * high) / 1e4;
  }

  /** The least room is a concave function of where the inner one lies. */
  private static double room(Polygon2 outer, Polygon2 inner, Vec2 turn) {
    int n = outer.size();
    Vec2 middle = inner.centroid();
    Vec2[] inward = new Vec2[n];
    double[] least = new double[n];
    double reach = 0;
    for (int i = 0; i < n; i++) {
      Segment2 side = outer.side(i);
      inward[i] = side.direction().left();
      least[i] = Double.POSITIVE_INFINITY;
      for (Vec2 corner : inner.corners()) {
        Vec2 at = corner.minus(middle).turned(turn).plus(outer.centroid());
        least[i] = Math.min(least[i], at.minus(side.from()).dot(inward[i]));
      }
      reach = Math.max(reach, Math.abs(least[i]));
    }
    return Peak.within(reach, THIRDS, (x, y) -> at(inward, least, x, y));
  }

  private static double at(Vec2[] inward, double[] least, double x, double y) {
    double min = Double.POSITIVE_INFINITY;
    for (int i = 0; i < inward.length; i++) {
      min = Math.min(min, least[i] + inward[i].x() * x + inward[i].y() * y);
    }
    return min;
  }
}
