package facetwright.form;

import facetwright.words.Site;
import java.io.Serializable;

/**
 * What its maker said of the tab along one side of a facet.
 *
 * @param side the facet's side, from 0
 * @param bearer who bears the tab, if the side is cut
 * @param depth in mm, 0 for the depth of the other tabs
 * @param bevel the angle in degrees between the glued edge and the tab's slanted end, 0 for that of
 *     the other tabs
 * @param site where it was said
 */
public record EdgeTab(int side, Bearer bearer, double depth, double bevel, Site site)
    implements Serializable {

  /** Who bears a tab. */
  public enum Bearer {
    /** This facet. */
    THIS,
    /** The facet across the side. */
    OTHER,
    /** Whichever it fits better. */
    EITHER,
    /** None: there is no tab. */
    NONE;

    /** The same as told from the other facet. */
    public Bearer fromAcross() {
      return switch (this) {
        case THIS -> OTHER;
        case OTHER -> THIS;
        case EITHER, NONE -> this;
      };
    }
  }

  /** Whether it is to be as another, borne by who is said. */
  public boolean isLike(Bearer by, EdgeTab other) {
    return bearer == by && depth == other.depth && bevel == other.bevel;
  }
}
