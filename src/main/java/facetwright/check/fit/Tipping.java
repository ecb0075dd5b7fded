package facetwright.check.fit;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Mm;
import facetwright.check.finding.Place;
import facetwright.check.finding.Subject;
import facetwright.fold.pose.Body;
import facetwright.fold.pose.Together;
import facetwright.geom.Vec3;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Parts;
import java.util.ArrayList;
import java.util.List;

/**
 * Parts that stand on a point or on a straight edge, as on a spire or on the ridge of a roof: all
 * corners of what they stand on that are as high as their lowest lie on one line.
 *
 * <p>What it does not detect: parts that stand on a facet, but reach over its edge so far that they
 * tip.
 */
final class Tipping {
  private Tipping() {}

  static List<Finding> all(Subject subject) {
    Together together = subject.folded().together();
    List<Parts.Placing> placings = subject.net().parts().placings();
    List<Finding> found = new ArrayList<>();
    for (int i = 0; i < placings.size(); i++) {
      int number = i;
      if (placings.get(i) instanceof Parts.Placing.On on
          && together.refused().stream().noneMatch(r -> r.placing() == number)) {
        List<Vec3> under = contact(subject, on);
        if (!under.isEmpty() && isOnOneLine(under)) {
          found.add(finding(subject, on, under));
        }
      }
    }
    return found;
  }

  /** The corners of what it stands on that are as high as its own lowest. */
  private static List<Vec3> contact(Subject subject, Parts.Placing on) {
    List<Parts.Part> parts = subject.net().parts().all();
    List<Vec3> mine = corners(subject, parts.get(on.part()));
    double low = mine.stream().mapToDouble(Vec3::z).min().orElseThrow();
    return corners(subject, parts.get(on.onto())).stream()
        .filter(c -> Math.abs(c.z() - low) <= Mm.HAIR)
        .toList();
  }

  private static List<Vec3> corners(Subject subject, Parts.Part part) {
    return Body.corners(subject.net(), subject.folded().together().shut(), part.panels());
  }

  private static boolean isOnOneLine(List<Vec3> places) {
    Vec3 first = places.getFirst();
    Vec3 far = first;
    for (Vec3 p : places) {
      far = p.distance(first) > far.distance(first) ? p : far;
    }
    Vec3 along = far.minus(first);
    double length = along.length();
    return length <= Mm.HAIR
        || places.stream().allMatch(p -> p.minus(first).cross(along).length() / length <= Mm.HAIR);
  }

  private static Finding finding(Subject subject, Parts.Placing on, List<Vec3> under) {
    List<Parts.Part> parts = subject.net().parts().all();
    Value.Name part = Value.name(parts.get(on.part()).name());
    Value.Name host = Value.name(parts.get(on.onto()).name());
    boolean isPoint = under.stream().allMatch(c -> c.distance(under.getFirst()) <= Mm.HAIR);
    return new Finding(
        PlacingRule.NAME,
        Finding.Severity.WARNING,
        Message.of(
            "%s stands on %s of %s only: it tips.", part, isPoint ? "one point" : "one edge", host),
        Message.of(
            "Cut %s off level, so that there is a facet to stand on, or put %s beside it.",
            host, part),
        new Place.AtPanel(parts.get(on.part()).panels().getFirst()),
        on.site());
  }
}
