package facetwright.draw.page;

import facetwright.draw.Lettering;
import facetwright.draw.Mark.Weight;
import facetwright.draw.picture.Block;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Pictures side by side with their words beneath, row by row: a row takes as many as find room, and
 * is never divided. A heading stands over the first cell of what it heads, so that no row ends
 * early for one.
 */
final class Grid {
  private static final double UNDER = 1.5;
  private static final double BETWEEN = 3;

  private final Flow flow;
  private final int columns;
  private final List<Cell> row = new ArrayList<>();
  private Optional<Lead> lead = Optional.empty();

  /** A heading and words above a row. */
  private record Lead(String heading, String words, double least) {}

  /**
   * One picture with its words.
   *
   * @param head over it; often empty
   * @param span how many columns it takes
   * @param lead its number
   */
  record Cell(String head, Block picture, int span, String lead, String words) {}

  Grid(Flow flow, int columns) {
    this.flow = flow;
    this.columns = columns;
  }

  /** Pictures in columns of one width, each with its words. */
  static void row(
      Flow flow, List<Block> pictures, List<String> leads, List<String> words, int columns) {
    Grid grid = new Grid(flow, columns);
    for (int i = 0; i < pictures.size(); i++) {
      grid.add(new Cell("", pictures.get(i), 1, leads.get(i), words.get(i)));
    }
    grid.end();
  }

  /** Of so many columns, in mm. */
  double width(int span) {
    double one = (flow.width() - (columns - 1) * Flow.BESIDE) / columns;
    return span * one + (span - 1) * Flow.BESIDE;
  }

  /** How many lines such words take under a picture of so many columns. */
  int lines(String words, int span) {
    return broken(words, span).size();
  }

  private List<String> broken(String words, int span) {
    return Lettering.broken(words, Flow.BODY, width(span) - Flow.INDENT);
  }

  /**
   * A heading and words over the whole width, above the row that is begun next: they stand on one
   * page with it.
   *
   * @param least how much of the page is to be left for what stands below them, in mm, where the
   *     row takes less
   */
  void lead(String heading, String words, double least) {
    end();
    lead = Optional.of(new Lead(heading, words, least));
  }

  void add(Cell cell) {
    if (taken() + cell.span > columns) {
      end();
    }
    row.add(cell);
  }

  /** Whether a row is begun that has room for more. */
  boolean isWithin() {
    return !row.isEmpty() && taken() < columns;
  }

  private int taken() {
    return row.stream().mapToInt(Cell::span).sum();
  }

  /** How high the first row of these is, in mm, if they begin one. */
  double first(List<Cell> cells) {
    List<Cell> fit = new ArrayList<>();
    int taken = 0;
    for (Cell cell : cells) {
      taken += cell.span;
      if (taken > columns) {
        break;
      }
      fit.add(cell);
    }
    return fit.isEmpty() ? 0 : height(fit);
  }

  private double height(List<Cell> cells) {
    double heads = cells.stream().mapToInt(c -> headLines(cells, c)).max().orElse(0);
    double tall = cells.stream().mapToDouble(c -> c.picture.height()).max().orElse(0);
    double words = cells.stream().mapToInt(c -> lines(c.words, c.span)).max().orElse(0);
    return headed(heads) + tall + UNDER + words * Flow.BODY * Flow.LINE + BETWEEN;
  }

  private static double headed(double lines) {
    return lines == 0 ? 0 : lines * Flow.HEADING * Flow.LINE + 2;
  }

  private int headLines(List<Cell> cells, Cell cell) {
    return cell.head.isEmpty() ? 0 : head(cells, cell).size();
  }

  /** A heading runs on over cells that have none. */
  private List<String> head(List<Cell> cells, Cell cell) {
    int span = cell.span;
    for (Cell next : cells.subList(cells.indexOf(cell) + 1, cells.size())) {
      if (!next.head.isEmpty()) {
        break;
      }
      span += next.span;
    }
    return Lettering.wrap(cell.head, Weight.BOLD, Flow.HEADING, width(span));
  }

  /** Sets down what waits. */
  void end() {
    List<Cell> cells = List.copyOf(row);
    row.clear();
    lead.ifPresent(l -> draw(l, cells.isEmpty() ? 0 : height(cells)));
    lead = Optional.empty();
    if (!cells.isEmpty()) {
      flow.row(height(cells), top -> draw(cells, top));
    }
  }

  private void draw(Lead above, double below) {
    flow.clear();
    double least = flow.heightOf(above.words) + 2;
    flow.heading(above.heading, least + Math.max(above.least, below));
    flow.words(above.words);
    flow.gap(1.5);
  }

  private void draw(List<Cell> cells, double top) {
    int heads = cells.stream().mapToInt(c -> headLines(cells, c)).max().orElse(0);
    double tall = cells.stream().mapToDouble(c -> c.picture.height()).max().orElse(0);
    double foot = top - headed(heads) - tall;
    double x = 0;
    for (Cell cell : cells) {
      if (!cell.head.isEmpty()) {
        double base = top;
        for (String line : head(cells, cell)) {
          base -= Flow.HEADING * Flow.LINE;
          flow.print(x, base + Flow.HEADING * 0.3, Weight.BOLD, Flow.HEADING, line);
        }
      }
      double wide = width(cell.span);
      flow.print(cell.picture, x + (wide - cell.picture.width()) / 2, foot);
      flow.print(x, foot - UNDER, cell.lead, broken(cell.words, cell.span));
      x += wide + Flow.BESIDE;
    }
  }
}
