package facetwright.check.closing;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.fold.touch.Collision;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.PanelRole;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Panels that pass through each other in the folded form, tabs apart from the others: of each kind
 * those that are deepest in each other, and how many more. It keeps silent below what a hand can
 * cut, and where the form's own gap is as large: mending that may mend both. Tabs that reach past
 * the panel they are glued under have a rule of their own.
 */
public final class PanelThroughPanelRule implements Rule {
  @Override
  public List<Finding> find(Subject subject) {
    // Two panels may each be off by what the joins miss.
    double gap = subject.folded().closes() ? 0 : 2 * subject.folded().gap();
    List<Finding> found = new ArrayList<>();
    for (boolean ofTabs : new boolean[] {false, true}) {
      List<Collision> through =
          subject.folded().obstacles(subject.net()).stream()
              .filter(c -> c.isOfTab(subject.net()) == ofTabs)
              .filter(c -> c.pastHost(subject.net()).isEmpty())
              .filter(c -> c.isInOnePlace() || c.depth() > gap)
              .sorted(
                  Comparator.comparing(Collision::isInOnePlace)
                      .thenComparingDouble(Collision::depth)
                      .reversed())
              .toList();
      if (!through.isEmpty()) {
        found.add(finding(subject, through));
      }
    }
    return found;
  }

  private static Finding finding(Subject subject, List<Collision> through) {
    Collision worst = through.getFirst();
    return new Finding(
        "panel-through-panel",
        Finding.Severity.ERROR,
        message(subject, worst).plus(others(through)),
        fix(subject, worst),
        new Place.AtPanel(worst.b()),
        site(subject, worst));
  }

  private static Message others(List<Collision> through) {
    int others = through.size() - 1;
    return switch (others) {
      case 0 -> Message.EMPTY;
      case 1 -> Message.text(" So do two others.");
      default -> Message.of(" So do %s other pairs.", others);
    };
  }

  private static Message message(Subject subject, Collision c) {
    if (c.kind() == Collision.Kind.ROUND) {
      return Message.of(
          "When folded, %s and %s lie in one place, and what is joined to them comes round so that"
              + " each would have to be outside the other.",
          subject.named(c.a()), subject.named(c.b()));
    }
    if (c.kind() != Collision.Kind.PASSING) {
      return Message.of("When folded, %s.", InTheWay.words(subject, c, subject::named));
    }
    return Message.of(
        "When folded, %s and %s pass through each other: %s deep, %s long, %s above the table.",
        subject.named(c.a()),
        subject.named(c.b()),
        Value.length(c.depth()),
        Value.length(c.length()),
        Value.length(Math.max(0, c.place().z())));
  }

  private static Message fix(Subject subject, Collision c) {
    boolean isOfFolds = c.kind() == Collision.Kind.ROUND || c.kind() == Collision.Kind.OUTSIDE;
    if (!isOfFolds && !c.isOfTab(subject.net()) && isOfGusset(subject, c)) {
      return Message.text(
          "Make the walls beside the gussets longer, the pinched columns narrower, or let the"
              + " points go out: gusset({ point: \"out\" }).");
    }
    if (c.kind() != Collision.Kind.PASSING) {
      return InTheWay.fix(subject, c);
    }
    Optional<Message> shorter = Shorter.words(subject, c);
    for (int panel : new int[] {c.a(), c.b()}) {
      if (subject.panel(panel).role() == PanelRole.TAB) {
        return shorter
            .map(s -> s.plus(" That, or change its fold angle."))
            .orElse(Message.of("Take %s out, or change its fold angle.", subject.name(panel)));
      }
    }
    return shorter
        .map(s -> s.plus(" That, or change the fold angle of one of them."))
        .orElse(
            Message.text(
                "Change the fold angle of one of them, or cut a window for the other to go"
                    + " through."));
  }

  private static boolean isOfGusset(Subject subject, Collision c) {
    return subject.panel(c.a()).role() == PanelRole.GUSSET
        || subject.panel(c.b()).role() == PanelRole.GUSSET;
  }

  private static Site site(Subject subject, Collision c) {
    Site later = subject.siteBeside(c.b());
    return later.isKnown() ? later : subject.siteBeside(c.a());
  }
}
