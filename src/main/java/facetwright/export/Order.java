package facetwright.export;

import facetwright.geom.Unit;
import facetwright.net.SheetSize;
import facetwright.net.SheetSizes;
import java.util.Objects;

/**
 * What the papers are for.
 *
 * @param copies how many pieces are to be made, at least 1
 * @param paper of the printer
 */
public record Order(int copies, SheetSize paper) {
  /** More than a school has pupils. */
  public static final int MOST = 10_000;

  /**
   * @throws IllegalArgumentException when the number of copies is out of range
   */
  public Order {
    Objects.requireNonNull(paper);
    if (copies < 1 || copies > MOST) {
      throw new IllegalArgumentException("1 to " + MOST + " copies can be made, not " + copies);
    }
  }

  /** One piece, on A4, or for designs in inches on Letter. */
  public static Order usual(Unit unit) {
    return new Order(1, SheetSizes.named(unit == Unit.INCH ? "Letter" : "A4"));
  }
}
