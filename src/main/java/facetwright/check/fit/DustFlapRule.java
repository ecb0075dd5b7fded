package facetwright.check.fit;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.check.finding.TabShape;
import facetwright.fold.pose.Closure;
import facetwright.geom.AngleTolerance;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion3;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.Join.Hold;
import facetwright.net.Score;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Dust flaps under a lid that is tucked in: two that lie over each other, and one that stands where
 * the tuck goes in. A dust flap is what hangs on one panel alone and lies flat under the lid,
 * whether it was said to be one or not.
 *
 * <p>What it does not detect: flaps under a lid that is not tucked in.
 */
public final class DustFlapRule implements Rule {
  /** A flap and the lid that it lies under, where the lid lies in the net. */
  private record Flap(int panel, Polygon2 lying, Segment2 foot) {
    double depth() {
      return TabShape.depth(foot, lying);
    }
  }

  @Override
  public List<Finding> find(Subject subject) {
    List<Finding> found = new ArrayList<>();
    if (subject.folded().closure() == Closure.NOT_SOLVED) {
      return found;
    }
    for (Join join : subject.net().joins()) {
      if (join instanceof Join.Lap tuck && tuck.hold() == Hold.TUCK) {
        hinge(subject, tuck.under()).ifPresent(on -> under(subject, tuck, on, found));
      }
    }
    return found;
  }

  private static void under(Subject subject, Join.Lap tuck, EdgeRef on, List<Finding> found) {
    int lid = on.panel();
    List<Flap> flaps = new ArrayList<>();
    for (int p = 0; p < subject.net().panels().size(); p++) {
      if (p != lid && p != tuck.under()) {
        lying(subject, p, lid).ifPresent(flaps::add);
      }
    }
    Segment2 mouth = subject.net().segment(on);
    for (int j = 0; j < flaps.size(); j++) {
      Flap flap = flaps.get(j);
      double off = distance(flap.lying, mouth);
      double least = subject.caliper(lid);
      if (off < least - LengthTolerance.FINE.mm()) {
        found.add(
            finding(
                subject,
                flap,
                Message.of(
                    "%s stands where %s goes in, %s off: the tuck jams against it.",
                    subject.name(flap.panel), subject.name(tuck.under()), Value.length(off)),
                Message.of(
                    "Cut its end there back by %s or more: bevel it, or hang it on less of its"
                        + " edge.",
                    Value.atLeast(least - off))));
      }
      for (int i = 0; i < j; i++) {
        if (Glued.share(flaps.get(i).lying, flap.lying)) {
          found.add(over(subject, flaps.get(i), flap, lid));
        }
      }
    }
  }

  private static Finding over(Subject subject, Flap one, Flap two, int lid) {
    boolean isAcross =
        Math.abs(one.foot.direction().cross(two.foot.direction())) < AngleTolerance.FINE.radians();
    double apart =
        Math.abs(two.foot.middle().minus(one.foot.from()).dot(one.foot.direction().left()));
    if (!isAcross) {
      return finding(
          subject,
          two,
          Message.of(
              "%s and %s lie over each other under %s.",
              subject.name(one.panel), subject.name(two.panel), subject.name(lid)),
          TabShape.clear(one.foot, one.lying, two.foot, two.lying, (a, b) -> !Glued.share(a, b))
              .map(
                  s ->
                      Message.of(
                          "Bevel the ends of both by %s and make them at most %s deep.",
                          Value.angle(s.bevel()), Value.atMost(s.depth())))
              .orElse(Message.text("Leave one of the two out: there is no room for both.")));
    }
    return finding(
        subject,
        two,
        Message.of(
            "%s and %s lie over each other by %s under %s, whose opening is %s wide there.",
            subject.name(one.panel),
            subject.name(two.panel),
            Value.length(one.depth() + two.depth() - apart),
            subject.name(lid),
            Value.length(apart)),
        Message.of("Make each at most %s deep, half as deep as that.", Value.atMost(apart / 2)));
  }

  private static Finding finding(Subject subject, Flap flap, Message what, Message fix) {
    return new Finding(
        "dust-flaps",
        Finding.Severity.WARNING,
        what,
        fix,
        new Place.AtPanel(flap.panel),
        subject.panel(flap.panel).site());
  }

  /** The side of the panel that a panel hangs on, if it hangs on one alone. */
  private static Optional<EdgeRef> hinge(Subject subject, int panel) {
    EdgeRef found = null;
    for (Score score : subject.net().scores()) {
      if (score.isOf(panel)) {
        if (found != null) {
          return Optional.empty();
        }
        found = score.a().panel() == panel ? score.b() : score.a();
      }
    }
    return Optional.ofNullable(found);
  }

  /** A panel as it lies under a lid, if it hangs on one alone, is glued nowhere and lies there. */
  private static Optional<Flap> lying(Subject subject, int panel, int lid) {
    Optional<EdgeRef> on = hinge(subject, panel);
    if (on.isEmpty() || on.get().panel() == lid || isJoined(subject, panel)) {
      return Optional.empty();
    }
    Motion3 move =
        subject.folded().poses().get(panel).then(subject.folded().poses().get(lid).inverse());
    double thick = 2 * subject.caliper(lid);
    List<Vec2> corners = new ArrayList<>();
    for (Vec2 c : subject.panel(panel).outline().corners()) {
      Vec3 at = move.apply(c);
      if (Math.abs(at.z()) > thick) {
        return Optional.empty();
      }
      corners.add(new Vec2(at.x(), at.y()));
    }
    Polygon2 lying = Polygon2.ofEitherSense(corners);
    if (!Glued.share(lying, subject.panel(lid).outline())) {
      return Optional.empty();
    }
    Segment2 foot = subject.foot(panel);
    Vec3 from = move.apply(foot.from());
    Vec3 to = move.apply(foot.to());
    Segment2 there = new Segment2(new Vec2(from.x(), from.y()), new Vec2(to.x(), to.y()));
    boolean isTurned = there.direction().cross(lying.centroid().minus(there.from())) < 0;
    return Optional.of(new Flap(panel, lying, isTurned ? there.reversed() : there));
  }

  private static boolean isJoined(Subject subject, int panel) {
    return subject.net().joins().stream()
        .anyMatch(
            j ->
                switch (j) {
                  case Join.Seam s ->
                      s.tab() == panel || s.a().panel() == panel || s.b().panel() == panel;
                  case Join.Lap l ->
                      l.hold() != Hold.FLAP && (l.under() == panel || l.over() == panel);
                });
  }

  private static double distance(Polygon2 outline, Segment2 line) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < outline.size(); i++) {
      least = Math.min(least, outline.side(i).distance(line));
    }
    return least;
  }
}
