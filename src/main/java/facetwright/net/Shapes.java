package facetwright.net;

import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Outlines that a maker gives by corners, checked at the call. */
final class Shapes {
  private static final int MOST_CORNERS = 2000;

  private Shapes() {}

  /** Whether the panel's outline, as it stands now, neither crosses nor touches itself. */
  static boolean isSimple(PanelDraft panel) {
    try {
      return panel.outline().isSimple();
    } catch (IllegalArgumentException e) {
      return false;
    }
  }

  /** A simple outline through the corners; clockwise ones are turned, the first stays first. */
  static Polygon2 outline(String what, List<Vec2> corners, Site site) {
    Ask.count("the corners of " + what, corners.size(), 3, MOST_CORNERS, site);
    for (Vec2 c : corners) {
      Ask.between("a corner of " + what, c.x(), -Ask.MOST_MM, Ask.MOST_MM, " mm", site);
      Ask.between("a corner of " + what, c.y(), -Ask.MOST_MM, Ask.MOST_MM, " mm", site);
    }
    Polygon2 outline;
    try {
      outline = Polygon2.ofEitherSense(corners);
      if (!outline.corners().equals(corners)) {
        List<Vec2> turned = new ArrayList<>(outline.corners());
        Collections.rotate(turned, 1);
        outline = new Polygon2(turned);
      }
    } catch (IllegalArgumentException e) {
      throw new NetException("the corners of " + what + " lie on one line", site);
    }
    Ask.that(outline.isSimple(), "the outline of " + what + " crosses or touches itself", site);
    return outline;
  }
}
