package facetwright.check.closing;

import facetwright.net.FoldAngle;
import facetwright.net.Net;

/** Whether a net gives fold angles that could be left to its joins to determine. */
final class GivenAngles {
  private GivenAngles() {}

  /** Whether the angle of any score but those of tabs is given. */
  static boolean any(Net net) {
    return net.scores().stream()
        .anyMatch(s -> s.angle() instanceof FoldAngle.Known && !s.isOfTab(net));
  }
}
