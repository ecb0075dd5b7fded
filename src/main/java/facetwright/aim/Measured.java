package facetwright.aim;

import facetwright.net.sheet.SheetSize;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * What a design measures.
 *
 * @param values the measures that are known; lengths in mm, areas in mm², volumes in mm³
 * @param lie how the net lies on sheets of a size
 * @param ring how far copies miss seating flush, as {@link Goal.Ring} says; empty where no two of
 *     its sides can meet
 */
public record Measured(
    Map<Measure, Double> values,
    Function<SheetSize, Lie> lie,
    Function<Goal.Ring, Optional<Double>> ring)
    implements Tried {
  public Measured {
    values = Map.copyOf(values);
  }

  /** False where the form is not solved, so that nobody can tell. */
  public boolean knows(Measure measure) {
    return values.containsKey(measure);
  }

  /**
   * @throws IllegalArgumentException when the measure is not known
   */
  public double get(Measure measure) {
    Double value = values.get(measure);
    if (value == null) {
      throw new IllegalArgumentException("the " + measure.word() + " is not known");
    }
    return value;
  }
}
