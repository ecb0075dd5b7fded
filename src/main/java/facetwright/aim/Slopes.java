package facetwright.aim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What each dial does to each measure, near where the dials stand.
 *
 * @param now what the design measures
 * @param all one for each knob, in order
 * @param trials how many designs were made to find out
 */
public record Slopes(Measured now, List<OfKnob> all, int trials) {
  public Slopes {
    all = List.copyOf(all);
  }

  /**
   * What one knob does.
   *
   * @param knob the knob
   * @param slopes for each measure that is known here and beside it
   */
  public record OfKnob(Knob knob, List<Slope> slopes) {
    public OfKnob {
      slopes = List.copyOf(slopes);
    }

    public Optional<Slope> of(Measure measure) {
      return slopes.stream().filter(s -> s.measure() == measure).findFirst();
    }

    /** By how much a measure changes, to first order, when the knob is turned up by {@code by}. */
    public Optional<Double> effect(Measure measure, double by) {
      double units = knob.isStepped() ? by / knob.step() : by;
      return of(measure).map(s -> s.value() * units);
    }
  }

  /**
   * Finds the slopes.
   *
   * @param now what the design measures with each knob where it stands
   * @param trial makes it with the knobs elsewhere; some four times a knob
   */
  public static Slopes of(List<Knob> knobs, Measured now, Trial trial) {
    Counted counted = new Counted(trial, Integer.MAX_VALUE);
    double[] here = knobs.stream().mapToDouble(Knob::now).toArray();
    counted.learn(here, now);
    List<OfKnob> all = new ArrayList<>();
    for (Knob knob : Whole.found(knobs, counted, SlopeFinder.PART)) {
      all.add(new OfKnob(knob, new SlopeFinder(knob, all.size(), here, counted).find()));
    }
    return new Slopes(now, all, counted.count());
  }
}
