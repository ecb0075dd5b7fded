package facetwright.adjust.propose;

import facetwright.adjust.Remark;
import facetwright.adjust.write.WholeScript;
import facetwright.aim.Goal;
import facetwright.aim.Outcome;
import facetwright.aim.OutcomeText;
import facetwright.measure.Unit;
import facetwright.net.sheet.SheetSize;
import facetwright.script.WhatIf;
import facetwright.script.sandbox.ScriptException;
import java.util.ArrayList;
import java.util.List;

/** What an aim came to, as a proposal. */
final class AimAnswer {
  private AimAnswer() {}

  static Proposal to(WhatIf what, Question.Aim asked) throws ScriptException {
    Unit unit = what.design().unit();
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
    Suggestions ways = new Suggestions(what);
    if (!outcome.settings().isEmpty()) {
      ways.turn(what.settings(outcome));
      ways.writeAll(
          "Write it into the script",
          WholeScript.of(what, outcome.values(), asked.grid().written(unit), List.of()));
    }
    remarks.addAll(ways.remarks());
    return new Proposal(outcome.isMet(), OfOutcome.dials(outcome), remarks, ways.all());
  }
}
