package facetwright.check.closing;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.message.Message;
import facetwright.net.PanelRole;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Pinched rows that have gone through each other: what keeps a form whose joins meet from being
 * made where neither panels deep in each other nor corners that lock were found.
 */
public final class InsideOutRule implements Rule {
  @Override
  public List<Finding> find(Subject subject) {
    FoldedForm form = subject.folded();
    boolean isKnown =
        form.closure() != Closure.IN_ITSELF
            || !form.obstacles(subject.net()).isEmpty()
            || !form.locked().isEmpty();
    if (isKnown) {
      return List.of();
    }
    int gusset =
        IntStream.range(0, subject.net().panels().size())
            .filter(p -> subject.panel(p).role() == PanelRole.GUSSET)
            .findFirst()
            .orElseThrow();
    return List.of(
        new Finding(
            "inside-out",
            Finding.Severity.ERROR,
            Message.of(
                "When folded, the walls lie so flat that the points of one pinched row, such as"
                    + " that of %s, reach through the row beyond.",
                subject.named(gusset)),
            Message.text(
                "Make the walls longer, or let the gussets point out: gusset({ point: \"out\" })."),
            new Place.AtPanel(gusset),
            subject.siteBeside(gusset)));
  }
}
