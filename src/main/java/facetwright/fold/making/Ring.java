package facetwright.fold.making;

import facetwright.geom.RoundOff;
import facetwright.geom.Vec2;
import java.util.List;

/**
 * A closed outline laid out to be asked often how far places are from it: numbers only, so that
 * nothing is made on the way.
 */
final class Ring {
  private final double[] x;
  private final double[] y;

  /**
   * @param corners in either sense; at least one
   */
  Ring(List<Vec2> corners) {
    this.x = corners.stream().mapToDouble(Vec2::x).toArray();
    this.y = corners.stream().mapToDouble(Vec2::y).toArray();
  }

  /** Whether a place lies within, by how often a ray from it crosses the outline. */
  boolean holds(double px, double py) {
    boolean in = false;
    int from = x.length - 1;
    for (int to = 0; to < x.length; to++) {
      if (y[from] > py != y[to] > py
          && px < x[from] + (py - y[from]) / (y[to] - y[from]) * (x[to] - x[from])) {
        in = !in;
      }
      from = to;
    }
    return in;
  }

  /** How far a place is from the outline, in mm, or a limit where that is less. */
  double distance(double px, double py, double limit) {
    double least = limit;
    int from = x.length - 1;
    for (int to = 0; to < x.length; to++) {
      double dx = x[to] - x[from];
      double dy = y[to] - y[from];
      double square = dx * dx + dy * dy;
      double part =
          square == 0 ? 0 : Math.clamp(((px - x[from]) * dx + (py - y[from]) * dy) / square, 0, 1);
      double offX = px - (x[from] + dx * part);
      double offY = py - (y[from] + dy * part);
      // Roots are dear; only what may come out nearer is worth one.
      if (offX * offX + offY * offY <= least * least * (1 + RoundOff.PART)) {
        least = Math.min(least, Math.hypot(offX, offY));
      }
      from = to;
    }
    return least;
  }
}
