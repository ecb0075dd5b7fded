package facetwright.check;

import facetwright.geom.Planar;
import facetwright.geom.Segment2;
import facetwright.net.Opening;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** Openings that stand too near to a side of their panel. */
final class Openings {
  private Openings() {}

  /**
   * @param sides for each panel, the sides to look at
   */
  static List<Finding> near(
      Subject subject, String rule, List<List<Segment2>> sides, double least, String side) {
    List<Finding> found = new ArrayList<>();
    for (int p = 0; p < sides.size(); p++) {
      for (Opening opening : subject.panel(p).openings()) {
        double room = room(opening, sides.get(p));
        if (room >= least) {
          continue;
        }
        String what = opening instanceof Opening.Hole ? "hole" : "window";
        found.add(
            new Finding(
                rule,
                Finding.Severity.WARNING,
                String.format(
                    "A %s in %s comes within %s of %s.",
                    what, subject.name(p), Mm.text(room), side),
                String.format(
                    "Leave at least %s, or the strip between may give way: move it %s inward or"
                        + " make it smaller.",
                    Mm.text(least), Mm.atLeast(least - room)),
                new Place.AtPanel(p),
                opening.site().isKnown() ? opening.site() : subject.panel(p).site()));
      }
    }
    return found;
  }

  private static double room(Opening opening, List<Segment2> sides) {
    Geometry outline = Planar.polygon(opening.outline());
    return sides.stream()
        .map(
            s ->
                Planar.factory()
                    .createLineString(
                        new Coordinate[] {Planar.coordinate(s.from()), Planar.coordinate(s.to())}))
        .mapToDouble(outline::distance)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }
}
