package facetwright.check;

import facetwright.fold.Closure;
import facetwright.net.FoldAngle;
import facetwright.net.Site;
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
    long unknown =
        subject.net().scores().stream().filter(s -> s.angle() instanceof FoldAngle.ToSolve).count();
    return List.of(
        new Finding(
            "not-solved",
            Finding.Severity.NOTE,
            String.format(
                "The fold angle is not known at %d %s and no join determines it, so it can't be"
                    + " told whether the form closes.",
                unknown, unknown == 1 ? "score" : "scores"),
            "Give the fold angles you know, or join what has to meet.",
            new Place.WholeNet(),
            Site.NONE));
  }
}
