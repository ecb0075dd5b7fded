package facetwright.check.fit;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Segment2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Join;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * Flaps that are to hold by friction, tucks and hooks, but reach in so little that they slip out.
 */
public final class ShallowFlapRule implements Rule {
  /** A flap that reaches in by less holds nothing, in mm; common practice, no source. */
  static final double LEAST = 5;

  @Override
  public List<Finding> find(Subject subject) {
    List<Finding> found = new ArrayList<>();
    for (Join join : subject.net().joins()) {
      OptionalInt flap = flap(join);
      if (flap.isPresent()) {
        double depth = depth(subject, flap.getAsInt());
        if (depth < LEAST - LengthTolerance.FINE.mm()) {
          found.add(finding(subject, join, flap.getAsInt(), depth));
        }
      }
    }
    return found;
  }

  private static OptionalInt flap(Join join) {
    return switch (join) {
      case Join.Lap l when l.hold() == Join.Hold.TUCK -> OptionalInt.of(l.under());
      case Join.Seam s when s.hold() == Join.Hold.HOOK && s.tab() != Join.Seam.NO_TAB ->
          OptionalInt.of(s.tab());
      default -> OptionalInt.empty();
    };
  }

  /** How far it reaches from its score, in mm. */
  private static double depth(Subject subject, int flap) {
    Segment2 foot = subject.foot(flap);
    return subject.panel(flap).outline().corners().stream()
        .mapToDouble(c -> Math.abs(foot.direction().cross(c.minus(foot.from()))))
        .max()
        .orElse(0);
  }

  private static Finding finding(Subject subject, Join join, int flap, double depth) {
    return new Finding(
        "shallow-flap",
        Finding.Severity.WARNING,
        Message.of(
            "%s reaches in by only %s: it slips out again, for only friction holds it.",
            subject.name(flap), Value.length(depth)),
        Message.of("Make the %s %s deep or deeper.", join.hold().word(), Value.atLeast(LEAST)),
        new Place.AtPanel(flap),
        subject.panel(flap).site());
  }
}
