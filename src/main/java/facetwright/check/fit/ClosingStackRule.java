package facetwright.check.fit;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Mm;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Join;
import facetwright.net.PanelRole;
import java.util.ArrayList;
import java.util.List;

/**
 * Panels that lie on each other where a panel is glued over them, or so many that no pressing makes
 * it up: see {@link ClosingStack}. Tabs that lie on each other with nothing closing over them, as
 * those of a rim do, are what the design asks for; how thick they are is the handout's to say.
 */
public final class ClosingStackRule implements Rule {
  private static final int NAMED = 4;

  @Override
  public List<Finding> find(Subject subject) {
    List<Finding> found = new ArrayList<>();
    for (ClosingStack stack : ClosingStack.of(subject.laid(), subject.folded())) {
      if (stack.thickness() > Mm.MISFIT || isClosedOver(subject, stack)) {
        found.add(finding(subject, stack));
      }
    }
    return found;
  }

  /** Whether a panel of the stack is glued over another of it. */
  private static boolean isClosedOver(Subject subject, ClosingStack stack) {
    return subject.net().joins().stream()
        .anyMatch(
            j ->
                switch (j) {
                  case Join.Seam s ->
                      stack.panels().contains(s.b().panel()) && stack.panels().contains(s.tab());
                  case Join.Lap l ->
                      stack.panels().contains(l.under()) && stack.panels().contains(l.over());
                });
  }

  private static Finding finding(Subject subject, ClosingStack stack) {
    double thick = stack.thickness();
    Message names =
        Message.join(", ", stack.panels().stream().limit(NAMED).map(subject::name).toList());
    int last = stack.panels().getLast();
    return new Finding(
        "closing-stack",
        thick > Mm.MISFIT ? Finding.Severity.WARNING : Finding.Severity.NOTE,
        Message.of(
            "%s panels lie on each other when folded (%s%s): the card is %s thick there, and what"
                + " closes over it stands off by as much.",
            stack.panels().size(),
            names,
            stack.panels().size() > NAMED ? " and more" : "",
            Value.length(thick)),
        stack.panels().stream().anyMatch(p -> subject.panel(p).role() == PanelRole.TAB)
            ? Message.text(
                "Make the tabs shallower or bevel their ends more, so that fewer meet in one place;"
                    + " or take thinner card.")
            : Message.text("Take thinner card, or give what closes over it that much more room."),
        new Place.AtPanel(last),
        subject.panel(last).site());
  }
}
