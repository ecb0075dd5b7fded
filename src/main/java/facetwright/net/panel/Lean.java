package facetwright.net.panel;

import facetwright.geom.RoundOff;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Ask;

/** What makes a flap possible whose ends are set back by too much. */
final class Lean {
  /** A depth under this is none to work with, in mm. */
  private static final double LEAST_DEPTH = 1;

  private Lean() {}

  /**
   * The one number to change, and the most or least that it may be.
   *
   * @param relief how far the ends are set back at the hinge, in mm; the depth has to be more
   * @param bevel how far the ends lean in, in degrees
   * @param most how far they may be set back in all, in mm
   */
  static Message mend(double depth, double relief, double bevel, double most) {
    if (relief >= most) {
      return Message.of("take a relief of at most %s", Value.atMost(most / 2));
    }
    if (depth <= relief) {
      return Message.of("take a depth of more than %s", Value.atLeast(relief));
    }
    double deepest = (most - relief) / Math.tan(Math.toRadians(bevel));
    if (deepest > Math.max(LEAST_DEPTH, relief)) {
      return Message.of("take a depth of at most %s", Value.atMost(deepest));
    }
    double steepest = Math.toDegrees(Math.atan((most - relief) / depth));
    return Message.of("take a bevel of at most %s°", Ask.text(RoundOff.floor(steepest)));
  }
}
