package facetwright.net.wrap;

import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Ask;
import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.NetException;
import facetwright.net.Sense;
import facetwright.net.draft.UsualTab;
import facetwright.net.panel.PairedFlap;
import facetwright.words.SaidTwice;
import facetwright.words.Site;
import facetwright.words.Spoken;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;

/**
 * A wrap in the making: a row of columns repeated round, several rows high, closed by a seam. The
 * columns run left to right seen on the outside, which is counter-clockwise from above, and count
 * from 1; the rows run from bottom to top and count from 1.
 *
 * <p>Column scores are mountains. While nothing is gusseted the wrap stands as a prism with its
 * corners on one circle, so that every angle is known: 360°/n for n equal columns, 90° for the
 * sides of a rectangle, 90° for rim tabs. Gussets leave the angles beside them to the solver.
 *
 * <p>Every measure is in mm. A wrong one is refused at once with a {@link NetException}; what
 * depends on the finished pattern, such as whether a pinched cell has a free edge, at {@link
 * #build()}.
 */
public final class WrapDraft {
  /** Before the name of rows, the lowest of those called so. */
  static final String LOWER = "lower ";

  /** The highest of them. */
  static final String UPPER = "upper ";

  /** A seam this part of its column wide leaves its edge apart from the column's. */
  private static final double NARROWER = 0.999;

  /** Words that choose columns. */
  public static final List<String> COLUMN_WORDS = List.of("even", "odd", "all");

  static final int MOST_COLUMNS = Ask.MOST_SIDES;

  /** Of a wrap, bottom to top. */
  public static final int MOST_ROWS = 24;

  private final List<List<Double>> lines;
  final List<WrapRow> rows;
  final WrapCell[][] cells;
  final Map<ScoreKey, Fold> folds = new HashMap<>();
  final Site site;
  double seam;
  double seamBevel = UsualTab.BEVEL;
  Site seamSite;
  WrapFloor floor;
  final List<CellLap> laps = new ArrayList<>();
  final SaidTwice twice = new SaidTwice();
  private final CellWords names;

  /** The rows that were walls when the grid was last reckoned; null before. */
  private WallRows walls;

  private WrapGrid grid;
  final List<CellFlap> flaps = new ArrayList<>();

  /** Where both edges of the seam bear a flap; null where the last column does, or none. */
  PairedFlap seamPair;

  /** One cell lies under another when made. */
  record CellLap(WrapCell under, WrapCell over, Site site) {}

  /** A score of the grid: above a cell, or to its right. */
  record ScoreKey(int row, int column, boolean above) {}

  record Fold(FoldAngle angle, Sense sense, Site site) {}

  private WrapDraft(List<List<Double>> lines, List<WrapRow> rows, Site site) {
    this.rows = List.copyOf(rows);
    this.site = site;
    this.seamSite = site;
    int columns = lines.getFirst().size();
    Ask.count("the number of columns", columns, Ask.FEWEST_SIDES, MOST_COLUMNS, site);
    Ask.count("the number of rows", rows.size(), 1, MOST_ROWS, site);
    lines.forEach(l -> l.forEach(w -> Ask.length("a column's width", w, site)));
    rows.forEach(r -> Ask.length("the height of row \"" + r.name() + "\"", r.height(), site));
    this.lines = lines;
    cells = new WrapCell[rows.size()][columns];
    for (int r = 0; r < rows.size(); r++) {
      for (int c = 0; c < columns; c++) {
        cells[r][c] = new WrapCell(r, c);
      }
    }
    names = new CellWords(rows, columns);
    grid();
  }

  /**
   * The measures of the cells, as far as all has been said. What is no wall carries on the walls'
   * taper.
   */
  WrapGrid grid() {
    WallRows now = lines.size() == rows.size() + 1 ? WallRows.ALL : WallRows.of(cells);
    if (!now.equals(walls)) {
      grid = WrapGrid.of(lines, rows, now, site);
      walls = now;
    }
    return grid;
  }

  /** What a cell is called. */
  String name(int row, int column) {
    return names.of(row, column);
  }

  /**
   * Columns of their own widths, left to right seen on the outside.
   *
   * @param rows 1 to 24, bottom to top; see {@link WrapRow#usual}
   */
  public static WrapDraft of(List<Double> widths, List<WrapRow> rows, Site site) {
    return new WrapDraft(WrapGrid.straight(widths, rows), rows, site);
  }

  /**
   * Columns that taper.
   *
   * @param lines the columns' widths, all as many: at the foot and at the top, between which they
   *     taper evenly, or at each line between rows, one more than there are rows. Of those that
   *     taper evenly the widths are those of the walls; rows of tabs at the ends carry on the taper
   * @param rows each as high as it is up the middle of column 1
   */
  public static WrapDraft tapered(List<List<Double>> lines, List<WrapRow> rows, Site site) {
    Ask.count("the number of rows", rows.size(), 1, MOST_ROWS, site);
    Ask.that(
        lines.size() == 2 || lines.size() == rows.size() + 1,
        "columns taper between 2 lines, the foot and the top"
            + (rows.size() == 1
                ? ""
                : ", or " + (rows.size() + 1) + ", the edges of " + rows.size() + " rows")
            + "; widths are given for "
            + lines.size(),
        site);
    int columns = lines.getFirst().size();
    Ask.that(
        lines.stream().allMatch(l -> l.size() == columns),
        "each line needs as many widths as there are columns, "
            + columns
            + " as the first: "
            + String.join(", ", lines.stream().map(l -> "" + l.size()).toList())
            + " are given",
        site);
    return new WrapDraft(lines, rows, site);
  }

  /** A seam flap with its ends cut back at 45°. */
  public WrapDraft seam(double width, Site seamAt) {
    return seam(width, UsualTab.BEVEL, seamAt);
  }

  /**
   * A flap right of the last column, to be glued under the first, along every row that is not "rim"
   * and where both columns keep their cells.
   *
   * @param width 0 for none, less than the first column's width
   * @param bevel degrees its free ends are cut back from square, 0 to 75
   */
  WrapDraft seam(double width, double bevel, Site seamAt) {
    double column = grid().narrowest(0);
    Ask.that(
        width >= 0 && width <= column * NARROWER,
        () ->
            Message.of(
                "a seam of %s can't be glued under the first column, which is %s wide: give it less"
                    + " than %s, or 0 for none",
                Value.given(width), Value.limit(column), Value.atMost(column)),
        seamAt);
    seamBevel = Ask.angle("the seam's bevel", bevel, 0, 75, seamAt);
    seam = width;
    seamSite = seamAt;
    return this;
  }

  /** Both edges of the seam bear a flap, each on half of every row, in place of the one flap. */
  public WrapDraft seam(PairedFlap both, Site seamAt) {
    seam = 0;
    seamPair = both;
    seamSite = seamAt;
    return this;
  }

  /**
   * A floor that closes the foot: it hangs on one column, with tabs to the others.
   *
   * @param column from 1
   * @param tab how deep the tabs are, in mm; 0 for none
   */
  public WrapDraft floor(int column, double tab, Site at) {
    Ask.count("the column a floor hangs on", column, 1, columnCount(), at);
    WrapFloor.refuseSecond(floor, at);
    floor = new WrapFloor(column - 1, tab, at);
    return this;
  }

  /** All cells. */
  public CellSelection all() {
    List<WrapCell> every = new ArrayList<>();
    for (WrapCell[] row : cells) {
      every.addAll(List.of(row));
    }
    return new CellSelection(this, every);
  }

  /**
   * Cells by what they are called: "wall", "wall 3", "odd", "odd wall", "column 3" or "all".
   *
   * @param words none for all cells but tabs
   */
  public CellSelection called(List<String> words, Site at) {
    return CellNames.of(this, words, at);
  }

  /**
   * The panels that close an end of it, by name: the floor, or those of the outermost row that is
   * there.
   *
   * @param end "top" or "bottom"; any other word stands for itself
   */
  public List<String> closing(String end) {
    return CellNames.closing(this, end);
  }

  int columnCount() {
    return cells[0].length;
  }

  /**
   * The net.
   *
   * @throws NetException when the pattern can't be made, with the script place of the part at fault
   */
  public Net build() {
    return new WrapBuild(this).build();
  }

  /** What was said twice of the same cells. */
  public SaidTwice twice() {
    return twice;
  }

  /** How a script speaks of one of its panels. */
  public Spoken spoken(String panel) {
    return names.spoken(panel);
  }

  IntPredicate columnTest(String which, Site at) {
    return CellChoice.columns(which, at);
  }

  IntPredicate rowTest(String name, Site at) {
    return CellChoice.rows(rows, name, at);
  }
}
