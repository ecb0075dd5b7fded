package facetwright.geom;

import java.io.Serializable;

/** A straight line from one point to another, in mm. */
public record Segment2(Vec2 from, Vec2 to) implements Serializable {
  public double length() {
    return from.distance(to);
  }

  public Vec2 middle() {
    return from.toward(to, 0.5);
  }

  public Vec2 direction() {
    return to.minus(from).unit();
  }

  public Segment2 reversed() {
    return new Segment2(to, from);
  }

  /** Shortest distance from a point to this segment, ends included. */
  public double distance(Vec2 p) {
    Vec2 d = to.minus(from);
    double square = d.dot(d);
    if (square == 0) {
      return p.distance(from);
    }
    double part = Math.clamp(p.minus(from).dot(d) / square, 0, 1);
    return p.distance(from.toward(to, part));
  }

  /** Shortest distance between two segments, ends included; 0 where they meet. */
  public double distance(Segment2 other) {
    if (crosses(other)) {
      return 0;
    }
    double mine = Math.min(other.distance(from), other.distance(to));
    return Math.min(mine, Math.min(distance(other.from), distance(other.to)));
  }

  /** Whether the ends of each lie to both sides of the other. */
  private boolean crosses(Segment2 other) {
    return Planar.orientation(from, to, other.from) * Planar.orientation(from, to, other.to) < 0
        && Planar.orientation(other.from, other.to, from)
                * Planar.orientation(other.from, other.to, to)
            < 0;
  }
}
