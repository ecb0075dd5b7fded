package facetwright.check.closing;

import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.net.Score;

/** Whether a net gives fold angles that could be left to its joins to determine. */
final class GivenAngles {
  private GivenAngles() {}

  /** Whether the angle of any score but those of tabs is given. */
  static boolean any(Net net) {
    return net.scores().stream()
        .anyMatch(s -> s.angle() instanceof FoldAngle.Known && !isOfTab(net, s));
  }

  private static boolean isOfTab(Net net, Score score) {
    return net.panels().get(score.a().panel()).role() == PanelRole.TAB
        || net.panels().get(score.b().panel()).role() == PanelRole.TAB;
  }
}
