package facetwright.geom;

import java.io.Serializable;

/**
 * A length that a maker writes as text.
 *
 * @param mm finite, in millimetres
 */
public record Length(double mm) implements Serializable {
  public Length {
    if (!Double.isFinite(mm)) {
      throw new IllegalArgumentException("a length needs a finite number, not " + mm);
    }
  }

  public static Length of(double amount, Unit unit) {
    return new Length(amount * unit.mm());
  }

  /**
   * Reads "1 7/8 in", "1-7/8", "48 mm", "4.8cm", "7/8\"" or a plain number in the given unit.
   *
   * @throws IllegalArgumentException when the text is no length; the message quotes it and says
   *     what is wanted
   */
  public static Length parse(String text, Unit plain) {
    return LengthText.parse(text, plain);
  }

  public double in(Unit unit) {
    return mm / unit.mm();
  }
}
