package facetwright.check.cut;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Overlap;
import facetwright.net.Overlaps;
import facetwright.net.PanelRole;
import java.util.List;

/** Panels that lie over each other in the flat net. */
public final class OverlapRule implements Rule {
  public static final String NAME = "overlap";

  @Override
  public List<Finding> find(Subject subject) {
    return Overlaps.find(subject.net()).stream().map(o -> finding(subject, o)).toList();
  }

  private static Finding finding(Subject subject, Overlap o) {
    boolean tab =
        subject.panel(o.a()).role() == PanelRole.TAB
            || subject.panel(o.b()).role() == PanelRole.TAB;
    return new Finding(
        NAME,
        Finding.Severity.ERROR,
        Message.of(
            "%s and %s share %s of the sheet: they can't both be cut from it.",
            subject.name(o.a()), subject.name(o.b()), Value.area(o.area())),
        tab
            ? Message.text(
                "Make the tab shallower, bevel it more, or put it on the other side of its seam.")
            : Message.text(
                "Cut one of them loose and join it by a tab, or hang it on another side."),
        new Place.AtPanel(o.b()),
        subject.panel(o.b()).site());
  }
}
