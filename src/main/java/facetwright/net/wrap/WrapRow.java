package facetwright.net.wrap;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;

/**
 * One row of a wrap.
 *
 * @param name what rows are selected by; several rows may share a name
 * @param height in mm
 */
public record WrapRow(String name, double height) implements Serializable {
  /** The name of the outermost rows where there are three or more. */
  public static final String RIM = "rim";

  /** The name of all other rows. */
  public static final String WALL = "wall";

  /**
   * Rows from their heights, bottom to top, with the usual names: where there are three or more,
   * the lowest and the highest are "rim"; all others are "wall".
   */
  public static List<WrapRow> usual(List<Double> heights) {
    List<WrapRow> rows = new ArrayList<>();
    for (int i = 0; i < heights.size(); i++) {
      boolean outer = i == 0 || i == heights.size() - 1;
      rows.add(new WrapRow(outer && heights.size() >= 3 ? RIM : WALL, heights.get(i)));
    }
    return List.copyOf(rows);
  }
}
