package facetwright.fold;

import facetwright.fold.pose.Measures;
import facetwright.fold.touch.Collision;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.net.Score;
import facetwright.net.Sense;
import java.util.List;

/**
 * Pinched rings whose rows have gone through each other. Their walls lie so flat, and their gussets
 * so nearly in one plane, that no two panels reach far through each other; but a ring with its
 * outside out holds something, and these hold less than nothing, or their gussets cross over some
 * length, be it at an angle of next to nothing.
 *
 * <p>What it does not tell: rows that are through each other in places and still hold something,
 * which the collisions of their panels show.
 */
final class InsideOut {
  /** Points of gussets that meet cross over less than this, in mm; common practice, no source. */
  private static final double CROSSED = 2;

  private InsideOut() {}

  /**
   * Whether a form is one of these.
   *
   * @param measures of the form, its volume positive where outsides face out
   * @param collisions of its panels
   */
  static boolean is(Net net, Measures measures, List<Collision> collisions) {
    return (measures.volume() < 0 || collisions.stream().anyMatch(c -> areGussets(net, c)))
        && net.panels().stream().anyMatch(p -> p.role() == PanelRole.GUSSET)
        && net.joins().stream().anyMatch(Join.Seam.class::isInstance)
        && crests(net) > 0;
  }

  /** Whether gussets cross over more than a touch of their points, however flat. */
  private static boolean areGussets(Net net, Collision c) {
    return c.length() > CROSSED
        && net.panels().get(c.a()).role() == PanelRole.GUSSET
        && net.panels().get(c.b()).role() == PanelRole.GUSSET;
  }

  /** How much longer the mountains between facets are than the valleys, in mm. */
  private static double crests(Net net) {
    double longer = 0;
    for (Score s : net.scores()) {
      if (isFacet(net, s.a().panel()) && isFacet(net, s.b().panel())) {
        double length = net.segment(s.a()).length();
        longer += s.sense() == Sense.MOUNTAIN ? length : -length;
      }
    }
    return longer;
  }

  private static boolean isFacet(Net net, int panel) {
    return net.panels().get(panel).role() == PanelRole.FACET;
  }
}
