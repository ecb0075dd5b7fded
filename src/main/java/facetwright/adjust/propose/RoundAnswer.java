package facetwright.adjust.propose;

import facetwright.adjust.Remark;
import facetwright.adjust.round.Rewriting;
import facetwright.adjust.round.Rounding;
import facetwright.adjust.round.RoundingText;
import facetwright.adjust.write.Written;
import facetwright.measure.Unit;
import facetwright.script.WhatIf;
import facetwright.script.sandbox.ScriptException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A rounding as a proposal. */
final class RoundAnswer {
  private RoundAnswer() {}

  static Proposal to(WhatIf what, Question.Round asked) throws ScriptException {
    Unit unit = what.design().unit();
    Rounding rounding = Rounding.of(what, asked.ruler(), asked.marks());
    RoundingText text = new RoundingText(rounding, unit);
    Suggestions ways = new Suggestions(what);
    if (rounding.isTurned()) {
      Map<String, String> settings = new LinkedHashMap<>(what.settings());
      rounding.turns().stream()
          .filter(Rounding.Turn::isTurned)
          .forEach(t -> settings.put(t.knob().name(), t.typed(asked.ruler(), unit)));
      ways.turn(settings);
      ways.writeAll("Write it into the script", Rewriting.of(what, rounding, false));
    }
    if (!rounding.constants().isEmpty()) {
      Written written = Rewriting.of(what, rounding, true);
      if (written.isThere()) {
        ways.write(
            rounding.isTurned()
                ? "Write it into the script, its fixed numbers, too"
                : "Change the fixed numbers in the script",
            Map.of(),
            written);
        if (!rounding.isTurned()) {
          ways.note(written);
        }
      }
    }
    List<Remark> remarks = new ArrayList<>();
    remarks.add(Remark.of(text.count()));
    text.unturned().map(Remark::of).ifPresent(remarks::add);
    if (!rounding.isTurned() && rounding.after().isOnRuler()) {
      remarks.add(Remark.of("There is nothing to turn."));
    }
    if (rounding.isTurned()) {
      text.effect().stream().map(Remark::of).forEach(remarks::add);
    }
    remarks.addAll(text.constants());
    text.drawn().map(Remark::of).ifPresent(remarks::add);
    text.left().stream().map(Remark::of).forEach(remarks::add);
    remarks.addAll(ways.remarks());
    boolean isMet = rounding.isTurned() || rounding.after().isOnRuler();
    return new Proposal(isMet, text.dials(), remarks, ways.all());
  }
}
