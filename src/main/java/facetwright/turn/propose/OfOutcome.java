package facetwright.turn.propose;

import facetwright.aim.Outcome;
import facetwright.aim.OutcomeText;
import facetwright.turn.Turned;
import java.util.List;

/** Where an aim turns dials, as proposals tell it. */
final class OfOutcome {
  private OfOutcome() {}

  static List<Turned> dials(Outcome outcome) {
    return outcome.turns().stream()
        .map(
            t ->
                new Turned(
                    t.knob().name(),
                    OutcomeText.told(t.was()),
                    t.isMoved() ? OutcomeText.told(t.typed()) : Turned.STAYS,
                    ""))
        .toList();
  }
}
