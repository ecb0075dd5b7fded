package facetwright.adjust.round;

import facetwright.aim.Knob;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.Measures;
import facetwright.geom.LengthTolerance;
import facetwright.geom.RoundOff;
import facetwright.measure.Ruler;
import facetwright.papers.chart.ScoreChart;
import facetwright.papers.chart.ToSet;
import facetwright.script.design.Design;
import java.util.List;
import java.util.Map;

/**
 * A design with its dials at given values, and what its maker would set by the ruler.
 *
 * @param dials the values of the dials that may be turned, in the design's unit
 * @param design without a look for findings
 * @param toSet the measures
 */
public record Draft(Map<String, Double> dials, Design design, ScoreChart chart, ToSet toSet) {
  /** Gaps that differ by no more are one. */
  private static final LengthTolerance SAME_GAP = LengthTolerance.UNSEEN;

  public Draft {
    dials = Map.copyOf(dials);
  }

  static Draft of(Map<String, Double> dials, Design design, Ruler ruler) {
    ScoreChart chart = ScoreChart.of(design.net(), ruler);
    return new Draft(dials, design, chart, ToSet.of(design.net(), chart));
  }

  /** All measures in mm, in an order that does not hang on their values. */
  double[] raw() {
    return toSet.all().stream().mapToDouble(m -> m.mm()).toArray();
  }

  /** Whether every measure lies on a mark. */
  public boolean isOnRuler() {
    return toSet.formOff() == 0 && toSet.cutsOff() == 0;
  }

  /** Whether it closes and fits its sheet at least as well as another. */
  boolean isAsSoundAs(Draft other) {
    FoldedForm here = design.folded();
    FoldedForm there = other.design.folded();
    boolean closes =
        here.closure() == there.closure()
            ? here.gap() <= there.gap() + SAME_GAP.mm()
            : here.closure() == Closure.CLOSES;
    boolean fits = design.laid().fits() || !other.design.laid().fits();
    return closes && fits && design.laid().sheets() <= other.design.laid().sheets();
  }

  /** By which part of its size the finished form differs from another's, all three ways added. */
  double sizeChange(Draft from) {
    Measures a = design.folded().measures();
    Measures b = from.design.folded().measures();
    return part(a.height(), b.height()) + part(a.width(), b.width()) + part(a.depth(), b.depth());
  }

  /** By which parts of their values dials are turned, all added. */
  static double turned(List<Knob> knobs, Map<String, Double> to) {
    return knobs.stream().mapToDouble(k -> part(to.get(k.name()), k.now())).sum();
  }

  private static double part(double now, double was) {
    return Math.abs(now - was) / Math.max(Math.abs(was), RoundOff.PART);
  }
}
