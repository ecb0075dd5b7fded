package facetwright.workbench.table;

import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.EdgeRef;
import facetwright.net.Net;

/** What lies at a place of the net. */
sealed interface Spot {
  /** Nothing of the net. */
  record Bare() implements Spot {}

  /** A score. */
  record OnScore(int score) implements Spot {}

  /** A side of a panel that is cut. */
  record OnCut(EdgeRef side) implements Spot {}

  /** The inside of a panel. */
  record OnPanel(int panel) implements Spot {}

  /**
   * What lies at a place.
   *
   * @param reach how near a line has to be, in mm
   */
  static Spot at(Net net, Vec2 place, double reach) {
    int score = -1;
    double least = reach;
    for (int s = 0; s < net.scores().size(); s++) {
      double off = net.segment(net.scores().get(s).a()).distance(place);
      if (off < least) {
        least = off;
        score = s;
      }
    }
    if (score >= 0) {
      return new OnScore(score);
    }
    EdgeRef cut = null;
    for (EdgeRef side : net.boundary()) {
      double off = net.segment(side).distance(place);
      if (off < least) {
        least = off;
        cut = side;
      }
    }
    int panel = panelAt(net, place);
    if (cut != null && least < reach / 2) {
      return new OnCut(cut);
    }
    return panel >= 0 ? new OnPanel(panel) : cut == null ? new Bare() : new OnCut(cut);
  }

  private static int panelAt(Net net, Vec2 place) {
    for (int p = 0; p < net.panels().size(); p++) {
      if (net.panels().get(p).outline().contains(place)) {
        return p;
      }
    }
    return -1;
  }

  /** The point of a segment nearest to a place. */
  static Vec2 nearest(Segment2 segment, Vec2 place) {
    Vec2 along = segment.to().minus(segment.from());
    double t = place.minus(segment.from()).dot(along) / along.dot(along);
    return segment.from().toward(segment.to(), Math.clamp(t, 0, 1));
  }
}
