package facetwright.papers.chart;

import facetwright.fold.Folding;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.Together;
import facetwright.measure.Length;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
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
   * @param unit what the maker reckons in
   */
  public static ByRuler of(Laid laid, FoldedForm meant, ScoreChart chart, Ruler ruler, Unit unit) {
    List<PieceChart> off = chart.pieces().stream().filter(ByRuler::isSetOff).toList();
    if (off.isEmpty() || meant.closure() == Closure.NOT_SOLVED) {
      return new ByRuler(chart, Optional.empty());
    }
    String marks = "The marks of your ruler, " + ruler.name() + " apart, are too coarse for it: ";
    Optional<Net> set = AsSet.net(laid.net(), chart, PieceChart::isForBoard);
    Optional<String> why =
        set.isEmpty()
            ? Optional.of("set on them, sides would be left without length.")
            : why(laid, meant, set.get(), unit);
    return why.map(
            w ->
                new ByRuler(
                    chart.traced(laid.net(), ruler, ByRuler::isSetOff), Optional.of(marks + w)))
        .orElse(new ByRuler(chart, Optional.empty()));
  }

  /** Whether a board scores it and lines of it lie between marks. */
  private static boolean isSetOff(PieceChart piece) {
    return piece.isForBoard() && piece.isFormOff();
  }

  private static Optional<String> why(Laid laid, FoldedForm meant, Net set, Unit unit) {
    FoldedForm form = Folding.near(set, laid);
    boolean meets = meant.closure() != Closure.OPEN;
    if (meets && form.closure() != Closure.NOT_SOLVED && form.gap() > MADE_UP) {
      return Optional.of(
          "joins would miss by up to "
              + new Length(form.gap()).text(unit)
              + ", and a tab makes up "
              + new Length(MADE_UP).text(unit)
              + ".");
    }
    for (Together.Nest nest : meant.together().nests()) {
      double off =
          AsSet.change(laid.net(), meant, set, form, nest.outer())
              + AsSet.change(laid.net(), meant, set, form, nest.inner());
      if (nest.room() >= 0 && off > nest.room()) {
        return Optional.of(
            "sizes would be off by up to "
                + new Length(off).text(unit)
                + ", and what goes over the other has "
                + new Length(nest.room()).text(unit)
                + " of room.");
      }
    }
    return Optional.empty();
  }
}
