package facetwright.net.wrap;

import facetwright.geom.AngleTolerance;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.NetException;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The measures of a wrap's cells: how wide each column is at each line between rows, and how high
 * each cell is up its middle. A cell is a trapezoid alike on both sides. A row is as high as it is
 * said in column 1; in columns that taper otherwise so that neighbours' sides are equally long.
 */
final class WrapGrid {
  private final List<List<Double>> lines;
  private final double[][] heights;
  private final boolean straight;

  /**
   * @param lines for each line between rows, from the foot up, the columns' widths there
   */
  WrapGrid(List<List<Double>> lines, List<WrapRow> rows, Site site) {
    this.lines = lines.stream().map(List::copyOf).toList();
    straight = this.lines.stream().distinct().count() == 1;
    heights = new double[rows.size()][lines.getFirst().size()];
    for (int r = 0; r < rows.size(); r++) {
      double first = rows.get(r).height();
      double splay = widening(r, 0) / 2;
      for (int c = 0; c < heights[r].length; c++) {
        double own = Math.abs(widening(r, c) / 2);
        double square = first * first + splay * splay - own * own;
        if (!(square > 0)) {
          throw tooLow(rows.get(r).name(), c, Math.sqrt(own * own - splay * splay), site);
        }
        heights[r][c] = own == Math.abs(splay) ? first : Math.sqrt(square);
      }
    }
  }

  /**
   * @param lines the columns' widths at each line between rows, or at two, between which they taper
   * @param walls the rows that do; {@link WallRows#ALL} where each line has its own widths
   */
  static WrapGrid of(List<List<Double>> lines, List<WrapRow> rows, WallRows walls, Site site) {
    return new WrapGrid(
        walls.equals(WallRows.ALL)
            ? lines
            : even(lines.getFirst(), lines.getLast(), rows, walls.from(), walls.to(), site),
        rows,
        site);
  }

  private static NetException tooLow(String row, int column, double least, Site site) {
    return new NetException(
        Message.of(
            "row %s is too low for column %s to taper so far: make it higher than %s, or let the"
                + " column taper less",
            Value.name(row), column + 1, Value.limit(least)),
        site);
  }

  /**
   * Each column of one width from foot to top.
   *
   * @param widths of the columns
   */
  static List<List<Double>> straight(List<Double> widths, List<WrapRow> rows) {
    return Collections.nCopies(rows.size() + 1, widths);
  }

  /**
   * Columns that taper evenly from the foot of one row to the top of another; rows below and above
   * carry on the taper.
   *
   * @param from the lowest row between them
   * @param to the row above the highest
   */
  private static List<List<Double>> even(
      List<Double> foot, List<Double> top, List<WrapRow> rows, int from, int to, Site site) {
    double before = sum(rows.subList(0, from));
    double all = sum(rows.subList(from, to));
    List<List<Double>> lines = new ArrayList<>();
    for (int line = 0; line <= rows.size(); line++) {
      double part = line == from ? 0 : line == to ? 1 : (sum(rows.subList(0, line)) - before) / all;
      List<Double> widths = new ArrayList<>();
      for (int c = 0; c < foot.size(); c++) {
        double width = foot.get(c) * (1 - part) + top.get(c) * part;
        if (!(width > 0)) {
          throw new NetException(
              Message.of(
                  "column %s narrows to nothing within row %s, which carries on the taper: give"
                      + " widths for each line, or make the row lower",
                  c + 1, Value.name(rows.get(line == 0 ? 0 : line - 1).name())),
              site);
        }
        widths.add(width);
      }
      lines.add(widths);
    }
    return lines;
  }

  private static double sum(List<WrapRow> rows) {
    return rows.stream().mapToDouble(WrapRow::height).sum();
  }

  /** Whether all its cells are rectangles. */
  boolean isStraight() {
    return straight;
  }

  /** The columns' widths at a line, 0 being the foot. */
  List<Double> line(int line) {
    return lines.get(line);
  }

  double foot(int row, int column) {
    return lines.get(row).get(column);
  }

  double top(int row, int column) {
    return lines.get(row + 1).get(column);
  }

  /** The narrower of its two edges. */
  double least(int row, int column) {
    return Math.min(foot(row, column), top(row, column));
  }

  double height(int row, int column) {
    return heights[row][column];
  }

  /** The least of its width and its height. */
  double size(int row, int column) {
    return Math.min(least(row, column), height(row, column));
  }

  private double widening(int row, int column) {
    return top(row, column) - foot(row, column);
  }

  /** How far each side of a cell leans out from square on its foot, in radians. */
  double splay(int row, int column) {
    return Math.atan2(widening(row, column) / 2, height(row, column));
  }

  /** Whether two rows lie on in the sheet: their columns taper alike. */
  boolean runsOn(int row) {
    for (int c = 0; c < heights[row].length; c++) {
      if (!AngleTolerance.UNSEEN.same(splay(row, c), splay(row + 1, c))) {
        return false;
      }
    }
    return true;
  }

  /** The least width of a column over all rows, in mm. */
  double narrowest(int column) {
    return IntStream.range(0, heights.length)
        .mapToDouble(r -> least(r, column))
        .min()
        .orElseThrow();
  }
}
