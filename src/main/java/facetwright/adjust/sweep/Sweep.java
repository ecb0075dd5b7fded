package facetwright.adjust.sweep;

import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.papers.chart.ScoreChart;
import facetwright.script.design.Design;
import facetwright.script.design.Dial;
import facetwright.script.design.DialText;
import facetwright.script.sandbox.ScriptException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A dial over a range of values, and what the design comes to at each.
 *
 * @param dial where it stands now
 * @param unit the design's
 * @param steps one a value, in order
 */
public record Sweep(Dial dial, Unit unit, List<Sample> steps) {
  public Sweep {
    steps = List.copyOf(steps);
  }

  /** Makes the design with one dial turned. */
  @FunctionalInterface
  public interface Making {
    /**
     * @param value as a person types it
     */
    Design make(String value) throws ScriptException;
  }

  /**
   * The dial at one value.
   *
   * @param typed the value as a person types it
   * @param design the design; empty where there is none
   * @param measures how many different measures of scores its chart takes by the usual ruler
   * @param why there is no design; empty where there is one
   */
  public record Sample(
      double value, String typed, Optional<Design> design, int measures, String why) {}

  /**
   * Makes the design at each value.
   *
   * @throws ScriptException when a script does not end and has to be given up; a value that it
   *     refuses is told in its step
   */
  public static Sweep of(Dial dial, Unit unit, List<Double> values, Making making)
      throws ScriptException {
    Ruler ruler = Ruler.usual(unit);
    List<Sample> steps = new ArrayList<>();
    for (double value : values) {
      String typed = DialText.text(dial, value, unit);
      try {
        Design design = making.make(typed);
        int measures = ScoreChart.of(design.net(), ruler).distinctMeasures();
        steps.add(new Sample(value, typed, Optional.of(design), measures, ""));
      } catch (ScriptException e) {
        if (e.isStillRunning()) {
          throw e;
        }
        steps.add(new Sample(value, typed, Optional.empty(), 0, e.getMessage()));
      }
    }
    return new Sweep(dial, unit, steps);
  }
}
