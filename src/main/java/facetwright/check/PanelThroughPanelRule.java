package facetwright.check;

import facetwright.fold.touch.Collision;
import facetwright.net.PanelRole;
import facetwright.net.Site;
import java.util.ArrayList;
import java.util.List;

/**
 * Panels that pass through each other in the folded form. It keeps silent below what a hand can
 * cut, and only warns where the form's own gap is as large: mending that may mend both.
 */
final class PanelThroughPanelRule implements Rule {
  @Override
  public List<Finding> find(Subject subject) {
    // Two panels may each be off by what the joins miss.
    double gap = 2 * subject.folded().gap();
    List<Finding> found = new ArrayList<>();
    for (Collision c : subject.collisions()) {
      if (c.depth() <= Mm.HAIR) {
        continue;
      }
      found.add(
          new Finding(
              "panel-through-panel",
              c.depth() <= gap ? Finding.Severity.WARNING : Finding.Severity.ERROR,
              message(subject, c),
              fix(subject, c, gap),
              new Place.AtPanel(c.b()),
              site(subject, c)));
    }
    return found;
  }

  private static String message(Subject subject, Collision c) {
    return String.format(
        "When folded, %s and %s pass through each other: %s deep, %s long, %s above the table.",
        subject.named(c.a()),
        subject.named(c.b()),
        Mm.text(c.depth()),
        Mm.text(c.length()),
        Mm.text(Math.max(0, c.place().z())));
  }

  private static String fix(Subject subject, Collision c, double gap) {
    if (c.depth() <= gap) {
      return "First mend what keeps the form from closing; this may go with it.";
    }
    for (int panel : new int[] {c.a(), c.b()}) {
      if (subject.panel(panel).role() == PanelRole.TAB) {
        return "Make "
            + subject.name(panel)
            + " shallower, bevel its ends more, or change its fold angle.";
      }
    }
    return "Change the fold angle of one of them, make one shorter by the depth, or cut a window"
        + " for the other to go through.";
  }

  private static Site site(Subject subject, Collision c) {
    Site later = subject.panel(c.b()).site();
    return later.isKnown() ? later : subject.panel(c.a()).site();
  }
}
