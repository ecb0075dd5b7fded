package facetwright.measure;

import java.util.Optional;

/** The units a maker's ruler has. */
public enum Unit {
  MM("mm", 1),
  CM("cm", 10),
  /** Exactly 25.4 mm (international yard and pound agreement, 1959). */
  INCH("in", 25.4);

  private final String symbol;
  private final double mm;

  Unit(String symbol, double mm) {
    this.symbol = symbol;
    this.mm = mm;
  }

  /** The unit that a maker writes so, in small letters: "mm", "cm", "in", "inch", "″". */
  public static Optional<Unit> named(String written) {
    return switch (written) {
      case "mm" -> Optional.of(MM);
      case "cm" -> Optional.of(CM);
      case "in", "inch", "inches", "\"", "″" -> Optional.of(INCH);
      default -> Optional.empty();
    };
  }

  public String symbol() {
    return symbol;
  }

  /** Millimetres in one of these. */
  public double mm() {
    return mm;
  }
}
