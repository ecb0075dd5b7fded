package facetwright.script;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.draw.LabelSetting;
import facetwright.draw.Lettering;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Net;
import facetwright.net.fitting.Label;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Labels that find no room on their panels, or less than was asked for. */
final class LabelChecks {
  /** Type that is smaller by less is as large as it was asked for, in mm. */
  private static final double SAME = 0.05;

  private LabelChecks() {}

  static List<Finding> of(Net net) {
    List<Finding> found = new ArrayList<>();
    for (Label label : net.fittings().labels()) {
      Optional<LabelSetting> set = LabelSetting.of(net, label);
      Value.Name on = Value.name(net.panels().get(label.panel()).name());
      Value.Name text = Value.name(label.asked().text());
      if (set.isEmpty()) {
        found.add(
            finding(
                Finding.Severity.WARNING,
                Message.of(
                    "The label %s has no room on %s even in the smallest type that is read, %s: it"
                        + " is left out.",
                    text, on, Value.length(Lettering.pt(Lettering.SMALLEST_PT))),
                Message.text("Shorten it, or put it on a larger panel."),
                label));
      } else if (label.asked().isSized() && set.get().size() < label.asked().size() - SAME) {
        found.add(
            finding(
                Finding.Severity.NOTE,
                Message.of(
                    "The label %s is set in type of %s on %s, for %s has no room there.",
                    text, Value.atMost(set.get().size()), on, Value.length(label.asked().size())),
                Message.of("Ask for %s or less, or shorten it.", Value.atMost(set.get().size())),
                label));
      }
    }
    return found;
  }

  private static Finding finding(
      Finding.Severity severity, Message what, Message remedy, Label label) {
    return new Finding(
        "label", severity, what, remedy, new Place.AtPanel(label.panel()), label.asked().site());
  }
}
