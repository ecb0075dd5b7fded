package facetwright.aim;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Tells which knobs are lengths of the form, where nobody has said so.
 *
 * <p>When all lengths of a form grow by a part, its height, width and depth grow by as much and its
 * volume by three times as much, while angles and counts stay. So by Euler's theorem on homogeneous
 * functions (from memory) the slopes of its length knobs, each times where the knob stands, add up
 * to the measure itself, or three times the volume. A knob that is an angle spoils the sum.
 *
 * <p>It does not see lengths that no measure of the form goes by, such as a tab's, and counts them
 * as lengths; nor what a script writes as a number of its own, which may leave no knobs that fit.
 */
public final class Lengths {
  private static final List<Measure> FORM =
      List.of(Measure.HEIGHT, Measure.WIDTH, Measure.DEPTH, Measure.VOLUME);

  /** How well a slope tells that lengths follow a size in proportion, as a part. */
  private static final double NEAR = 5e-3;

  private static final int MOST = 12;

  private Lengths() {}

  /** The knobs without steps that are lengths; all of them where that can't be told. */
  public static List<Knob> among(Slopes slopes) {
    List<Slopes.OfKnob> smooth =
        slopes.all().stream().filter(s -> !s.knob().isStepped() && s.knob().mayBeLength()).toList();
    List<Knob> knobs = smooth.stream().map(Slopes.OfKnob::knob).toList();
    if (knobs.size() > MOST) {
      return knobs;
    }
    List<List<Slopes.OfKnob>> groups = new ArrayList<>();
    for (int bits = 1; bits < 1 << knobs.size(); bits++) {
      List<Slopes.OfKnob> group = new ArrayList<>();
      for (int i = 0; i < knobs.size(); i++) {
        if ((bits >> i & 1) == 1) {
          group.add(smooth.get(i));
        }
      }
      groups.add(group);
    }
    return groups.stream()
        .filter(g -> addUp(slopes.now(), g))
        .max(Comparator.comparingInt(List::size))
        .map(g -> g.stream().map(Slopes.OfKnob::knob).toList())
        .orElse(knobs);
  }

  /**
   * Whether a step of a knob widens or heightens the net by that step, or twice that: so a number
   * with steps is told from a count.
   *
   * @param mm of one of the knob's own units
   */
  public static boolean isLengthOfNet(Slopes.OfKnob of, double mm) {
    double step = of.knob().step() * mm;
    for (Measure measure : List.of(Measure.NET_WIDTH, Measure.NET_HEIGHT)) {
      double by = Math.abs(of.of(measure).map(Slope::value).orElse(0.0));
      if (Math.abs(by - step) <= NEAR * step || Math.abs(by - 2 * step) <= NEAR * step) {
        return true;
      }
    }
    return false;
  }

  private static boolean addUp(Measured now, List<Slopes.OfKnob> group) {
    boolean any = false;
    for (Measure measure : FORM) {
      if (!now.knows(measure) || now.get(measure) == 0) {
        continue;
      }
      any = true;
      double sum = 0;
      for (Slopes.OfKnob of : group) {
        double part = of.of(measure).map(Slope::value).orElse(Double.NaN);
        sum += part * of.knob().now();
      }
      double wanted = measure.power() * now.get(measure);
      if (!(Math.abs(sum - wanted) <= NEAR * wanted)) {
        return false;
      }
    }
    return any;
  }
}
