package facetwright.net.sheet;

import facetwright.measure.Length;
import facetwright.measure.Unit;
import facetwright.message.Message;
import facetwright.message.Refused;
import facetwright.message.Value;
import facetwright.words.Decimals;
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

  /** No cutter is truer, in mm. */
  private static final double SAME = 0.01;

  /**
   * @throws IllegalArgumentException when a measure is out of range
   */
  public SheetSize {
    if (!(width >= LEAST && width <= MOST && height >= LEAST && height <= MOST)) {
      throw new Refused(
          Message.of(
              "a sheet is %s to %s wide and high, not %s",
              Value.given(LEAST), Value.given(MOST), Value.size(width, height)));
    }
  }

  /** A sheet of its own size, named by its measures: "305 × 305 mm", "8 × 10 in". */
  public static SheetSize custom(double width, double height, Unit unit) {
    String name =
        Decimals.places(new Length(width).in(unit), 3)
            + " × "
            + Decimals.places(new Length(height).in(unit), 3)
            + " "
            + unit.symbol();
    return new SheetSize(name, width, height);
  }

  /** Whether stock is of this size, upright or lying. */
  public boolean isOf(Stock stock) {
    return same(Math.min(width, height), Math.min(stock.width(), stock.height()))
        && same(Math.max(width, height), Math.max(stock.width(), stock.height()));
  }

  private static boolean same(double a, double b) {
    return Math.abs(a - b) <= SAME;
  }

  /** Stock of this size and weight (g/m²) with the usual caliper and no known grain. */
  public Stock stock(double weight) {
    return stock(weight, Stock.usualCaliper(weight), Stock.Grain.UNKNOWN);
  }

  /** Stock of this size; weight in g/m², caliper in mm. */
  public Stock stock(double weight, double caliper, Stock.Grain grain) {
    return new Stock(name, width, height, weight, caliper, grain);
  }
}
