package facetwright.fold.solve;

import java.io.Serializable;

/**
 * How the closing solver works. Every tolerance is a field of its own.
 *
 * @param steps how it goes down from one start
 * @param pull what chooses the branch
 * @param starts where it starts
 * @param card what the card does
 * @param loose a score is not determined when more than this part of its motion is free; over 0
 */
public record SolverSettings(Steps steps, Pull pull, Starts starts, Card card, double loose)
    implements Serializable {
  /**
   * Misses and steps of ten to a hundred times the 1.1e-16 by which IEEE 754 lets an operation be
   * off end a search, so that it stops at what doubles can tell; the least damping lies under what
   * a search comes to by itself.
   */
  public static final SolverSettings USUAL =
      new SolverSettings(
          new Steps(1e-14, 1e-15, 1e-2, 1e-11, 100),
          new Pull(2, 0.3, 4),
          new Starts(24, 20261125L),
          new Card(0.002, 0),
          1e-4);

  /**
   * How one start is followed. Tolerances and the least damping are over 0.
   *
   * @param missTolerance the largest miss at which to stop, as part of the size of the net
   * @param stepTolerance the largest step of a point at which to stop, as part of that size
   * @param firstDamping how much a step is held back at first; equations have slopes about 1
   * @param leastDamping the least it is ever held back; it keeps the free motions of the whole
   *     still
   * @param most how many iterations at most, 1 or more
   */
  public record Steps(
      double missTolerance,
      double stepTolerance,
      double firstDamping,
      double leastDamping,
      int most)
      implements Serializable {
    /**
     * @throws IllegalArgumentException when a value is out of its range
     */
    public Steps {
      if (!(missTolerance > 0 && stepTolerance > 0 && leastDamping > 0)) {
        throw new IllegalArgumentException("tolerances and the least damping must be over 0");
      }
      if (!(firstDamping >= leastDamping) || most < 1) {
        throw new IllegalArgumentException("the first damping or the iterations are too few");
      }
    }
  }

  /**
   * The crease angles that choose the branch.
   *
   * @param weight at the first iteration, 0 or more
   * @param fade by how much it shrinks at each iteration, over 0 and up to 1
   * @param steps after so many iterations it is 0
   */
  public record Pull(double weight, double fade, int steps) implements Serializable {
    /**
     * @throws IllegalArgumentException when a value is out of its range
     */
    public Pull {
      if (!(weight >= 0 && fade > 0 && fade <= 1 && steps >= 0)) {
        throw new IllegalArgumentException("the pull or its fade is out of its range");
      }
    }

    double at(int iteration) {
      return iteration < steps ? weight * Math.pow(fade, iteration) : 0;
    }
  }

  /**
   * The starts.
   *
   * @param most how many to try, 1 or more
   * @param seed of those that are varied
   */
  public record Starts(int most, long seed) implements Serializable {
    /**
     * @throws IllegalArgumentException when a value is out of its range
     */
    public Starts {
      if (most < 1) {
        throw new IllegalArgumentException("there must be one start at least");
      }
    }
  }

  /**
   * The card.
   *
   * @param forgivenStrain what it forgives, as part of a panel's size (common practice, no source)
   * @param caliper by which a lap lies inside its panel, in mm, 0 or more
   */
  public record Card(double forgivenStrain, double caliper) implements Serializable {
    /**
     * @throws IllegalArgumentException when a value is out of its range
     */
    public Card {
      if (!(forgivenStrain >= 0 && caliper >= 0)) {
        throw new IllegalArgumentException("strain or caliper is below 0");
      }
    }
  }

  /**
   * @throws IllegalArgumentException when a value is out of its range
   */
  public SolverSettings {
    if (!(loose > 0)) {
      throw new IllegalArgumentException("what counts as loose must be over 0");
    }
  }

  /**
   * The same for a start near to where it ends: held back less at first, and given up sooner.
   *
   * @throws IllegalArgumentException when a value is out of its range
   */
  public SolverSettings nearby(double damping, double step, int iterations) {
    double least = steps.leastDamping;
    Steps fewer = new Steps(steps.missTolerance, step, Math.max(damping, least), least, iterations);
    return new SolverSettings(fewer, pull, starts, card, loose);
  }

  /** The same for card of this thickness, in mm. */
  public SolverSettings withCaliper(double mm) {
    return new SolverSettings(steps, pull, starts, new Card(card.forgivenStrain, mm), loose);
  }

  /** The same, with nothing that chooses a branch. */
  public SolverSettings withoutPull() {
    return new SolverSettings(steps, new Pull(0, 1, 0), starts, card, loose);
  }

  /** The same, with so many starts at most. */
  public SolverSettings withStarts(int most) {
    return new SolverSettings(steps, pull, new Starts(most, starts.seed), card, loose);
  }
}
