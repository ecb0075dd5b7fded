package facetwright.workbench.table;

import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.Net;
import facetwright.net.Panel;

/**
 * A distance between two places of the net.
 *
 * @param from where it begins; null before the first place is chosen
 * @param to where it ends; follows the pointer until it is chosen
 * @param done whether both ends are chosen
 */
record Measuring(Vec2 from, Vec2 to, boolean done) {
  static final Measuring NONE = new Measuring(null, null, false);

  /** The next place chosen. */
  Measuring choosing(Vec2 place) {
    return from == null || done
        ? new Measuring(place, place, false)
        : new Measuring(from, place, true);
  }

  /** The pointer moved. */
  Measuring following(Vec2 place) {
    return from == null || done ? this : new Measuring(from, place, false);
  }

  /** A corner within reach, else the nearest place of a line within reach, else the place. */
  static Vec2 snapped(Net net, Vec2 place, double reach) {
    Vec2 corner = null;
    Vec2 onLine = null;
    double toCorner = reach;
    double toLine = reach;
    for (Panel panel : net.panels()) {
      for (int i = 0; i < panel.outline().size(); i++) {
        Segment2 side = panel.outline().side(i);
        double off = side.from().distance(place);
        if (off < toCorner) {
          toCorner = off;
          corner = side.from();
        }
        double beside = side.distance(place);
        if (beside < toLine) {
          toLine = beside;
          onLine = Spot.nearest(side, place);
        }
      }
    }
    return corner != null ? corner : onLine != null ? onLine : place;
  }
}
