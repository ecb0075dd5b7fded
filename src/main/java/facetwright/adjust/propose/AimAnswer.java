package facetwright.adjust.propose;

import facetwright.adjust.Remark;
import facetwright.adjust.write.WholeScript;
import facetwright.aim.Goal;
import facetwright.aim.Grid;
import facetwright.aim.Measure;
import facetwright.aim.Outcome;
import facetwright.aim.OutcomeText;
import facetwright.net.sheet.SheetSize;
import facetwright.script.WhatIf;
import facetwright.script.sandbox.ScriptException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What an aim came to, as a proposal. */
final class AimAnswer {
  private AimAnswer() {}

  static Proposal to(WhatIf what, Question.Aim asked) throws ScriptException {
    Outcome outcome = what.aim(asked.goals(), asked.turn(), asked.grid());
    List<Remark> remarks = new ArrayList<>();
    OutcomeText.goals(outcome).stream().map(Remark::of).forEach(remarks::add);
    OutcomeText.hurdles(outcome).stream().map(Remark::of).forEach(remarks::add);
    OutcomeText.others(outcome, what.design().dials().stream().map(d -> d.name()).toList())
        .map(Remark::of)
        .ifPresent(remarks::add);
    String own = what.design().laid().stock().name();
    outcome.goals().stream()
        .filter(g -> g.status() == Outcome.Status.MET)
        .filter(
            g ->
                g.goal() instanceof Goal.Fit(SheetSize sheet)
                    && !sheet.isOf(what.design().laid().stock()))
        .map(
            _ ->
                "The script has its papers made for " + own + "; Fit to a sheet changes that, too.")
        .map(Remark::of)
        .forEach(remarks::add);
    if (asked.goals().stream().anyMatch(AimAnswer::isToClose)) {
      return Closing.of(what, asked, outcome, remarks);
    }
    Suggestions ways = ways(what, outcome.values(), what.settings(outcome), asked.grid());
    remarks.addAll(ways.remarks());
    return new Proposal(outcome.isMet(), OfOutcome.dials(outcome), remarks, ways.all());
  }

  private static boolean isToClose(Goal goal) {
    return goal instanceof Goal.Reach(Measure measure, double wanted)
        && measure == Measure.GAP
        && wanted == 0;
  }

  /**
   * How turned dials can be taken.
   *
   * @param turned where those go that move, in the design's unit
   * @param settings all that are set then, as a person types them
   */
  static Suggestions ways(
      WhatIf what, Map<String, Double> turned, Map<String, String> settings, Grid grid)
      throws ScriptException {
    Suggestions ways = new Suggestions(what);
    if (!turned.isEmpty()) {
      ways.turn(settings);
      ways.writeAll(
          "Write it into the script",
          WholeScript.of(what, turned, grid.written(what.design().unit()), List.of()));
    }
    return ways;
  }
}
