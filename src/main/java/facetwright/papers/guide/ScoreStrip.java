package facetwright.papers.guide;

import facetwright.papers.chart.PieceChart;
import facetwright.papers.chart.Placing;
import facetwright.papers.chart.ScoreChart;
import facetwright.papers.chart.Step;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A strip laid along an edge of a blank, with a tick for every score that runs from there: for a
 * class, who marks from it sets no measure.
 *
 * @param piece the name of the piece, empty where it is the only one
 * @param isAcross whether it lies along the top edge with its 0 at the left; otherwise along the
 *     left edge with its 0 at the top
 * @param length of that edge, in mm
 * @param ticks in the order of their places
 */
public record ScoreStrip(String piece, boolean isAcross, double length, List<Tick> ticks) {
  /** With fewer ticks a ruler is as quick. */
  private static final int LEAST = 3;

  public ScoreStrip {
    ticks = List.copyOf(ticks);
  }

  /**
   * @param label of the line, as the chart names it
   * @param at from the strip's 0, in mm
   */
  public record Tick(String label, double at) {}

  /** For every piece that a board scores, the strips that are worth while. */
  public static List<ScoreStrip> of(ScoreChart chart) {
    List<ScoreStrip> strips = new ArrayList<>();
    for (PieceChart piece : chart.pieces()) {
      if (!piece.isForBoard()) {
        continue;
      }
      String name = chart.pieces().size() == 1 ? "" : piece.name();
      for (boolean isAcross : new boolean[] {true, false}) {
        List<Tick> ticks = ticks(piece, isAcross);
        if (ticks.size() >= LEAST) {
          strips.add(
              new ScoreStrip(name, isAcross, isAcross ? piece.width() : piece.height(), ticks));
        }
      }
    }
    return List.copyOf(strips);
  }

  private static List<Tick> ticks(PieceChart piece, boolean isAcross) {
    List<Tick> ticks = new ArrayList<>();
    for (Step step : piece.steps()) {
      switch (step) {
        case Step.FullScores s -> add(ticks, piece, isAcross, s.placing(), s.lines());
        case Step.ShortScores s -> add(ticks, piece, isAcross, s.placing(), s.lines());
        default -> {}
      }
    }
    ticks.sort(Comparator.comparingDouble(Tick::at));
    return ticks;
  }

  private static void add(
      List<Tick> ticks,
      PieceChart piece,
      boolean isAcross,
      Placing placing,
      List<Step.Ruled> lines) {
    if (placing.scoresDown() != isAcross) {
      return;
    }
    for (Step.Ruled line : lines) {
      double mm = line.measure().mm();
      double at =
          switch (placing.atLeft()) {
            case LEFT, TOP -> mm;
            case RIGHT -> piece.width() - mm;
            case BOTTOM -> piece.height() - mm;
          };
      if (ticks.stream().noneMatch(t -> t.label().equals(line.label()))) {
        ticks.add(new Tick(line.label(), at));
      }
    }
  }
}
