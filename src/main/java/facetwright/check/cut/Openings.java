package facetwright.check.cut;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Subject;
import facetwright.geom.Segment2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Clearance;
import facetwright.net.Opening;
import facetwright.net.OpeningMends;
import facetwright.words.Mend;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Openings that stand too near to a side of their panel. */
final class Openings {
  private Openings() {}

  /**
   * @param sides for each panel, the sides to look at
   */
  static List<Finding> near(
      Subject subject, String rule, List<List<Segment2>> sides, double least, String side) {
    List<Finding> found = new ArrayList<>();
    Map<Site, List<Mend>> mends = new HashMap<>();
    for (int p = 0; p < sides.size(); p++) {
      for (Opening opening : subject.panel(p).openings()) {
        double room =
            sides.get(p).stream().mapToDouble(opening::room).min().orElse(Double.POSITIVE_INFINITY);
        if (Clearance.isEnough(room, least)) {
          continue;
        }
        found.add(
            new Finding(
                rule,
                Finding.Severity.WARNING,
                Message.of(
                    "A %s in %s comes within %s of %s.",
                    opening.word(), subject.name(p), Value.length(room), side),
                Message.of(
                    "Leave at least %s, or the strip between may give way: move it %s inward or"
                        + " make it smaller.",
                    Value.length(least), Value.atLeast(least - room)),
                new Place.AtPanel(p),
                opening.site().isKnown() ? opening.site() : subject.panel(p).site(),
                mends.computeIfAbsent(opening.site(), s -> mends(subject, s))));
      }
    }
    return found;
  }

  private static List<Mend> mends(Subject subject, Site site) {
    return OpeningMends.of(Clearance.all(subject.net().panels(), subject.net().scores()), site);
  }
}
