package facetwright.net.sheet;

import facetwright.geom.Box2;
import facetwright.net.Net;
import java.io.Serializable;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A net laid on its sheets. Sheet 0 has its lower left corner at the origin; further sheets lie to
 * its right, {@link #SHEET_GAP} mm apart.
 *
 * @param net the net, its pieces moved to where they lie
 * @param stock the sheet as it lies (turned a quarter where that fits better)
 * @param sheets how many sheets it takes, at least 1
 * @param fits whether every piece lies whole on one of the sheets
 * @param margin kept free along each edge of a sheet, in mm
 */
public record Laid(Net net, Stock stock, int sheets, boolean fits, double margin)
    implements Serializable {
  /** Room drawn between two sheets, in mm. */
  public static final double SHEET_GAP = 20;

  /** The same sheets under a net that lies on them alike. */
  public Laid with(Net other) {
    return new Laid(other, stock, sheets, fits, margin);
  }

  /** Where sheet {@code index} lies. */
  public Box2 sheet(int index) {
    double x = index * (stock.width() + SHEET_GAP);
    return new Box2(x, 0, x + stock.width(), stock.height());
  }

  /** Where all sheets lie, in order. */
  public List<Box2> sheetBoxes() {
    return IntStream.range(0, sheets).mapToObj(this::sheet).toList();
  }
}
