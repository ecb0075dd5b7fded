package facetwright.check.closing;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Subject;
import facetwright.fold.pose.Closure;
import facetwright.geom.LengthTolerance;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.EdgeRef;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Tubes with a wall wider than the others together, which can't be closed round it (Euclid,
 * Elements I.20, for three; for more from memory). Walls are those of a {@link Tube}.
 *
 * <p>It keeps silent where the form can be made, and where that is not known.
 */
final class WideWallRule implements CauseRule {
  private static final String NAME = "wide-wall";

  /** Wider by less than this is not wider. */
  private static final LengthTolerance NOTHING = LengthTolerance.UNSEEN;

  /**
   * @param wall the widest
   * @param wide how wide it is, in mm
   * @param others how wide the others are together, in mm
   */
  private record Wide(int wall, double wide, double others) {}

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public List<Finding> find(Subject subject) {
    return wide(subject).stream()
        .map(
            w ->
                new Finding(
                        NAME,
                        Finding.Severity.ERROR,
                        Message.of("%s%s.", subject.named(w.wall), words(w)),
                        Message.of(
                            "Make it %s wide or narrower, or the others %s wider in all.",
                            Value.atMost(w.others), Value.atLeast(w.wide - w.others)),
                        new Place.AtPanel(w.wall),
                        subject.siteBeside(w.wall))
                    .telling(Message.of("%s%s", subject.name(w.wall), words(w))))
        .toList();
  }

  /** Whether it finds any. */
  static boolean isOf(Subject subject) {
    return !wide(subject).isEmpty();
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
    return Tube.all(subject).stream().flatMap(t -> widest(subject, t.sides()).stream()).toList();
  }

  private static Optional<Wide> widest(Subject subject, List<EdgeRef> tube) {
    EdgeRef widest =
        tube.stream().max(Comparator.comparingDouble(s -> Tube.width(subject, s))).orElseThrow();
    double wide = Tube.width(subject, widest);
    double all = tube.stream().mapToDouble(s -> Tube.width(subject, s)).sum();
    return 2 * wide - all > NOTHING.mm()
        ? Optional.of(new Wide(widest.panel(), wide, all - wide))
        : Optional.empty();
  }
}
