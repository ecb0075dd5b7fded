package facetwright.check;

import facetwright.fold.Closure;
import facetwright.net.Score;
import java.util.List;

/**
 * Fold angles that are not known and that no join determines, so that nobody can tell whether it
 * closes.
 */
final class NotSolvedRule implements Rule {
  @Override
  public List<Finding> find(Subject subject) {
    if (subject.folded().closure() != Closure.NOT_SOLVED) {
      return List.of();
    }
    List<Integer> open = OpenScores.of(subject.net());
    int first = open.getFirst();
    Score score = subject.net().scores().get(first);
    return List.of(
        new Finding(
            "not-solved",
            Finding.Severity.NOTE,
            String.format(
                "The fold angle is not known at %d %s, and no join determines it: the first is %s."
                    + " So it can't be told whether the form closes.",
                open.size(), open.size() == 1 ? "score" : "scores", subject.name(score)),
            "Give the fold angles you know, or join what has to meet.",
            new Place.AtScore(first),
            score.site()));
  }
}
