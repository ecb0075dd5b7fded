package facetwright.fold.pose;

import facetwright.net.Net;
import java.io.Serializable;

/**
 * How far one panel has to bend for the joins to meet.
 *
 * @param panel index of the panel in its net
 * @param part how far its corners stand from a rigid panel, as part of its size (the distance of
 *     its farthest corners): 0.001 is 0.1 %
 */
public record PanelStrain(int panel, double part) implements Serializable {

  /** How far that is, in mm. */
  public double mm(Net net) {
    return part * BaseCorners.size(net.panels().get(panel).outline());
  }
}
