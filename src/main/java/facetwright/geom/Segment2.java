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
}
