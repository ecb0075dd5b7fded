package facetwright.check.fit;

import facetwright.check.finding.Mm;
import facetwright.check.finding.Subject;
import facetwright.geom.Motion3;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.PanelRole;
import facetwright.net.Parts;
import java.util.List;
import java.util.Optional;

/**
 * Two parts in one place: a panel of the one lies in one plane with a panel of the other, over it,
 * and both face the same way, so that the two bodies lie behind it on the same side. Parts that do
 * not pass through each other may be so, as two alike ones, or a slim one in a wide one.
 *
 * @param a the one part
 * @param b the other, after it
 */
record Sharing(int a, int b) {
  /** What two panels share that is less than this, in mm², is the touch of their edges. */
  private static final double TOUCH = 1;

  /** The first two of a design's that neither go into nor onto each other. */
  static Optional<Sharing> of(Subject subject) {
    List<Parts.Part> parts = subject.net().parts().all();
    for (int b = 0; b < parts.size(); b++) {
      for (int a = 0; a < b; a++) {
        if (!PlacingRule.isNest(subject, a, b)
            && !isPlaced(subject, a, b)
            && share(subject, parts.get(a), parts.get(b))) {
          return Optional.of(new Sharing(a, b));
        }
      }
    }
    return Optional.empty();
  }

  private static boolean isPlaced(Subject subject, int a, int b) {
    return subject.net().parts().placings().stream()
        .anyMatch(p -> (p.part() == a && p.onto() == b) || (p.part() == b && p.onto() == a));
  }

  private static boolean share(Subject subject, Parts.Part a, Parts.Part b) {
    return a.panels().stream()
        .anyMatch(p -> b.panels().stream().anyMatch(q -> share(subject, p, q)));
  }

  private static boolean share(Subject subject, int p, int q) {
    if (isTab(subject, p) || isTab(subject, q)) {
      return false;
    }
    List<Motion3> poses = subject.folded().together().shut();
    Motion3 seen = poses.get(q).then(poses.get(p).inverse());
    List<Vec3> corners = subject.panel(q).outline().corners().stream().map(seen::apply).toList();
    if (seen.ez().z() < 0 || corners.stream().anyMatch(c -> Math.abs(c.z()) > Mm.HAIR)) {
      return false;
    }
    List<Vec2> flat = corners.stream().map(c -> new Vec2(c.x(), c.y())).toList();
    return Planar.sharedArea(Polygon2.ofEitherSense(flat), subject.panel(p).outline()) > TOUCH;
  }

  private static boolean isTab(Subject subject, int panel) {
    return subject.panel(panel).role() == PanelRole.TAB;
  }
}
