package facetwright.draw.page;

import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Vec2;
import facetwright.net.sheet.SheetSize;
import java.util.ArrayList;
import java.util.List;

/**
 * How an area is divided over the pages of a printer. Rows are numbered from the top, columns
 * lettered from the left: 2B is the second page of the second row. Neighbours show a strip twice.
 *
 * @param page what the printer takes, as it lies
 * @param area what is to be shown, in mm
 * @param columns pages side by side
 * @param rows pages above each other
 */
record Tiling(SheetSize page, Box2 area, int columns, int rows) {
  /** What neighbours both show, in mm. */
  static final double OVERLAP = 10;

  /** What most printers leave white, in mm; common practice, no source. */
  static final double MARGIN = 9;

  /** Room for the check ruler and the words below the window, in mm. */
  static final double FOOT = 17;

  /** The fewest pages, upright or on its side; of equals upright. */
  static Tiling of(SheetSize page, Box2 area) {
    Tiling upright = lying(page, area);
    Tiling across =
        lying(
            new SheetSize(page.name(), /* width= */ page.height(), /* height= */ page.width()),
            area);
    return across.columns * across.rows < upright.columns * upright.rows ? across : upright;
  }

  private static Tiling lying(SheetSize page, Box2 area) {
    Tiling one = new Tiling(page, area, 1, 1);
    return new Tiling(
        page, area, count(area.width(), one.width()), count(area.height(), one.height()));
  }

  private static int count(double all, double window) {
    return 1
        + (int)
            Math.max(0, Math.ceil((all - window - LengthTolerance.FINE.mm()) / (window - OVERLAP)));
  }

  /** Of the window, in mm. */
  double width() {
    return page.width() - 2 * MARGIN;
  }

  double height() {
    return page.height() - 2 * MARGIN - FOOT;
  }

  /** One page: its row from the top and its column from the left, both from 0. */
  record Tile(int row, int column) {
    /**
     * The row and a letter for the column, such as "2B", beyond Z with "AA": the other way about
     * they would read as sizes of page.
     */
    String name() {
      String letters = "";
      for (int c = column; c >= 0; c = c / 26 - 1) {
        letters = (char) ('A' + c % 26) + letters;
      }
      return (row + 1) + letters;
    }
  }

  List<Tile> tiles() {
    List<Tile> all = new ArrayList<>();
    for (int r = 0; r < rows; r++) {
      for (int c = 0; c < columns; c++) {
        all.add(new Tile(r, c));
      }
    }
    return all;
  }

  /** What of the area a page shows. */
  Box2 window(Tile tile) {
    double across = columns * width() - (columns - 1) * OVERLAP;
    double down = rows * height() - (rows - 1) * OVERLAP;
    double left = area.centre().x() - across / 2 + tile.column() * (width() - OVERLAP);
    double top = area.centre().y() + down / 2 - tile.row() * (height() - OVERLAP);
    return new Box2(left, top - height(), left + width(), top);
  }

  /** From the area to the page. */
  Vec2 shift(Tile tile) {
    Box2 window = window(tile);
    return new Vec2(MARGIN - window.minX(), MARGIN + FOOT - window.minY());
  }

  /** Places that two or more pages show, to lay them on each other by. */
  List<Vec2> registers() {
    List<Vec2> places = new ArrayList<>();
    for (Tile tile : tiles()) {
      Box2 w = window(tile);
      if (tile.column() + 1 < columns) {
        double x = w.maxX() - OVERLAP / 2;
        places.add(new Vec2(x, w.minY() + 0.25 * w.height()));
        places.add(new Vec2(x, w.minY() + 0.75 * w.height()));
      }
      if (tile.row() + 1 < rows) {
        double y = w.minY() + OVERLAP / 2;
        places.add(new Vec2(w.minX() + 0.25 * w.width(), y));
        places.add(new Vec2(w.minX() + 0.75 * w.width(), y));
      }
    }
    return places;
  }
}
