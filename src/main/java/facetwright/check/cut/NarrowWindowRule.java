package facetwright.check.cut;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Planar;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Opening;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.MinimumDiameter;

/** Windows too narrow for a knife to take card out of. */
public final class NarrowWindowRule implements Rule {
  static final double LEAST = Opening.NARROWEST;

  @Override
  public List<Finding> find(Subject subject) {
    List<Finding> found = new ArrayList<>();
    for (int p = 0; p < subject.net().panels().size(); p++) {
      for (Opening opening : subject.panel(p).openings()) {
        if (!(opening instanceof Opening.Window)) {
          continue;
        }
        double width = new MinimumDiameter(Planar.polygon(opening.outline())).getLength();
        if (width < LEAST - LengthTolerance.FINE.mm()) {
          found.add(
              new Finding(
                  "narrow-window",
                  Finding.Severity.WARNING,
                  Message.of(
                      "A window in %s is only %s wide: a knife can't take so narrow a strip out.",
                      subject.name(p), Value.length(width)),
                  Message.of(
                      "Make it at least %s wide, with a narrower border where it has one, or leave"
                          + " it out.",
                      Value.given(LEAST)),
                  new Place.AtPanel(p),
                  opening.site().isKnown() ? opening.site() : subject.panel(p).site()));
        }
      }
    }
    return found;
  }
}
