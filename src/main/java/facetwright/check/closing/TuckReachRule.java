package facetwright.check.closing;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Mm;
import facetwright.check.finding.Place;
import facetwright.check.finding.Subject;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.JoinGap;
import facetwright.geom.Motion3;
import facetwright.geom.Segment2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.EdgeRef;
import facetwright.net.FoldAngle;
import facetwright.net.Join;
import facetwright.net.Score;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Tucks that do not come to lie behind their panel: the lid that bears one is too short to reach
 * it, or too long, or the tuck is folded so that it comes in askew. A lid that turns from its
 * hinge, D from the panel's plane, until its tuck folded by F lies along the panel, has to be D/sin
 * F deep (elementary).
 *
 * <p>What it does not detect: lids that hang on several scores or on a slanted one, and tucks that
 * lie in the plane of their panel but beside it. It keeps silent where anything but tucks misses.
 */
final class TuckReachRule implements CauseRule {
  private static final String NAME = "tuck-reach";

  /** Angles that differ by less are alike, in degrees. */
  private static final double ALIKE = 0.1;

  /** A tuck folded by less than this, or by as much less than 180°, leads behind nothing. */
  private static final double STEEP = 20;

  /** Parts of a direction smaller than this count for none. */
  private static final double LEVEL = 1e-3;

  /**
   * A tuck and what bears it.
   *
   * @param hinge of the tuck on its lid
   * @param lidHinge of the lid on what that hangs on
   */
  private record Tuck(Join.Lap lap, int lid, Score hinge, Score lidHinge) {}

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public List<Finding> find(Subject subject) {
    if (subject.folded().closure() != Closure.OPEN) {
      return List.of();
    }
    List<Finding> found = new ArrayList<>();
    for (JoinGap gap : subject.folded().gaps()) {
      if (gap.mm() <= Mm.HAIR) {
        continue;
      }
      if (!(subject.net().joins().get(gap.join()) instanceof Join.Lap lap)
          || lap.hold() != Join.Hold.TUCK) {
        return List.of();
      }
      tuck(subject, lap).flatMap(t -> why(subject, t)).ifPresent(found::add);
    }
    return found;
  }

  private static Optional<Tuck> tuck(Subject subject, Join.Lap lap) {
    List<Score> ofFlap = scores(subject, lap.under());
    if (ofFlap.size() != 1) {
      return Optional.empty();
    }
    Score hinge = ofFlap.getFirst();
    int lid = hinge.across(lap.under());
    List<Score> rest =
        scores(subject, lid).stream()
            .filter(s -> scores(subject, s.across(lid)).size() > 1)
            .toList();
    return rest.size() == 1
        ? Optional.of(new Tuck(lap, lid, hinge, rest.getFirst()))
        : Optional.empty();
  }

  private static List<Score> scores(Subject subject, int panel) {
    return subject.net().scores().stream().filter(s -> s.isOf(panel)).toList();
  }

  private static Optional<Finding> why(Subject subject, Tuck t) {
    Motion3 host = subject.folded().poses().get(t.lap.over());
    Segment2 from = side(subject, t.lidHinge, t.lid);
    Segment2 to = side(subject, t.hinge, t.lid);
    Motion3 seen = subject.folded().poses().get(t.lid).then(host.inverse());
    double one = seen.apply(from.from()).z();
    double other = seen.apply(from.to()).z();
    double away = -(one + other) / 2;
    boolean isLevel =
        Math.abs(one - other) < LEVEL * from.length()
            && Math.abs(from.direction().cross(to.direction())) < LEVEL;
    if (!isLevel || away < Mm.HAIR || !(t.hinge.angle() instanceof FoldAngle.Known known)) {
      return Optional.empty();
    }
    double needed =
        t.lidHinge.angle() instanceof FoldAngle.Known
            ? Math.toDegrees(Math.acos(Math.clamp(seen.ez().z(), -1, 1)))
            : known.degrees();
    if (needed < STEEP || needed > 180 - STEEP) {
      return Optional.empty();
    }
    double depth = Math.abs(from.direction().cross(to.from().minus(from.from())));
    double right = away / Math.sin(Math.toRadians(needed));
    boolean isAskew = Math.abs(known.degrees() - needed) > ALIKE;
    double caliper = subject.net().parts().caliperAt(t.lap.over(), subject.caliper());
    boolean isOff = right - depth > caliper || depth - right > Mm.HAIR;
    return isAskew || isOff
        ? Optional.of(finding(subject, t, isAskew, isOff, needed, depth, right))
        : Optional.empty();
  }

  private static Segment2 side(Subject subject, Score score, int panel) {
    EdgeRef side = score.a().panel() == panel ? score.a() : score.b();
    return subject.net().segment(side);
  }

  private static Finding finding(
      Subject subject,
      Tuck t,
      boolean isAskew,
      boolean isOff,
      double needed,
      double depth,
      double right) {
    Value.Name flap = subject.name(t.lap.under());
    Value.Name lid = subject.name(t.lid);
    Value.Name host = subject.name(t.lap.over());
    List<Message> whys = new ArrayList<>();
    List<Message> fixes = new ArrayList<>();
    if (isAskew) {
      whys.add(
          Message.of(
              "%s is folded by %s, and lies along %s when folded by %s",
              flap,
              Value.angle(((FoldAngle.Known) t.hinge.angle()).degrees()),
              host,
              Value.angle(needed)));
      fixes.add(Message.of("fold %s by %s", subject.name(t.hinge), Value.angle(needed)));
    }
    if (isOff) {
      whys.add(
          Message.of(
              "%s is %s deep, too %s for %s to go behind %s, which takes %s",
              lid,
              Value.length(depth),
              depth < right ? "short" : "long",
              flap,
              host,
              Value.length(right)));
      fixes.add(Message.of("make %s %s deep", lid, Value.length(right)));
    }
    Message why = Message.join("; and ", whys);
    return new Finding(
            NAME,
            Finding.Severity.ERROR,
            why.plus("."),
            Message.join(", and ", fixes).capital().plus("."),
            new Place.AtPanel(t.lap.under()),
            subject.panel(isOff ? t.lid : t.lap.under()).site())
        .telling(why);
  }
}
