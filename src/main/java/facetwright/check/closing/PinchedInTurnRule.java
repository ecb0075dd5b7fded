package facetwright.check.closing;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.fold.pose.Closure;
import facetwright.message.Message;
import facetwright.words.Mend;
import java.util.List;
import java.util.Optional;

/**
 * Wraps whose columns are not pinched in turn: at some place two walls stand side by side with no
 * gusset between them, or two pinched columns with no wall between. It keeps silent where the form
 * closes all the same, and on rims that can't close for it, which have a rule of their own.
 */
public final class PinchedInTurnRule implements Rule {
  @Override
  public List<Finding> find(Subject subject) {
    if (subject.folded().closure() == Closure.CLOSES) {
      return List.of();
    }
    return PinchedRound.all(subject.net()).stream()
        .filter(round -> !UnevenRimRule.isOf(subject, round))
        .flatMap(round -> found(subject, round).stream())
        .toList();
  }

  private static Optional<Finding> found(Subject subject, PinchedRound round) {
    Optional<List<Integer>> walls =
        round.runs().stream()
            .map(PinchedRound.Run::walls)
            .filter(r -> r.size() > 1)
            .map(r -> r.subList(0, 2))
            .findFirst();
    Optional<List<Integer>> pinched = round.pinchedSideBySide();
    if (walls.isEmpty() && (pinched.isEmpty() || round.runs().isEmpty())) {
      return Optional.empty();
    }
    int columns = round.columns().size();
    boolean isInTurn = pinched.isEmpty() && columns == 2 * round.pinched() + 1;
    boolean sways = subject.folded().closure() == Closure.NOT_SOLVED;
    Message why =
        isInTurn ? odd(subject, walls.orElseThrow(), columns) : uneven(subject, walls, pinched);
    int panel = walls.or(() -> pinched).orElseThrow().getFirst();
    Finding finding =
        new Finding(
            "pinched-in-turn",
            Finding.Severity.WARNING,
            why.plus(
                sways ? ". Nothing holds the form in one shape: it can be pushed askew." : "."),
            isInTurn
                ? Message.of("Use an even number of columns: %s or %s.", columns - 1, columns + 1)
                : UnevenRimRule.everySecond(round),
            new Place.AtPanel(panel),
            subject.panel(panel).site(),
            isInTurn ? mends(columns) : List.of());
    return Optional.of(finding.telling(why));
  }

  private static Message odd(Subject subject, List<Integer> walls, int columns) {
    return Message.of(
        "%s and %s stand side by side with no gusset between them: every second column is pinched,"
            + " and %s columns are an odd number",
        subject.named(walls.getFirst()), subject.named(walls.getLast()), columns);
  }

  private static Message uneven(
      Subject subject, Optional<List<Integer>> walls, Optional<List<Integer>> pinched) {
    Optional<Message> plain =
        walls.map(
            w ->
                Message.of(
                    "%s and %s stand side by side with no gusset between them",
                    subject.named(w.getFirst()), subject.named(w.getLast())));
    Optional<Message> folded =
        pinched.map(
            p ->
                Message.of(
                    "%s and %s are pinched side by side with no wall between them",
                    subject.named(p.getFirst()), subject.named(p.getLast())));
    return plain
        .map(w -> folded.map(p -> Message.of("%s, and %s", w, p)).orElse(w))
        .or(() -> folded)
        .orElseThrow();
  }

  private static List<Mend> mends(int columns) {
    return List.of(
        new Mend.Value("columns", 0, List.of(), Integer.toString(columns + 1)),
        new Mend.Value("columns", 0, List.of(), Integer.toString(columns - 1)));
  }
}
