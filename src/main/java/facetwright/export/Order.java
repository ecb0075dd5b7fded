package facetwright.export;

import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.net.sheet.CommonSheets;
import facetwright.net.sheet.SheetSize;
import facetwright.papers.chart.ScoreChart;
import java.util.Objects;

/**
 * What the papers are for.
 *
 * @param copies how many pieces are to be made, at least 1
 * @param paper of the printer
 * @param ruler measures are told for it
 */
public record Order(int copies, SheetSize paper, Ruler ruler) {
  /** More than a school has pupils. */
  public static final int MOST = 10_000;

  /**
   * @throws IllegalArgumentException when the number of copies is out of range
   */
  public Order {
    Objects.requireNonNull(paper);
    Objects.requireNonNull(ruler);
    if (copies < 1 || copies > MOST) {
      throw new IllegalArgumentException("1 to " + MOST + " copies can be made, not " + copies);
    }
  }

  /** One piece, on A4 by a ruler of 0.5 mm, or for designs in inches on Letter by 1/16 in. */
  public static Order usual(Unit unit) {
    SheetSize paper = CommonSheets.page(unit);
    return new Order(1, paper, ScoreChart.usualRuler(unit));
  }
}
