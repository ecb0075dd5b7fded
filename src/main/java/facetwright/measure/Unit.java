package facetwright.measure;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The units a maker's ruler has, and how each is read: all that the program asks of a unit, so that
 * it takes one more from here.
 */
public enum Unit {
  MM("mm", "millimetres", 1, true, 2),
  CM("cm", "centimetres", 10, true, 3),
  /** Exactly 25.4 mm (international yard and pound agreement, 1959). */
  INCH("in", "inches", 25.4, false, 3, "inch", "inches", "\"", "″");

  private final String symbol;
  private final String plural;
  private final double mm;
  private final boolean isMetric;
  private final int places;

  @SuppressWarnings("ImmutableEnumChecker") // It is never changed: List.of makes it.
  private final List<String> alsoWritten;

  Unit(
      String symbol,
      String plural,
      double mm,
      boolean isMetric,
      int places,
      String... alsoWritten) {
    this.symbol = symbol;
    this.plural = plural;
    this.mm = mm;
    this.isMetric = isMetric;
    this.places = places;
    this.alsoWritten = List.of(alsoWritten);
  }

  /** The unit that a maker writes so, in small letters: "mm", "cm", "in", "inch", "″". */
  public static Optional<Unit> named(String written) {
    return Arrays.stream(values())
        .filter(u -> u.symbol.equals(written) || u.alsoWritten.contains(written))
        .findFirst();
  }

  public String symbol() {
    return symbol;
  }

  /** Such as "millimetres". */
  public String plural() {
    return plural;
  }

  /** Millimetres in one of these. */
  public double mm() {
    return mm;
  }

  /**
   * Whether who reads it reads the metric system: rulers divided by ten, sheets of ISO 216. Who
   * does not has inches on the ruler and North American sheets.
   */
  public boolean isMetric() {
    return isMetric;
  }

  /** Whether its rulers are halved on and on, and read in fractions: "1 7/8 in", not "1.875 in". */
  public boolean isInFractions() {
    return !isMetric;
  }

  /** The usual unit of the other system, for who reads both. */
  public Unit counterpart() {
    return isMetric ? INCH : MM;
  }

  /**
   * The unit for what is large, such as areas and volumes: nobody thinks in square millimetres, nor
   * numbers each millimetre of a ruler.
   */
  public Unit forLarge() {
    return this == MM ? CM : this;
  }

  /** Decimals that tell a length as finely as hands work, to 0.03 mm and less. */
  public int places() {
    return places;
  }
}
