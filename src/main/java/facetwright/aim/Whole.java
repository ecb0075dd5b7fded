package facetwright.aim;

import facetwright.measure.Quantity;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds the knobs that take whole numbers only although nobody has given them steps, such as a
 * number of columns: beside where they stand there is no design, one further there is.
 */
final class Whole {
  private Whole() {}

  /**
   * The same knobs, those that take whole numbers only with steps of 1.
   *
   * @param part which part of its range a knob is turned to find out
   */
  static List<Knob> found(List<Knob> knobs, Counted counted, double part) {
    List<Knob> all = new ArrayList<>();
    for (int i = 0; i < knobs.size(); i++) {
      Knob knob = knobs.get(i);
      double aside = part * knob.range();
      boolean takesWhole =
          mayCount(knob)
              && !isDesign(knobs, i, knob.now() + aside, counted)
              && !isDesign(knobs, i, knob.now() - aside, counted)
              && (isDesign(knobs, i, knob.now() + 1, counted)
                  || isDesign(knobs, i, knob.now() - 1, counted));
      all.add(takesWhole ? knob.inStepsOf(1) : knob);
    }
    return all;
  }

  private static boolean mayCount(Knob knob) {
    return !knob.isStepped()
        && knob.counts() == Quantity.NUMBER
        && knob.now() == Math.rint(knob.now())
        && knob.from() == Math.rint(knob.from());
  }

  private static boolean isDesign(List<Knob> knobs, int knob, double value, Counted counted) {
    double[] x = knobs.stream().mapToDouble(Knob::now).toArray();
    x[knob] = value;
    return value >= knobs.get(knob).from()
        && value <= knobs.get(knob).to()
        && counted.at(x) instanceof Measured;
  }
}
