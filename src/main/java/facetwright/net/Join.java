package facetwright.net;

import facetwright.words.Site;
import java.io.Serializable;

/** Two places of the net that end up together when the piece is made. */
public sealed interface Join extends Serializable {
  Site site();

  /**
   * Two sides meet along their length, the start of the one at the end of the other.
   *
   * @param a the side that carries the tab, where there is one
   * @param b the side it meets
   * @param tab the panel glued under {@code b}'s panel, or −1 when the sides only meet
   */
  record Seam(EdgeRef a, EdgeRef b, int tab, Site site) implements Join {
    public static final int NO_TAB = -1;
  }

  /**
   * One panel lies flat on another.
   *
   * @param under the panel that ends up inside
   * @param over the panel that ends up outside
   * @param glued whether glue holds it; if not, it is tucked in and slips
   */
  record Lap(int under, int over, boolean glued, Site site) implements Join {}
}
