package facetwright.check.closing;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Mm;
import facetwright.check.finding.Place;
import facetwright.check.finding.Subject;
import facetwright.fold.Folding;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.Gaps;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import java.util.ArrayList;
import java.util.List;

/**
 * Panels of a pinched wrap that are to lie on each other where its gussets hold them apart. It is
 * so where the form closes once the laps are left out: that is tried, so its remedy holds. In a row
 * pinched to two walls, these meet in one edge at the rim, and never lie on each other.
 *
 * <p>What it does not detect: laps that keep a form from closing together with something else.
 */
final class PinchedLapRule implements CauseRule {
  private static final String NAME = "pinched-lap";

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public List<Finding> find(Subject subject) {
    Net net = subject.net();
    Closure closure = subject.folded().closure();
    boolean mayBe =
        (closure == Closure.OPEN || closure == Closure.NOT_SOLVED)
            && net.joins().stream().anyMatch(PinchedLapRule::isGlued)
            && net.panels().stream().anyMatch(p -> p.role() == PanelRole.GUSSET);
    if (!mayBe) {
      return List.of();
    }
    List<Finding> found = edgeOnEdge(subject);
    return found.isEmpty() && closure == Closure.OPEN ? apart(subject) : found;
  }

  private static boolean isGlued(Join join) {
    return join instanceof Join.Lap lap && lap.hold().isGlued();
  }

  private static List<Finding> edgeOnEdge(Subject subject) {
    List<Finding> found = new ArrayList<>();
    for (PinchedRound round : PinchedRound.all(subject.net())) {
      List<Integer> walls =
          round.runs().stream()
              .filter(r -> r.walls().size() == 1)
              .map(r -> r.walls().getFirst())
              .toList();
      for (Join join : subject.net().joins()) {
        if (round.runs().size() == 2
            && join instanceof Join.Lap lap
            && isGlued(lap)
            && walls.contains(lap.under())
            && walls.contains(lap.over())) {
          found.add(
              finding(
                  subject,
                  lap,
                  Message.of(
                      "%s can't lie under %s: the columns pinched between them bring the two"
                          + " together edge on edge",
                      subject.name(lap.under()), subject.name(lap.over())),
                  Message.text(
                      "Leave the lap out; to glue them, give each a row beyond that edge and lap"
                          + " these.")));
        }
      }
    }
    return found;
  }

  private static List<Finding> apart(Subject subject) {
    Net net = subject.net();
    List<Join> others = net.joins().stream().filter(j -> !isGlued(j)).toList();
    FoldedForm without = Folding.fold(subject.laid().with(net.joined(others)));
    if (!without.closes()) {
      return List.of();
    }
    List<Finding> found = new ArrayList<>();
    Gaps.of(net, without.poses(), subject.caliper())
        .forEach(
            gap -> {
              Join join = net.joins().get(gap.join());
              if (join instanceof Join.Lap lap && isGlued(lap) && gap.mm() > Mm.HAIR) {
                found.add(
                    finding(
                        subject,
                        lap,
                        Message.of(
                            "%s can't lie under %s: the gussets hold the two %s apart",
                            subject.name(lap.under()),
                            subject.name(lap.over()),
                            Value.length(gap.mm())),
                        Message.text("Leave the lap out: without it the form closes.")));
              }
            });
    return found;
  }

  private static Finding finding(Subject subject, Join.Lap lap, Message why, Message fix) {
    return new Finding(
            NAME,
            Finding.Severity.ERROR,
            why.plus("."),
            fix,
            new Place.AtPanel(lap.under()),
            subject.site(lap))
        .telling(why);
  }
}
