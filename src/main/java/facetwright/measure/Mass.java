package facetwright.measure;

import facetwright.words.Decimals;

/**
 * What something weighs, as its reader knows weights: in grams, or in ounces where the design
 * counts in inches.
 *
 * @param grams 0 or more
 */
public record Mass(double grams) {
  /** In grams, exactly (international yard and pound agreement, 1959: a sixteenth of a pound). */
  public static final double OUNCE = 453.59237 / 16;

  /**
   * Of a sheet: its area times its grammage, the mass of a square metre (ISO 536).
   *
   * @param mm2 square millimetres
   * @param grammage in g/m²
   */
  public static Mass of(double mm2, double grammage) {
    return new Mass(mm2 * grammage / 1e6);
  }

  public Mass plus(Mass other) {
    return new Mass(grams + other.grams);
  }

  /** To two digits, for paper is made no evener: "12 g" or "0.42 oz". */
  public String rounded(Unit unit) {
    return unit.isMetric()
        ? Decimals.digits(grams, 2) + " g"
        : Decimals.digits(grams / OUNCE, 2) + " oz";
  }
}
