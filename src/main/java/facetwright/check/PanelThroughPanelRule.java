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
    boolean isTold = false;
    for (Collision c : subject.folded().collisions()) {
      if (!c.isInTheWay() || (c.isInOnePlace() && isTold)) {
        continue;
      }
      isTold |= c.isInOnePlace();
      found.add(
          new Finding(
              "panel-through-panel",
              isOfGap(c, gap) ? Finding.Severity.WARNING : Finding.Severity.ERROR,
              message(subject, c),
              fix(subject, c, gap),
              new Place.AtPanel(c.b()),
              site(subject, c)));
    }
    return found;
  }

  private static boolean isOfGap(Collision c, double gap) {
    return !c.isInOnePlace() && c.depth() <= gap;
  }

  private static String message(Subject subject, Collision c) {
    if (c.isInOnePlace()) {
      return String.format(
          "When folded, %s and %s lie in one place, and what is joined to them comes round so that"
              + " each would have to be outside the other.",
          subject.named(c.a()), subject.named(c.b()));
    }
    return String.format(
        "When folded, %s and %s pass through each other: %s deep, %s long, %s above the table.",
        subject.named(c.a()),
        subject.named(c.b()),
        Mm.text(c.depth()),
        Mm.text(c.length()),
        Mm.text(Math.max(0, c.place().z())));
  }

  private static String fix(Subject subject, Collision c, double gap) {
    if (isOfGap(c, gap)) {
      return "First mend what keeps the form from closing; this may go with it.";
    }
    if (c.isInOnePlace()) {
      return "The card runs round more than once: change the fold angles, so that they add up to"
          + " 360° once round, or take panels out.";
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
