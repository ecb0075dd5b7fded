package facetwright.net;

import facetwright.geom.Decimals;
import java.io.Serializable;

/**
 * The size of a sheet of stock, as it is usually named: upright unless the name says otherwise.
 *
 * @param name such as "A4" or "Letter"
 * @param width in mm, 10 to 2000
 * @param height in mm, 10 to 2000
 */
public record SheetSize(String name, double width, double height) implements Serializable {
  private static final double LEAST = 10;
  private static final double MOST = 2000;

  /**
   * @throws IllegalArgumentException when a measure is out of range
   */
  public SheetSize {
    if (!(width >= LEAST && width <= MOST && height >= LEAST && height <= MOST)) {
      throw new IllegalArgumentException(
          "a sheet is 10 mm to 2000 mm wide and high, not " + text(width) + " × " + text(height));
    }
  }

  /** A sheet of its own size, named by its measures: "305 × 305 mm". */
  public static SheetSize custom(double width, double height) {
    return new SheetSize(text(width) + " × " + text(height) + " mm", width, height);
  }

  /** Stock of this size and weight (g/m²) with the usual caliper and no known grain. */
  public Stock stock(double weight) {
    return stock(weight, Stock.usualCaliper(weight), Stock.Grain.UNKNOWN);
  }

  /** Stock of this size; weight in g/m², caliper in mm. */
  public Stock stock(double weight, double caliper, Stock.Grain grain) {
    return new Stock(name, width, height, weight, caliper, grain);
  }

  private static String text(double mm) {
    return Decimals.places(mm, 2);
  }
}
