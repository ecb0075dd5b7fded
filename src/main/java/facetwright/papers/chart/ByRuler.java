package facetwright.papers.chart;

import facetwright.fold.Folding;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.Together;
import facetwright.language.Telling;
import facetwright.net.Net;
import facetwright.net.sheet.Laid;
import java.util.List;
import java.util.Optional;

/**
 * Whether a maker may set by the ruler what a chart tells, or had better prick it through the
 * printed template.
 *
 * @param chart to be followed: what the ruler sets too coarsely is traced in it
 * @param why what the ruler would do to it, in a sentence; empty where it serves
 */
public record ByRuler(ScoreChart chart, Optional<String> why) {
  /** The most that a join may miss, in mm: a glued tab makes it up; common practice, no source. */
  public static final double MADE_UP = 0.5;

  /**
   * @param chart of the net
   * @param meant its form as it should be
   * @param tell the reader, and the ruler that is meant
   */
  public static ByRuler of(Laid laid, FoldedForm meant, ScoreChart chart, Telling tell) {
    List<PieceChart> off = chart.pieces().stream().filter(ByRuler::isSetOff).toList();
    if (off.isEmpty() || meant.closure() == Closure.NOT_SOLVED) {
      return new ByRuler(chart, Optional.empty());
    }
    Optional<Net> set = AsSet.net(laid.net(), chart, PieceChart::isForBoard);
    Optional<String> why =
        set.isEmpty() ? Optional.of(coarse("gone", 0, 0, tell)) : why(laid, meant, set.get(), tell);
    return why.map(
            w ->
                new ByRuler(
                    chart.traced(laid.net(), tell.ruler(), ByRuler::isSetOff), Optional.of(w)))
        .orElse(new ByRuler(chart, Optional.empty()));
  }

  /** Whether a board scores it and lines of it lie between marks. */
  private static boolean isSetOff(PieceChart piece) {
    return piece.isForBoard() && piece.isFormOff();
  }

  private static Optional<String> why(Laid laid, FoldedForm meant, Net set, Telling tell) {
    FoldedForm form = Folding.near(set, laid);
    boolean meets = meant.closure() != Closure.OPEN;
    if (meets && form.closure() != Closure.NOT_SOLVED && form.gap() > MADE_UP) {
      return Optional.of(coarse("miss", form.gap(), MADE_UP, tell));
    }
    for (Together.Nest nest : meant.together().nests()) {
      double off =
          AsSet.change(laid.net(), meant, set, form, nest.outer())
              + AsSet.change(laid.net(), meant, set, form, nest.inner());
      if (nest.room() >= 0 && off > nest.room()) {
        return Optional.of(coarse("size", off, nest.room(), tell));
      }
    }
    return Optional.empty();
  }

  /**
   * What the ruler would do.
   *
   * @param off by how much, in mm
   * @param room how much may be, in mm
   */
  private static String coarse(String why, double off, double room, Telling tell) {
    return tell.say(
        "chart.coarse",
        "ruler",
        tell.figures(tell.ruler().name()),
        "why",
        why,
        "off",
        tell.length(off),
        "room",
        tell.length(room));
  }
}
