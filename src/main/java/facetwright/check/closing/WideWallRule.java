package facetwright.check.closing;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Subject;
import facetwright.fold.pose.Closure;
import facetwright.geom.AngleTolerance;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Segment2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.EdgeRef;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Tubes with a wall wider than the others together, which can't be closed round it (Euclid,
 * Elements I.20, for three; for more from memory). Walls are panels of four sides that hang
 * together by parallel ones, all round.
 *
 * <p>It keeps silent where the form can be made, and where that is not known.
 */
final class WideWallRule implements CauseRule {
  /** Sides that turn less from each other are parallel. */
  private static final AngleTolerance PARALLEL = AngleTolerance.UNSEEN;

  /** Wider by less than this is not wider. */
  private static final LengthTolerance NOTHING = LengthTolerance.UNSEEN;

  /**
   * @param wall the widest
   * @param wide how wide it is, in mm
   * @param others how wide the others are together, in mm
   */
  private record Wide(int wall, double wide, double others) {}

  @Override
  public List<Finding> find(Subject subject) {
    return wide(subject).stream()
        .map(
            w ->
                new Finding(
                    "wide-wall",
                    Finding.Severity.ERROR,
                    Message.of("%s%s.", subject.named(w.wall), words(w)),
                    Message.of(
                        "Make it %s wide or narrower, or the others %s wider in all.",
                        Value.atMost(w.others), Value.atLeast(w.wide - w.others)),
                    new Place.AtPanel(w.wall),
                    subject.siteBeside(w.wall)))
        .toList();
  }

  @Override
  public Optional<Message> words(Subject subject) {
    return wide(subject).stream()
        .findFirst()
        .map(w -> Message.of("%s%s", subject.name(w.wall), words(w)));
  }

  private static Message words(Wide w) {
    return Message.of(
        " is %s wide, wider than the other walls round it together, which are %s",
        Value.length(w.wide), Value.length(w.others));
  }

  private static List<Wide> wide(Subject subject) {
    boolean isOpen =
        subject.folded().closure() == Closure.OPEN
            || subject.folded().closure() == Closure.IN_ITSELF;
    if (!isOpen) {
      return List.of();
    }
    Map<EdgeRef, EdgeRef> across = new HashMap<>();
    for (Meeting m : Meeting.all(subject.net())) {
      across.put(m.a(), m.b());
      across.put(m.b(), m.a());
    }
    Set<EdgeRef> seen = new HashSet<>();
    List<Wide> found = new ArrayList<>();
    for (int p = 0; p < subject.net().panels().size(); p++) {
      for (int e = 0; e < 2 && subject.panel(p).outline().size() == 4; e++) {
        List<EdgeRef> tube = tube(subject, new EdgeRef(p, e), across);
        if (tube.size() >= 3 && tube.stream().noneMatch(seen::contains)) {
          tube.forEach(
              side -> {
                seen.add(side);
                seen.add(opposite(side));
              });
          widest(subject, tube).ifPresent(found::add);
        }
      }
    }
    return found;
  }

  /** The walls of a tube, each by the side it is left by; none where it does not go round. */
  private static List<EdgeRef> tube(Subject subject, EdgeRef first, Map<EdgeRef, EdgeRef> across) {
    List<EdgeRef> tube = new ArrayList<>();
    EdgeRef side = first;
    do {
      EdgeRef next = across.get(side);
      tube.add(side);
      boolean goesOn =
          isWall(subject, side)
              && next != null
              && subject.panel(next.panel()).outline().size() == 4
              && tube.size() <= subject.net().panels().size();
      if (!goesOn) {
        return List.of();
      }
      side = opposite(next);
    } while (!side.equals(first));
    return tube;
  }

  private static EdgeRef opposite(EdgeRef side) {
    return new EdgeRef(side.panel(), (side.edge() + 2) % 4);
  }

  private static boolean isWall(Subject subject, EdgeRef side) {
    Segment2 one = subject.net().segment(side);
    Segment2 two = subject.net().segment(opposite(side));
    return Math.abs(one.direction().cross(two.direction())) <= PARALLEL.radians();
  }

  private static double width(Subject subject, EdgeRef side) {
    Segment2 one = subject.net().segment(side);
    return Math.abs(
        one.direction().cross(subject.net().segment(opposite(side)).from().minus(one.from())));
  }

  private static Optional<Wide> widest(Subject subject, List<EdgeRef> tube) {
    EdgeRef widest =
        tube.stream().max(Comparator.comparingDouble(s -> width(subject, s))).orElseThrow();
    double wide = width(subject, widest);
    double all = tube.stream().mapToDouble(s -> width(subject, s)).sum();
    return 2 * wide - all > NOTHING.mm()
        ? Optional.of(new Wide(widest.panel(), wide, all - wide))
        : Optional.empty();
  }
}
