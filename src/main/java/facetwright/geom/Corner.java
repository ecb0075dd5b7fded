package facetwright.geom;

import java.io.Serializable;

/**
 * A corner of an outline, sharp or rounded by an arc that meets both its sides.
 *
 * @param at where its two sides, drawn out, meet
 * @param radius of the arc that rounds it, in mm; 0 where it is sharp
 */
public record Corner(Vec2 at, double radius) implements Serializable {
  /** A sharp one. */
  public Corner(Vec2 at) {
    this(at, 0);
  }

  public boolean isRound() {
    return radius > 0;
  }
}
