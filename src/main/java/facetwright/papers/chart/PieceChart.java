package facetwright.papers.chart;

import facetwright.geom.Motion2;
import facetwright.language.Telling;
import facetwright.measure.Ruler;
import java.util.List;
import java.util.stream.Stream;

/**
 * How one piece of a net is made.
 *
 * @param name of the piece's first panel
 * @param isForBoard whether a scoring board serves; otherwise points are marked and joined
 * @param parallelPart the part of the length of all scores that runs along the blank's sides, 0 to
 *     1
 * @param width of the blank as it lies first, in mm
 * @param height of the blank, in mm
 * @param ruler the maker's
 * @param scoreMeasures every measure set for scores or points, once, the size of the blank aside
 * @param cutMeasures further measures that only cuts need
 * @param steps in order
 * @param toBlank from where the net lies on its sheet to the blank
 */
public record PieceChart(
    String name,
    boolean isForBoard,
    double parallelPart,
    double width,
    double height,
    Ruler ruler,
    List<Measure> scoreMeasures,
    List<Measure> cutMeasures,
    List<Step> steps,
    Motion2 toBlank) {
  /**
   * So many different measures are marked one by one; more are pricked through the template. Common
   * practice, no source.
   */
  public static final int MOST_MARKED = 20;

  public PieceChart {
    scoreMeasures = List.copyOf(scoreMeasures);
    cutMeasures = List.copyOf(cutMeasures);
    steps = List.copyOf(steps);
  }

  /** How many different measures are set, the size of the blank aside. */
  public int measures() {
    return scoreMeasures.size() + cutMeasures.size();
  }

  /**
   * Whether the template is the way: no board serves, and measures are too many to be marked, or
   * one is gone on the ruler.
   */
  public boolean isByTemplate() {
    return !isForBoard && (isTooMuch() || isLost());
  }

  /** Whether its measures are too many to be marked one by one. */
  public boolean isTooMuch() {
    return measures() > MOST_MARKED;
  }

  /**
   * Whether a measure is under half of the distance between two marks, and so gone on the ruler.
   */
  boolean isLost() {
    return offRuler().stream().anyMatch(m -> m.reading().length().mm() == 0);
  }

  /** Why no board scores it, in a sentence; empty where one does. */
  public String hindrance(Telling tell) {
    return isForBoard
        ? ""
        : parallelPart < ScoreChart.FOR_BOARD
            ? tell.say("chart.slanted")
            : tell.say("chart.gone", "ruler", tell.figures(ruler.name()));
  }

  /** Measures, the blank's own among them, that lie between two marks of the ruler. */
  List<Measure> offRuler() {
    return Stream.of(
            List.of(Measure.of(width, ruler), Measure.of(height, ruler)),
            scoreMeasures,
            cutMeasures)
        .flatMap(List::stream)
        .filter(m -> !m.isOnRuler())
        .distinct()
        .toList();
  }

  /** Whether a measure of the blank's size or of a score lies between two marks of the ruler. */
  boolean isFormOff() {
    return offRuler().stream().anyMatch(m -> !cutMeasures.contains(m));
  }

  /**
   * By how much two neighbouring lines may come nearer or farther apart when all is set by the
   * ruler, in mm: each may be off to its own side.
   */
  double mostOff() {
    List<Double> errors =
        offRuler().stream().map(m -> Math.abs(m.reading().errorMm())).sorted().toList();
    double sum = 0;
    for (int i = errors.size() - 1; i >= Math.max(0, errors.size() - 2); i--) {
      sum += errors.get(i);
    }
    return sum;
  }
}
