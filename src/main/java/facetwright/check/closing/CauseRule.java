package facetwright.check.closing;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

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
          new UnevenRimRule(),
          new SteepTaperRule(),
          new WideWallRule(),
          new WrongSidesRule(),
          new NarrowCornerRule(),
          new FlatCornerRule(),
          new TurnRoundRule(),
          new LapRoundRule(),
          new PinchedLapRule(),
          new TuckReachRule());

  /** What their findings are called. */
  Set<String> NAMES = ALL.stream().map(CauseRule::name).collect(Collectors.toUnmodifiableSet());

  /** What its findings are called. */
  String name();

  /** What keeps it from closing, each telling the verdict what follows "Does not close:". */
  @Override
  List<Finding> find(Subject subject);
}
