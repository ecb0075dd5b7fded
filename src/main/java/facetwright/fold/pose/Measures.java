package facetwright.fold.pose;

import java.io.Serializable;
import java.util.function.DoubleFunction;

/**
 * What the finished form measures.
 *
 * @param width the longer side of the smallest rectangle it stands in, in mm
 * @param depth the shorter side, in mm
 * @param height the finished height, square to the table, in mm
 * @param volume of the closed body the facets bound, windows counted as closed, in mm³; meaningful
 *     only where the form closes
 * @param area of the facets, windows and holes taken out, in mm²
 */
public record Measures(double width, double depth, double height, double volume, double area)
    implements Serializable {

  /**
   * Its size in words: "106 mm tall, 76 mm wide, 70 mm deep".
   *
   * @param length how a length in mm is told
   */
  public String size(DoubleFunction<String> length) {
    return length.apply(height)
        + " tall, "
        + length.apply(width)
        + " wide, "
        + length.apply(depth)
        + " deep";
  }
}
