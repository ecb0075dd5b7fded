package facetwright.check.cut;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.net.Clearance;
import java.util.List;

/** Windows and holes so near a score that the card folds there instead, or tears. */
public final class WindowNearScoreRule implements Rule {
  @Override
  public List<Finding> find(Subject subject) {
    return Openings.near(
        subject, "window-near-score", subject.scoredSides(), Clearance.FROM_SCORE, "a score");
  }
}
