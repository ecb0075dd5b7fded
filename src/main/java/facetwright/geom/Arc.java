package facetwright.geom;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;

/**
 * Part of a circle that sides of an outline stand for, one after another. Their corners lie on it;
 * between them it runs outside of the chord by at most {@link #CHORD}.
 *
 * @param first the corner at which it starts
 * @param sides how many sides stand for it, from that corner on, round and round
 * @param centre of the circle, in mm
 */
public record Arc(int first, int sides, Vec2 centre) implements Serializable {
  /** How far a side may lie off the arc that it stands for: a fifth of a thin line's width. */
  public static final LengthTolerance CHORD = new LengthTolerance(0.02);

  public Arc {
    if (first < 0 || sides < 1) {
      throw new IllegalArgumentException("an arc starts at a corner and has a side at least");
    }
  }

  /**
   * How many sides an arc needs.
   *
   * @param radius over 0, in mm
   * @param turn how far it turns in all, in radians, over 0
   */
  public static int sides(double radius, double turn) {
    // A chord lies off its arc by r(1 - cos(turn / 2)) in its middle.
    double widest = 2 * Math.acos(Math.max(0, 1 - CHORD.mm() / radius));
    return Math.max(2, (int) Math.ceil(turn / widest - RoundOff.PART));
  }

  /** Whether a side of an outline of so many is one of those that stand for it. */
  boolean has(int side, int outOf) {
    return Math.floorMod(side - first, outOf) < sides;
  }

  /** The middle of the circle that an outline is, of so many sides, where it is one. */
  public static Optional<Vec2> circle(List<Arc> arcs, int sides) {
    if (arcs.isEmpty() || arcs.stream().mapToInt(Arc::sides).sum() < sides) {
      return Optional.empty();
    }
    Vec2 centre = arcs.getFirst().centre();
    return Optional.of(centre)
        .filter(_ -> arcs.stream().allMatch(a -> LengthTolerance.FINE.same(a.centre, centre)));
  }

  Arc moved(Motion2 motion) {
    return new Arc(first, sides, motion.apply(centre));
  }
}
