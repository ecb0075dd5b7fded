package facetwright.check.cut;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.net.Clearance;
import java.util.List;

/** Windows and holes so near a cut edge that the strip between may tear. */
public final class HoleNearEdgeRule implements Rule {
  @Override
  public List<Finding> find(Subject subject) {
    return Openings.near(
        subject, "hole-near-edge", subject.cutSides(), Clearance.FROM_EDGE, "the edge");
  }
}
