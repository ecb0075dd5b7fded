package facetwright.check.cut;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Mm;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.geom.Planar;
import facetwright.message.Message;
import facetwright.message.Value;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.MinimumDiameter;

/** Panels too narrow to cut, crease and hold. */
public final class SharpSliverRule implements Rule {
  /** Narrowest panel, in mm; common practice, no source. */
  static final double LEAST = 2;

  @Override
  public List<Finding> find(Subject subject) {
    List<Finding> found = new ArrayList<>();
    for (int p = 0; p < subject.net().panels().size(); p++) {
      double width = new MinimumDiameter(Planar.polygon(subject.panel(p).outline())).getLength();
      if (width < LEAST) {
        found.add(
            new Finding(
                "sharp-sliver",
                Finding.Severity.WARNING,
                Message.of(
                    "%s %s %s wide: it is hard to cut and to crease.",
                    subject.name(p), width < Mm.LEAST ? "is" : "is only", Value.length(width)),
                Message.of("Make it at least %s wide, or leave it out.", Value.length(LEAST)),
                new Place.AtPanel(p),
                subject.panel(p).site()));
      }
    }
    return found;
  }
}
