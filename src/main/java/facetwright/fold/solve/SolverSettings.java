package facetwright.fold.solve;

import java.io.Serializable;

/**
 * How the closing solver works. Every tolerance is a field of its own.
 *
 * @param missTolerance the largest miss at which to stop, as part of the size of the net
 * @param stepTolerance the largest step of a point at which to stop, as part of that size
 * @param firstDamping how much a step is held back at first; equations have slopes about 1
 * @param leastDamping the least it is ever held back; it keeps the free motions of the whole still
 * @param pull weight of the crease angles that choose the branch, at the first iteration
 * @param fade by how much that weight shrinks at each iteration
 * @param pullSteps after so many iterations the weight is 0
 * @param mostIterations of one start
 * @param mostStarts how many starts to try
 * @param seed of the varied starts
 * @param forgivenStrain what card forgives, as part of a panel's size (common practice, no source)
 * @param loose a score is not determined when more than this part of its motion is free
 * @param caliper by which a lap lies inside its panel, in mm
 */
public record SolverSettings(
    double missTolerance,
    double stepTolerance,
    double firstDamping,
    double leastDamping,
    double pull,
    double fade,
    int pullSteps,
    int mostIterations,
    int mostStarts,
    long seed,
    double forgivenStrain,
    double loose,
    double caliper)
    implements Serializable {
  public static final SolverSettings USUAL =
      new SolverSettings(1e-14, 1e-15, 1e-2, 1e-11, 2, 0.3, 4, 100, 24, 20261125L, 0.002, 1e-4, 0);

  /**
   * @throws IllegalArgumentException when a value is out of its range
   */
  public SolverSettings {
    if (!(missTolerance > 0 && stepTolerance > 0 && leastDamping > 0 && loose > 0)) {
      throw new IllegalArgumentException("tolerances and the least damping must be over 0");
    }
    if (!(firstDamping >= leastDamping && pull >= 0 && fade > 0 && fade <= 1 && pullSteps >= 0)) {
      throw new IllegalArgumentException("damping, pull or fade is out of its range");
    }
    if (mostIterations < 1 || mostStarts < 1 || !(forgivenStrain >= 0) || !(caliper >= 0)) {
      throw new IllegalArgumentException("iterations, starts, strain or caliper is too small");
    }
  }

  /**
   * The same for a start near to where it ends: held back less at first, and given up sooner.
   *
   * @throws IllegalArgumentException when a value is out of its range
   */
  public SolverSettings nearby(double damping, double step, int iterations) {
    return new SolverSettings(
        missTolerance,
        step,
        Math.max(damping, leastDamping),
        leastDamping,
        pull,
        fade,
        pullSteps,
        iterations,
        mostStarts,
        seed,
        forgivenStrain,
        loose,
        caliper);
  }

  /** The same for card of this thickness, in mm. */
  public SolverSettings withCaliper(double mm) {
    return new SolverSettings(
        missTolerance,
        stepTolerance,
        firstDamping,
        leastDamping,
        pull,
        fade,
        pullSteps,
        mostIterations,
        mostStarts,
        seed,
        forgivenStrain,
        loose,
        mm);
  }

  /** The same, with so many starts at most. */
  public SolverSettings withStarts(int most) {
    return new SolverSettings(
        missTolerance,
        stepTolerance,
        firstDamping,
        leastDamping,
        pull,
        fade,
        pullSteps,
        mostIterations,
        most,
        seed,
        forgivenStrain,
        loose,
        caliper);
  }

  double pullAt(int iteration) {
    return iteration < pullSteps ? pull * Math.pow(fade, iteration) : 0;
  }
}
