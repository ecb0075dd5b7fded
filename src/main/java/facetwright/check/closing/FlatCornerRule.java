package facetwright.check.closing;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Subject;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.Vertices;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.FoldAngle;
import facetwright.net.Score;
import facetwright.net.Stance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Corners that lie flat whatever is asked of them: three panels whose angles come to 360° or more
 * (Euclid, Elements XI.21), and scores that run straight through each other, of which one only can
 * be folded at a time (from memory: where two straight creases cross, the one must lie flat for the
 * other to turn).
 *
 * <p>It keeps silent where the form can be made, and where the folds there are not given.
 */
final class FlatCornerRule implements CauseRule {
  private static final String NAME = "flat-corner";

  /** Angles that differ by less are alike, in degrees. */
  private static final double NOTHING = 1e-4;

  private record Flat(Vertices.Vertex vertex, boolean isCrossing) {}

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public List<Finding> find(Subject subject) {
    return flat(subject).stream()
        .map(
            f -> {
              int panel = f.vertex.corners().getLast().panel();
              return new Finding(
                      NAME,
                      Finding.Severity.ERROR,
                      why(subject, f).capital().plus("."),
                      fix(f),
                      new Place.AtPanel(panel),
                      subject.siteBeside(panel))
                  .telling(why(subject, f));
            })
        .toList();
  }

  private static Message why(Subject subject, Flat flat) {
    Message met = subject.meeting(flat.vertex.corners());
    return flat.isCrossing
        ? Message.of(
            "%s, two scores run straight through each other, and only one of them can be folded",
            met)
        : Message.of(
            "%s, their three angles come to %s: so wide they lie flat and make no corner",
            met, Value.angle(flat.vertex.angleSum()));
  }

  private static Message fix(Flat flat) {
    return flat.isCrossing
        ? Message.text(
            "Fold one of the two by 0°, or cut along it instead, up to the other and beyond.")
        : Message.text(
            "Give them angles that come to less than 360° in all, such as 108° each, as panels of"
                + " five equal sides have; or fold none of them there: 0°.");
  }

  private static List<Flat> flat(Subject subject) {
    Closure closure = subject.folded().closure();
    if (closure != Closure.OPEN && closure != Closure.IN_ITSELF) {
      return List.of();
    }
    List<Flat> found = new ArrayList<>();
    for (Vertices.Vertex vertex : Vertices.of(subject.net(), subject.folded())) {
      if (!vertex.closed() || !isFolded(subject, vertex)) {
        continue;
      }
      int corners = vertex.corners().size();
      if (corners == 3 && vertex.angleSum() >= 360 - NOTHING) {
        found.add(new Flat(vertex, false));
      } else if (corners == 4 && vertex.interior() && isCrossing(subject, vertex)) {
        found.add(new Flat(vertex, true));
      }
    }
    return found;
  }

  /** Whether every score there has its fold given, and none of them is flat or right over. */
  private static boolean isFolded(Subject subject, Vertices.Vertex vertex) {
    int scores = 0;
    for (Score s : subject.net().scores()) {
      boolean isHere = isAt(vertex, s.a().panel()) && isAt(vertex, s.b().panel());
      if (isHere) {
        boolean isGiven =
            s.angle() instanceof FoldAngle.Known(double d, _) && d > NOTHING && d < 180 - NOTHING;
        if (!isGiven) {
          return false;
        }
        scores++;
      }
    }
    return scores > 0;
  }

  private static boolean isAt(Vertices.Vertex vertex, int panel) {
    return vertex.corners().stream().anyMatch(c -> c.panel() == panel);
  }

  /** Whether all four angles are such that the scores go straight on. */
  private static boolean isCrossing(Subject subject, Vertices.Vertex vertex) {
    List<Stance.Corner> round = inTurn(subject, vertex);
    if (round.size() != 4) {
      return false;
    }
    for (int i = 0; i < 4; i++) {
      double straight = angle(subject, round.get(i)) + angle(subject, round.get((i + 1) % 4));
      if (Math.abs(straight - 180) > NOTHING) {
        return false;
      }
    }
    return true;
  }

  /** The corners so that each is scored to the next. */
  private static List<Stance.Corner> inTurn(Subject subject, Vertices.Vertex vertex) {
    List<Stance.Corner> left = new ArrayList<>(vertex.corners());
    List<Stance.Corner> round = new ArrayList<>(List.of(left.removeFirst()));
    while (!left.isEmpty()) {
      int last = round.getLast().panel();
      Optional<Stance.Corner> next =
          left.stream().filter(c -> isScored(subject, last, c.panel())).findFirst();
      if (next.isEmpty()) {
        return List.of();
      }
      left.remove(next.get());
      round.add(next.get());
    }
    return round;
  }

  private static boolean isScored(Subject subject, int one, int two) {
    return subject.net().scores().stream()
        .anyMatch(
            s ->
                (s.a().panel() == one && s.b().panel() == two)
                    || (s.a().panel() == two && s.b().panel() == one));
  }

  private static double angle(Subject subject, Stance.Corner c) {
    return Math.toDegrees(subject.panel(c.panel()).outline().angle(c.corner()));
  }
}
