package facetwright.adjust.propose;

import facetwright.adjust.DialChange;
import facetwright.adjust.Remark;
import facetwright.aim.Knob;
import facetwright.aim.KnobMend;
import facetwright.aim.Outcome;
import facetwright.aim.OutcomeText;
import facetwright.check.Summary;
import facetwright.check.cut.OffSheetRule;
import facetwright.check.finding.Finding;
import facetwright.measure.Unit;
import facetwright.script.WhatIf;
import facetwright.script.design.Design;
import facetwright.script.sandbox.ScriptException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Dials so that a design closes. Only those are offered with which it does: it is made whole with
 * them, as it would be when they are taken, and looked at.
 */
final class Closing {
  /** What keeps a form from being made that has nothing to do with its folding. */
  private static final Set<String> OF_THE_SHEET = Set.of(OffSheetRule.NAME);

  private final WhatIf what;
  private final Question.Aim asked;
  private final List<Remark> remarks;

  private Closing(WhatIf what, Question.Aim asked, List<Remark> remarks) {
    this.what = what;
    this.asked = asked;
    this.remarks = remarks;
  }

  /**
   * @param outcome what the search came to, by measures alone
   * @param remarks what there is to say of it
   */
  static Proposal of(WhatIf what, Question.Aim asked, Outcome outcome, List<Remark> remarks)
      throws ScriptException {
    return new Closing(what, asked, remarks).answer(outcome);
  }

  private Proposal answer(Outcome outcome) throws ScriptException {
    if (closes(what.design())) {
      remarks.addFirst(Remark.of("It closes as it stands."));
      return new Proposal(true, List.of(), remarks, List.of());
    }
    Map<String, String> settings = what.settings(outcome);
    Optional<Design> found = outcome.values().isEmpty() ? Optional.empty() : what.set(settings);
    if (outcome.isMet() && found.filter(Closing::closes).isPresent()) {
      remarks.addFirst(Remark.of("It closes with " + OutcomeText.settings(outcome) + "."));
      return offer(OfOutcome.dials(outcome), outcome.values(), settings);
    }
    Optional<KnobMend> mend = what.mend();
    if (mend.isPresent() && isFree(mend.get().knob())) {
      Knob knob = mend.get().knob();
      Map<String, String> turned = new LinkedHashMap<>(what.settings());
      turned.put(knob.name(), mend.get().typed());
      if (what.set(turned).filter(Closing::closes).isPresent()) {
        remarks.clear();
        remarks.add(Remark.of("It closes with " + knob.name() + " " + told(mend.get()) + "."));
        return offer(List.of(change(mend.get())), Map.of(knob.name(), mend.get().value()), turned);
      }
    }
    return none(found, mend);
  }

  private Proposal offer(
      List<DialChange> dials, Map<String, Double> turned, Map<String, String> settings)
      throws ScriptException {
    Suggestions ways = AimAnswer.ways(what, turned, settings, asked.grid());
    remarks.addAll(ways.remarks());
    return new Proposal(true, dials, remarks, ways.all());
  }

  /** Nothing is offered; what was found in vain and what would help are said. */
  private Proposal none(Optional<Design> found, Optional<KnobMend> mend) {
    Unit unit = what.design().unit();
    remarks.addFirst(
        Remark.of("No setting was found with which it closes, and so there is none to take."));
    found
        .filter(d -> !closes(d))
        .map(d -> "At the nearest: " + Summary.of(d.laid(), d.folded(), d.findings(), unit))
        .map(Remark::of)
        .ifPresent(remarks::add);
    mend.map(m -> "This comes nearer, though it does not close: " + m.text(unit))
        .map(Remark::of)
        .ifPresent(remarks::add);
    what.design().findings().stream()
        .filter(Closing::isAgainst)
        .map(Finding::fix)
        .filter(fix -> !fix.isEmpty())
        .findFirst()
        .map(fix -> "What would help: " + fix)
        .map(Remark::of)
        .ifPresent(remarks::add);
    return new Proposal(false, List.of(), remarks, List.of());
  }

  /** Whether a dial may be turned: all may where none is named. */
  private boolean isFree(Knob knob) {
    return asked.turn().isEmpty() || asked.turn().contains(knob.name());
  }

  private DialChange change(KnobMend mend) {
    Knob knob = mend.knob();
    Unit unit = what.design().unit();
    return new DialChange(
        knob.name(),
        OutcomeText.text(asked.grid().typed(knob, unit, knob.now())),
        told(mend),
        OfOutcome.by(mend.value() - knob.now()));
  }

  private static String told(KnobMend mend) {
    return OutcomeText.text(mend.typed());
  }

  /** Whether a whole design can be folded up as it is. */
  private static boolean closes(Design design) {
    return design.folded().closes() && design.findings().stream().noneMatch(Closing::isAgainst);
  }

  private static boolean isAgainst(Finding finding) {
    return finding.severity() == Finding.Severity.ERROR && !OF_THE_SHEET.contains(finding.rule());
  }
}
