package facetwright.aim;

/**
 * How a measure changes with a knob: its derivative, or its change by one step up where the knob
 * has steps.
 *
 * @param measure what changes
 * @param value in mm, mm² or mm³ for one of the knob's own numbers, or for one step
 * @param error how far off the value may be; as large as the value itself where it jumps or bends
 *     sharply here
 */
public record Slope(Measure measure, double value, double error) {
  private static final double UNSTEADY = 0.1;

  /** Unsure by no more, in its own units, a slope is sure enough: no turn of a dial shows it. */
  private static final double NOTHING = 1e-6;

  /** Whether the value can be relied on to say what a small turn does. */
  public boolean isSteady() {
    return error <= UNSTEADY * Math.abs(value) || error <= NOTHING;
  }
}
