package facetwright.check.closing;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Mm;
import facetwright.check.finding.Place;
import facetwright.check.finding.Subject;
import facetwright.fold.close.LeastGap;
import facetwright.fold.pose.Closure;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Segment2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.Net;
import java.util.ArrayList;
import java.util.List;

/**
 * Joins of sides that can't come together, however the scores between them are folded: as where two
 * walls are joined by the sides that lie away from each other.
 *
 * <p>It keeps silent where the form can be made, where walls too short or too wide are told, on
 * sides that share a corner, which angles decide, and where {@link LeastGap} tells nothing.
 */
final class WrongSidesRule implements CauseRule {
  private static final String NAME = "wrong-sides";

  /** Seams that are told are too far apart, by this much at least. */
  private record Apart(int join, Join.Seam seam, double least) {}

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public List<Finding> find(Subject subject) {
    List<Apart> apart = apart(subject);
    if (apart.isEmpty()) {
      return List.of();
    }
    List<Join.Seam> seams = apart.stream().map(Apart::seam).toList();
    List<Message> mends = mends(subject, seams);
    List<Finding> found = new ArrayList<>();
    for (int i = 0; i < apart.size(); i++) {
      Apart a = apart.get(i);
      found.add(
          new Finding(
                  NAME,
                  Finding.Severity.ERROR,
                  why(subject, a).capital().plus("."),
                  mends.isEmpty() ? farther(subject, a) : mends.get(i),
                  new Place.AtJoin(a.join),
                  subject.site(a.seam))
              .telling(why(subject, a)));
    }
    return found;
  }

  private static Message why(Subject subject, Apart a) {
    return Message.of(
        "%s and %s are joined, and stay %s apart at least, however it is folded",
        subject.side(a.seam.a()), subject.side(a.seam.b()), Value.length(a.least));
  }

  private static List<Message> mends(Subject subject, List<Join.Seam> seams) {
    Rejoined.Advice advice = Rejoined.of(subject, seams);
    Message left = advice.left().map(m -> Message.of(" So joined, %s", m)).orElse(Message.EMPTY);
    return advice.seams().stream()
        .map(
            to ->
                Message.of(
                    "Join sides that meet%s: %s with %s.%s",
                    shareCorner(subject.net(), to.a(), to.b()) ? " at a corner" : "",
                    subject.side(to.a()),
                    subject.side(to.b()),
                    left))
        .toList();
  }

  private static Message farther(Subject subject, Apart a) {
    return Message.of(
        "Make %s and %s reach at least %s farther in all, or what lies between them smaller; or"
            + " leave this join out.",
        subject.name(a.seam.a().panel()),
        subject.name(a.seam.b().panel()),
        Value.atLeast(LeastGap.enough(a.least)));
  }

  private static List<Apart> apart(Subject subject) {
    boolean isTold = ShortWallRule.isOf(subject) || WideWallRule.isOf(subject);
    if (subject.folded().closure() != Closure.OPEN || isTold) {
      return List.of();
    }
    Net net = subject.net();
    List<Apart> apart = new ArrayList<>();
    for (int j = 0; j < net.joins().size(); j++) {
      if (net.joins().get(j) instanceof Join.Seam seam
          && !shareCorner(net, seam.a(), seam.b())
          && SeamLengthsRule.difference(subject, seam) <= Mm.HAIR
          && subject.folded().gaps().get(j).mm() > Mm.HAIR) {
        double least = LeastGap.of(net, seam.a(), seam.b(), Mm.HAIR);
        if (least > 0) {
          apart.add(new Apart(j, seam, least));
        }
      }
    }
    return apart;
  }

  /** Whether one begins where the other ends, in the net already. */
  static boolean shareCorner(Net net, EdgeRef a, EdgeRef b) {
    Segment2 one = net.segment(a);
    Segment2 two = net.segment(b);
    return LengthTolerance.FINE.same(one.from(), two.to())
        || LengthTolerance.FINE.same(one.to(), two.from());
  }
}
