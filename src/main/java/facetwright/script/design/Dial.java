package facetwright.script.design;

import facetwright.geom.RoundOff;
import facetwright.words.Site;
import java.io.Serializable;

/**
 * A parameter that a design's user may turn.
 *
 * @param name as the script and the command line call it
 * @param kind whether it is a length or a plain number; lengths count in the design's unit
 * @param value its value now
 * @param usual the value the script gives it
 * @param from least value allowed
 * @param to greatest value allowed
 * @param step distance between allowed values counted from {@code from}; 0 for no steps
 * @param site where the script declares it
 */
public record Dial(
    String name,
    Kind kind,
    double value,
    double usual,
    double from,
    double to,
    double step,
    Site site)
    implements Serializable {

  /** What a dial counts. */
  public enum Kind {
    LENGTH,
    NUMBER
  }

  /** What a value may differ from one that is allowed, for rounding alone. */
  private double slack() {
    return RoundOff.PART * Math.max(1, Math.abs(to));
  }

  /** Whether a value lies in its range. */
  public boolean reaches(double wanted) {
    return wanted >= from - slack() && wanted <= to + slack();
  }

  /** Whether it may stand at a value: one in its range, and on its steps where it has any. */
  public boolean takes(double wanted) {
    return reaches(wanted)
        && Math.abs(nearest(wanted) - wanted) <= RoundOff.SOLVED * step + slack();
  }

  /** The value allowed that is nearest to one that need not be. */
  public double nearest(double wanted) {
    if (step == 0) {
      return Math.clamp(wanted, from, to);
    }
    double last = Math.floor((to - from + slack()) / step);
    return from + Math.clamp(Math.rint((wanted - from) / step), 0, last) * step;
  }

  /** The same dial turned to another value. */
  public Dial turned(double newValue) {
    return new Dial(name, kind, newValue, usual, from, to, step, site);
  }
}
