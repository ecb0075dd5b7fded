package facetwright.aim;

import facetwright.geom.RoundOff;
import facetwright.measure.Quantity;
import facetwright.words.Decimals;

/**
 * A dial that may be turned.
 *
 * @param name as its maker calls it
 * @param counts what its numbers count, as far as that is known
 * @param now where it stands
 * @param from its least value
 * @param to its greatest value, over {@code from}
 * @param step distance between its values, counted from {@code from}; 0 where it has no steps
 */
public record Knob(String name, Quantity counts, double now, double from, double to, double step) {

  /**
   * @throws IllegalArgumentException when its ends are not in order or a number is not finite
   */
  public Knob {
    if (!(from < to) || !(step >= 0) || !Double.isFinite(now + from + to + step)) {
      throw new IllegalArgumentException("knob " + name + ": from " + from + " to " + to);
    }
  }

  /** The same where it is turned by so much each time. */
  public Knob inStepsOf(double distance) {
    return new Knob(name, counts, now, from, to, distance);
  }

  /** One of its values as messages show it, to a millionth. */
  static String text(double value) {
    return Decimals.places(value, 6);
  }

  /** Whether it is known to be a length. */
  public boolean isLength() {
    return counts == Quantity.LENGTH;
  }

  /** Whether it may be a length, for all that is known. */
  public boolean mayBeLength() {
    return counts == Quantity.LENGTH || counts == Quantity.NUMBER;
  }

  public boolean isStepped() {
    return step > 0;
  }

  public double range() {
    return to - from;
  }

  /** How many steps lie between its ends; 0 where it has none. */
  long steps() {
    return isStepped() ? (long) RoundOff.floor(range() / step) : 0;
  }

  /** The nearest value it can take. */
  double settle(double value) {
    if (!isStepped()) {
      return Math.clamp(value, from, to);
    }
    long count = Math.clamp(Math.round((value - from) / step), 0, steps());
    return Math.min(from + count * step, to);
  }

  /** The greatest value it can take. */
  public double last() {
    return settle(to);
  }

  boolean isAtStart(double value) {
    return value <= from + RoundOff.PART * range();
  }

  boolean isAtEnd(double value) {
    return value >= last() - RoundOff.PART * range();
  }
}
