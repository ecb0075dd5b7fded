package facetwright.papers.chart;

import facetwright.geom.Vec2;
import facetwright.measure.Ruler;
import facetwright.net.Net;
import facetwright.pace.Pace;
import facetwright.words.Count;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * How every piece of a net is made.
 *
 * <p>A scoring board serves where at least half of the length of a piece's scores runs along or
 * across one direction. Any other piece is traced: its points are measured from two edges and
 * joined. So is one of which a measure would be gone on the ruler.
 *
 * @param pieces one chart a piece
 */
public record ScoreChart(List<PieceChart> pieces) {
  /** The least part of the length of all scores that a board has to serve. */
  public static final double FOR_BOARD = 0.5;

  public ScoreChart {
    pieces = List.copyOf(pieces);
  }

  /** The chart for a net as it lies on its sheet. */
  public static ScoreChart of(Net net, Ruler ruler) {
    List<PieceChart> charts = new ArrayList<>();
    Pace.doing("planning the scores and cuts of " + Count.of(net.pieces(), "piece"));
    for (int i = 0; i < net.pieces(); i++) {
      FlatPiece piece = FlatPiece.of(net, i);
      FlatPiece turned = piece.turned(net, i);
      PieceChart one = of(piece, ruler, true);
      PieceChart other = of(turned, ruler, true);
      PieceChart best = rank(other) < rank(one) ? other : one;
      charts.add(best.isForBoard() && best.isLost() ? of(piece, ruler, false) : best);
    }
    return new ScoreChart(charts);
  }

  /** None lost, then fewer measures, then fewer steps; as it lies where all are alike. */
  private static int rank(PieceChart chart) {
    return chart.isForBoard()
        ? (chart.isLost() ? 10_000_000 : 0)
            + 10_000 * chart.scoreMeasures().size()
            + 100 * chart.cutMeasures().size()
            + chart.steps().size()
        : 0;
  }

  /**
   * The same with some pieces traced that a board would serve.
   *
   * @param net of this chart
   * @param which of its pieces
   */
  ScoreChart traced(Net net, Ruler ruler, Predicate<PieceChart> which) {
    List<PieceChart> charts = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      PieceChart piece = pieces.get(i);
      charts.add(which.test(piece) ? of(FlatPiece.of(net, i), ruler, false) : piece);
    }
    return new ScoreChart(charts);
  }

  private static PieceChart of(FlatPiece piece, Ruler ruler, boolean mayBoard) {
    BlankSoFar marks = new BlankSoFar(piece.width(), piece.height(), ruler);
    boolean board = mayBoard && piece.parallelPart() >= FOR_BOARD;
    List<Step> steps = new ArrayList<>();
    steps.add(new Step.Trim(Measure.of(piece.width(), ruler), Measure.of(piece.height(), ruler)));
    int forScores;
    if (board) {
      steps.addAll(BoardPlan.of(piece, ruler, marks));
      forScores = marks.set().size();
      steps.addAll(CutSteps.of(piece, ruler, marks::spot));
    } else {
      List<Vec2> points = TracePlan.points(piece);
      steps.addAll(TracePlan.of(piece, marks, points));
      forScores = marks.set().size();
      steps.addAll(CutSteps.of(piece, ruler, p -> TracePlan.numbered(points, p)));
    }
    List<Measure> all = marks.set().stream().map(mm -> Measure.of(mm, ruler)).toList();
    return new PieceChart(
        piece.name(),
        board,
        piece.parallelPart(),
        piece.width(),
        piece.height(),
        ruler,
        all.subList(0, forScores),
        all.subList(forScores, all.size()),
        steps,
        piece.toBlank());
  }

  /** Whether any piece is made by its measures rather than through the template. */
  public boolean isOfUse() {
    return pieces.stream().anyMatch(p -> !p.isByTemplate());
  }

  /** How many different measures the maker sets for scores, over all pieces. */
  public int distinctMeasures() {
    return (int)
        pieces.stream()
            .flatMap(p -> p.scoreMeasures().stream())
            .mapToLong(m -> Math.round(m.mm() * 1e5))
            .distinct()
            .count();
  }
}
