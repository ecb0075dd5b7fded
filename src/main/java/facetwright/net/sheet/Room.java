package facetwright.net.sheet;

import facetwright.measure.Length;
import facetwright.measure.Unit;
import java.io.Serializable;
import java.util.List;

/**
 * Room kept free round what is cut from a sheet: a knife, a trimmer and a printer do not come to
 * its very edge, and two pieces that touch are cut apart less cleanly than two that do not.
 *
 * @param margin along each edge of the sheet, in mm
 * @param gap between two pieces, in mm
 */
public record Room(double margin, double gap) implements Serializable {
  /** What most printers leave blank at a page's edge; common practice, no source. */
  private static final double USUAL_METRIC = 5;

  /** The same as who counts in inches says it: a quarter. */
  private static final double USUAL_INCH = Unit.INCH.mm() / 4;

  /** What is kept where nobody says otherwise, for both who count in millimetres and in inches. */
  public static final String WORDS =
      new Length(USUAL_METRIC).text(Unit.MM)
          + " (in a design in inches "
          + new Length(USUAL_INCH).text(Unit.INCH)
          + ") where the sheet leaves that much";

  /**
   * @throws IllegalArgumentException when one of them is out of range
   */
  public Room {
    SheetLayout.inRange("margin", margin);
    SheetLayout.inRange("gap between pieces", gap);
  }

  /** What is kept where nobody says otherwise and the sheet leaves it. */
  public static Room usual(Unit unit) {
    double usual = unit.isMetric() ? USUAL_METRIC : USUAL_INCH;
    return new Room(usual, usual);
  }

  /**
   * The rooms to try, the first that does not cost a sheet to be taken: the usual, half as much,
   * and no more than the knife needs between two pieces.
   */
  public static List<Room> orLess(Unit unit) {
    Room usual = usual(unit);
    return List.of(usual, usual.halved(usual.margin / 2), new Room(0, SheetLayout.USUAL_GAP));
  }

  /** The same where the maker says what is kept along the sheet's edges: no less is. */
  public static List<Room> within(double margin, Unit unit) {
    Room usual = new Room(margin, usual(unit).gap);
    return List.of(usual, usual.halved(margin), new Room(margin, SheetLayout.USUAL_GAP));
  }

  private Room halved(double newMargin) {
    return new Room(newMargin, (gap + SheetLayout.USUAL_GAP) / 2);
  }
}
