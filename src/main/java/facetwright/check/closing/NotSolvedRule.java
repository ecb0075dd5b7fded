package facetwright.check.closing;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.fold.pose.Closure;
import facetwright.message.Message;
import facetwright.net.Score;
import java.util.List;

/**
 * Fold angles that are not known and that no join determines, so that nobody can tell whether it
 * closes. Angles that joins would determine, were it not for the others, are not counted.
 */
public final class NotSolvedRule implements Rule {
  @Override
  public List<Finding> find(Subject subject) {
    if (subject.folded().closure() != Closure.NOT_SOLVED) {
      return List.of();
    }
    List<Integer> open = subject.folded().free();
    if (open.isEmpty()) {
      return List.of();
    }
    int first = open.getFirst();
    Score score = subject.net().scores().get(first);
    return List.of(
        new Finding(
            "not-solved",
            Finding.Severity.NOTE,
            Message.of(
                "Nothing determines how far %s folded%s. So it can't be told whether the form"
                    + " closes.",
                open.size() == 1
                    ? subject.name(score).plus(" is")
                    : Message.of("%s scores are", open.size()),
                open.size() == 1 ? "" : Message.of(": the first is %s", subject.name(score))),
            Message.text(
                "Give the fold angles you know, join sides that have to meet, and say with lap"
                    + " which panel lies under which."),
            new Place.AtScore(first),
            score.site()));
  }
}
