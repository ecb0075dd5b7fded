package facetwright.check.closing;

import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.message.Message;
import java.util.List;
import java.util.Optional;

/**
 * A rule on what keeps a form from closing: a length or an angle that no folding makes up. Where
 * one is told, misses and panels in each other's way are not told beside it, for they come of it;
 * and the verdict begins with it.
 */
public interface CauseRule extends Rule {
  /** The causes looked for, the surest first. */
  List<CauseRule> ALL =
      List.of(
          new ShortWallRule(),
          new WideWallRule(),
          new WrongSidesRule(),
          new NarrowCornerRule(),
          new FlatCornerRule(),
          new TurnRoundRule());

  /** What keeps it from closing, as it follows "Does not close:"; empty where this does not. */
  Optional<Message> words(Subject subject);

  /** The first cause there is, in words. */
  static Optional<Message> first(Subject subject) {
    return ALL.stream().flatMap(rule -> rule.words(subject).stream()).findFirst();
  }
}
