package facetwright.check.closing;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Subject;
import facetwright.geom.LengthTolerance;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.FoldAngle;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Pinched rows over a plain row whose rim can't close. Walls side by side with no gusset between
 * them meet the panels below in four right angles, so that they lean in as one flat wall or stand
 * upright; upright they can't, for beside a pinched column both ends of a wall's upright edge would
 * be where the next wall's are. So the rim is a polygon with one straight side for each run of such
 * walls: one side closes nothing, two have to be alike, and of more none is longer than the others
 * together (Euclid, Elements I.20, for three; for more from memory). Under a fin the corners of the
 * rim, too, are four right angles: it stands on two walls only, which lean in by half a pinched
 * column each. Walls folded right over onto each other would shorten a side; that is taken as meant
 * only where the script says so.
 *
 * <p>What it does not detect: rims that could close, but whose waist can't.
 */
final class UnevenRimRule implements CauseRule {
  private static final String NAME = "uneven-rim";

  /** Longer by less than this is not longer. */
  private static final LengthTolerance NOTHING = PinchedRow.NOTHING;

  /** Rims of three walls keep their shape; those of more can be pushed askew unless held. */
  private static final int RIGID = 6;

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public List<Finding> find(Subject subject) {
    return PinchedRound.all(subject.net()).stream()
        .filter(round -> !isSaid(subject, round))
        .flatMap(round -> why(subject, round).map(why -> finding(subject, round, why)).stream())
        .toList();
  }

  /** Whether it finds any. */
  static boolean isOf(Subject subject, PinchedRound round) {
    return !isSaid(subject, round) && why(subject, round).isPresent();
  }

  /** Whether it is said how far walls side by side are folded, and the form can be made so. */
  private static boolean isSaid(Subject subject, PinchedRound round) {
    return subject.folded().canBeMade(subject.net())
        && round.runs().stream()
            .anyMatch(
                run ->
                    subject.net().scores().stream()
                        .filter(s -> run.walls().contains(s.a().panel()))
                        .filter(s -> run.walls().contains(s.b().panel()))
                        .anyMatch(s -> s.angle() instanceof FoldAngle.Known));
  }

  private static Optional<Message> why(Subject subject, PinchedRound round) {
    List<PinchedRound.Run> runs = round.runs();
    if (!round.isHeld() || runs.isEmpty()) {
      return Optional.empty();
    }
    if (round.hasFin() && runs.size() > 2) {
      return Optional.of(
          Message.of(
              "a fin stands on two walls that lean together, and %s stand between the pinched"
                  + " columns",
              runs.size()));
    }
    if (isLowUnderFin(round)) {
      return Optional.of(
          Message.of(
              "under the fin the walls are %s tall, and have to be %s tall at least to lean"
                  + " together",
              Value.length(round.height()), Value.atLeast(underFin(round))));
    }
    PinchedRound.Run most =
        runs.stream().max(Comparator.comparingDouble(PinchedRound.Run::length)).orElseThrow();
    double others = runs.stream().mapToDouble(PinchedRound.Run::length).sum() - most.length();
    if (most.length() <= others + NOTHING.mm()) {
      return Optional.empty();
    }
    Message straight =
        Message.of(
            "between pinched columns %s one straight side of the rim, %s long",
            most.walls().size() == 1
                ? Message.of("%s is", subject.name(most.walls().getFirst()))
                : Message.of(
                    "%s to %s are",
                    subject.name(most.walls().getFirst()), subject.name(most.walls().getLast())),
            Value.length(most.length()));
    return Optional.of(
        runs.size() == 1
            ? Message.of("%s, and nothing stands across from it", straight)
            : Message.of(
                "%s, longer than what stands across from it, %s", straight, Value.length(others)));
  }

  private static Finding finding(Subject subject, PinchedRound round, Message why) {
    int wall = round.runs().getFirst().walls().getFirst();
    return new Finding(
            NAME,
            Finding.Severity.ERROR,
            why.capital().plus("."),
            fix(round),
            new Place.AtPanel(wall),
            subject.siteBeside(wall))
        .telling(why);
  }

  /** Whether the two walls under a fin are too low to lean together. */
  private static boolean isLowUnderFin(PinchedRound round) {
    return round.hasFin()
        && round.runs().size() == 2
        && underFin(round) > round.height() + NOTHING.mm();
  }

  /** How tall walls are that lean together over the columns pinched between them, in mm. */
  private static double underFin(PinchedRound round) {
    return round.columns().stream()
            .filter(PinchedRound.Column::isPinched)
            .mapToDouble(PinchedRound.Column::width)
            .max()
            .orElseThrow()
        / 2;
  }

  private static Message fix(PinchedRound round) {
    int runs = round.runs().size();
    if (round.hasFin() && runs > 2) {
      return Message.text(
          "Use four columns and pinch every second, or take away the row beyond the pinched one.");
    }
    return isLowUnderFin(round)
        ? Message.of("Make the pinched row %s tall or taller.", Value.atLeast(underFin(round)))
        : everySecond(round);
  }

  /** How to pinch so that it closes: every second column, on walls that reach. */
  static Message everySecond(PinchedRound round) {
    int n = round.columns().size();
    int even = n + n % 2;
    double width = round.columns().getFirst().width();
    boolean areAlike =
        round.columns().stream().allMatch(c -> LengthTolerance.FINE.same(c.width(), width));
    double reach = width / (2 * Math.sin(2 * Math.PI / even));
    return Message.of(
        "%s every second column, columns(\"even\")%s%s.",
        n % 2 == 0
            ? Message.text("Pinch")
            : Message.of("Use an even number of columns, such as %s, and pinch", even),
        areAlike && reach > round.height()
            ? Message.of(", on walls of %s or longer", Value.atLeast(reach))
            : Message.EMPTY,
        round.isHeld() || even <= RIGID ? "" : ", over a plain row that holds the waist");
  }
}
