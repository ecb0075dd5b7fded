package facetwright.aim;

/** One place that was tried for a task. */
final class Point {
  private final double[] x;
  private final Tried tried;
  private final double[] residuals;

  /**
   * @param residuals for each measure wanted, how far it is off, against its goal's scale; empty
   *     where there is no design here, or not every measure is known
   */
  Point(double[] x, Tried tried, double[] residuals) {
    this.x = x;
    this.tried = tried;
    this.residuals = residuals;
  }

  double x(int knob) {
    return x[knob];
  }

  double[] x() {
    return x.clone();
  }

  Tried tried() {
    return tried;
  }

  double residual(int goal) {
    return residuals[goal];
  }

  /** Whether there is a design here and every measure wanted is known. */
  boolean isKnown(int goals) {
    return tried instanceof Measured && residuals.length == goals;
  }

  /** How far all is off, 0 when there; without end where it is not known. */
  double miss() {
    if (!(tried instanceof Measured)) {
      return Double.POSITIVE_INFINITY;
    }
    double sum = 0;
    for (double r : residuals) {
      sum += r * r;
    }
    return Math.sqrt(sum);
  }
}
