package facetwright.net;

import facetwright.words.Site;
import java.io.Serializable;

/**
 * A crease between two panels. The two sides run along the same line in opposite directions.
 *
 * @param a the side of the one panel
 * @param b the side of the other
 * @param sense as seen on the outside
 * @param angle how far it is folded when made
 * @param perforated whether it is perforated rather than pressed, to tear or to fold more easily
 * @param hinge whether it stays a hinge, which opens and shuts
 * @param site where the script made it
 */
public record Score(
    EdgeRef a,
    EdgeRef b,
    Sense sense,
    FoldAngle angle,
    boolean perforated,
    boolean hinge,
    Site site)
    implements Serializable {

  /** The same score, its crest pointing this way. */
  public Score toward(Sense way) {
    return new Score(a, b, way, angle, perforated, hinge, site);
  }

  /** The same score, folded so far. */
  public Score folded(FoldAngle far) {
    return new Score(a, b, sense, far, perforated, hinge, site);
  }

  /** Whether it is on one side or the other of a panel. */
  public boolean isOf(int panel) {
    return a.panel() == panel || b.panel() == panel;
  }

  /** Whether a tab hangs on it. */
  public boolean isOfTab(Net net) {
    return net.panels().get(a.panel()).role() == PanelRole.TAB
        || net.panels().get(b.panel()).role() == PanelRole.TAB;
  }

  /** The panel on the other side of this score. */
  public int across(int panel) {
    return a.panel() == panel ? b.panel() : a.panel();
  }
}
