package facetwright.check.closing;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Subject;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.Vertices;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Polygon2;
import facetwright.measure.Unit;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.EdgeRef;
import facetwright.net.Score;
import facetwright.net.Stance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Corners where one panel's angle is larger than those of the others together: then they can't all
 * meet (Euclid, Elements XI.20, for three; for more from memory), as where petals are too short to
 * reach each other over their base.
 *
 * <p>Of two triangles on neighbouring sides of a base, whose sides to be joined are both L long and
 * whose tips stand x and y from the corner along the base, the angles there add up to arccos(x/L) +
 * arccos(y/L): from that comes the least L, and how far the tips have to reach.
 *
 * <p>It keeps silent where the form can be made, and where that is not known.
 */
final class NarrowCornerRule implements CauseRule {
  private static final String NAME = "narrow-corner";

  /** Angles that lack less than this lack nothing, in degrees. */
  private static final double NOTHING = 1e-4;

  /** Sides that differ by less are of one length. */
  private static final LengthTolerance SAME = LengthTolerance.UNSEEN;

  private static final int HALVINGS = 60;

  /**
   * A corner that can't close.
   *
   * @param wide the corner of the panel with the largest angle
   * @param others the corners of the others
   * @param angle of that one, in degrees
   * @param together what the others add up to, in degrees
   */
  private record Narrow(
      Stance.Corner wide, List<Stance.Corner> others, double angle, double together) {}

  /**
   * A triangle on a side of the base.
   *
   * @param along how far its tip stands from the corner along that side, in mm
   * @param reach how far its tip stands from that side, in mm
   */
  private record Petal(int panel, double along, double reach) {
    private double side() {
      return Math.hypot(along, reach);
    }

    private double reachFor(double side) {
      return Math.sqrt(Math.max(0, side * side - along * along));
    }
  }

  /** Two of them, the deeper one first, and the least length of the sides to be joined. */
  private record Petals(Petal one, Petal two, double side) {}

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public List<Finding> find(Subject subject) {
    return narrow(subject).stream().map(n -> finding(subject, n)).toList();
  }

  private static Finding finding(Subject subject, Narrow n) {
    int panel = n.others.getFirst().panel();
    return new Finding(
            NAME,
            Finding.Severity.ERROR,
            why(subject, n).capital().plus("."),
            fix(subject, n),
            new Place.AtPanel(panel),
            subject.siteBeside(panel))
        .telling(why(subject, n));
  }

  private static Message why(Subject subject, Narrow n) {
    Optional<Petals> petals = petals(subject, n);
    if (petals.isPresent()) {
      Petals p = petals.get();
      double one = p.one.reachFor(p.side);
      double two = p.two.reachFor(p.side);
      boolean alike =
          Math.abs(one - two) < SAME.mm() && Math.abs(p.one.reach - p.two.reach) < SAME.mm();
      return Message.of(
          "%s and %s reach %s, and have to reach %s at least to meet over %s",
          subject.name(p.one.panel),
          subject.name(p.two.panel),
          alike
              ? Value.length(p.one.reach)
              : Message.of("%s and %s", Value.length(p.one.reach), Value.length(p.two.reach)),
          alike
              ? Value.atLeast(one)
              : Message.of("%s and %s", Value.atLeast(one), Value.atLeast(two)),
          subject.name(n.wide.panel()));
    }
    return Message.of(
        "where %s meet, the angle of %s is %s, more than the %s of the others together",
        names(subject, n),
        subject.name(n.wide.panel()),
        Value.angle(n.angle),
        Value.angle(n.together));
  }

  private static Message names(Subject subject, Narrow n) {
    List<Value.Name> names = new ArrayList<>();
    n.others.forEach(c -> names.add(subject.name(c.panel())));
    return Message.of("%s and %s", Message.join(", ", names), subject.name(n.wide.panel()));
  }

  private static Message fix(Subject subject, Narrow n) {
    Optional<Petals> petals = petals(subject, n);
    if (petals.isPresent()) {
      Petals p = petals.get();
      Value one = Value.atLeast(p.one.reachFor(p.side));
      Value two = Value.atLeast(p.two.reachFor(p.side));
      return (one.text(Unit.MM).equals(two.text(Unit.MM))
              ? Message.of("Make both at least %s deep", one)
              : Message.of(
                  "Make %s at least %s deep and %s %s",
                  subject.name(p.one.panel), one, subject.name(p.two.panel), two))
          .plus("; so deep they close flat, deeper they rise.");
    }
    double lacks = Math.ceil(100 * (n.angle - n.together)) / 100;
    return Message.of(
        "Make that angle of %s at least %s narrower, or those of the others as much wider in all.",
        subject.name(n.wide.panel()), Value.angle(lacks));
  }

  private static List<Narrow> narrow(Subject subject) {
    boolean isOpen =
        subject.folded().closure() == Closure.OPEN
            || subject.folded().closure() == Closure.IN_ITSELF;
    // Gussets of walls too short come to less than they have to, too.
    if (!isOpen || ShortWallRule.isOf(subject)) {
      return List.of();
    }
    List<Narrow> found = new ArrayList<>();
    for (Vertices.Vertex vertex : Vertices.of(subject.net(), subject.folded())) {
      if (!vertex.closed() || vertex.interior() || vertex.corners().size() < 3) {
        continue;
      }
      Stance.Corner wide =
          vertex.corners().stream()
              .max(Comparator.comparingDouble(c -> angle(subject, c)))
              .orElseThrow();
      double angle = angle(subject, wide);
      double together = vertex.angleSum() - angle;
      if (angle < 180 && angle - together > NOTHING) {
        List<Stance.Corner> others = new ArrayList<>(vertex.corners());
        others.remove(wide);
        found.add(new Narrow(wide, others, angle, together));
      }
    }
    return found;
  }

  private static double angle(Subject subject, Stance.Corner c) {
    return Math.toDegrees(subject.panel(c.panel()).outline().angle(c.corner()));
  }

  private static Optional<Petals> petals(Subject subject, Narrow n) {
    if (n.others.size() != 2) {
      return Optional.empty();
    }
    Optional<Petal> first = petal(subject, n.wide.panel(), n.others.getFirst());
    Optional<Petal> second = petal(subject, n.wide.panel(), n.others.getLast());
    if (first.isEmpty() || second.isEmpty()) {
      return Optional.empty();
    }
    boolean inTurn = first.get().reach >= second.get().reach;
    Petal one = inTurn ? first.get() : second.get();
    Petal two = inTurn ? second.get() : first.get();
    if (Math.abs(one.side() - two.side()) > SAME.mm()) {
      return Optional.empty();
    }
    double wide = Math.toRadians(n.angle);
    double low = one.side();
    // Sides that long stand square to the base: more can't be needed below 180°.
    double high = 2 * Math.max(one.along, two.along) / Math.cos(wide / 2);
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (Math.acos(one.along / middle) + Math.acos(two.along / middle) < wide) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Optional.of(new Petals(one, two, high));
  }

  /** A triangle scored to the base, seen from a corner of it; empty where it is none. */
  private static Optional<Petal> petal(Subject subject, int base, Stance.Corner corner) {
    Polygon2 outline = subject.panel(corner.panel()).outline();
    if (outline.size() != 3) {
      return Optional.empty();
    }
    for (Score s : subject.net().scores()) {
      EdgeRef side = s.a().panel() == corner.panel() ? s.a() : s.b();
      EdgeRef of = side.equals(s.a()) ? s.b() : s.a();
      if (side.panel() == corner.panel() && of.panel() == base) {
        int start = side.edge();
        int end = (start + 1) % 3;
        if (corner.corner() != start && corner.corner() != end) {
          continue;
        }
        var from = outline.corner(corner.corner());
        var along = outline.corner(corner.corner() == start ? end : start).minus(from).unit();
        var tip = outline.corner((start + 2) % 3).minus(from);
        double out = tip.dot(along);
        return out >= 0
            ? Optional.of(new Petal(corner.panel(), out, Math.abs(along.cross(tip))))
            : Optional.empty();
      }
    }
    return Optional.empty();
  }
}
