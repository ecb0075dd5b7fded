package facetwright.adjust.propose;

import facetwright.adjust.DialChange;
import facetwright.aim.Outcome;
import facetwright.aim.OutcomeText;
import facetwright.words.Decimals;
import java.util.List;

/** Where an aim turns dials, as proposals tell it. */
final class OfOutcome {
  private OfOutcome() {}

  static List<DialChange> dials(Outcome outcome) {
    return outcome.turns().stream()
        .map(
            t ->
                new DialChange(
                    t.knob().name(),
                    OutcomeText.text(t.was()),
                    t.isMoved() ? OutcomeText.text(t.typed()) : DialChange.STAYS,
                    t.isMoved() ? by(t.value() - t.knob().now()) : ""))
        .toList();
  }

  /** By how much a dial turns, in its own numbers, with its sign. */
  static String by(double turned) {
    String by = Decimals.places(turned, 3);
    return turned < 0 ? by : "+" + by;
  }
}
