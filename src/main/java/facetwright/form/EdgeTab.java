package facetwright.form;

import facetwright.net.Join.Hold;
import facetwright.words.Site;
import java.io.Serializable;

/**
 * What its maker said of what holds one side of a facet to the facet across it.
 *
 * @param side the facet's side, from 0
 * @param bearer who bears the tab, if the side is cut
 * @param depth in mm, 0 for the depth of the other tabs
 * @param bevel the angle in degrees between the glued edge and the tab's slanted end, 0 for that of
 *     the other tabs
 * @param hold what holds the tab; one that is tucked in makes a cut of the side
 * @param cut how a flap that holds without glue is cut
 * @param site where it was said
 */
public record EdgeTab(
    int side, Bearer bearer, double depth, double bevel, Hold hold, FlapCut cut, Site site)
    implements Serializable {

  /** Who bears a tab. */
  public enum Bearer {
    /** This facet. */
    THIS,
    /** The facet across the side. */
    OTHER,
    /** Whichever it fits better. */
    EITHER,
    /** Both, each on half of the side. */
    BOTH,
    /** None: there is no tab. */
    NONE,
    /** None: the two hang together there, and the fold stays a hinge. */
    HINGE;

    /** The same as told from the other facet. */
    public Bearer fromAcross() {
      return switch (this) {
        case THIS -> OTHER;
        case OTHER -> THIS;
        case EITHER, BOTH, NONE, HINGE -> this;
      };
    }
  }

  /** A tab to be glued, of a side yet to be told. */
  public static EdgeTab glued(Bearer bearer, double depth, double bevel, Site site) {
    return new EdgeTab(-1, bearer, depth, bevel, Hold.GLUE, FlapCut.PLAIN, site);
  }

  /** A hook on each side, of a side yet to be told. */
  public static EdgeTab hooked(double depth, double bevel, double relief, Site site) {
    return new EdgeTab(-1, Bearer.BOTH, depth, bevel, Hold.HOOK, FlapCut.hook(relief), site);
  }

  /** A tongue on one of the sides, of a side yet to be told. */
  public static EdgeTab tongue(Bearer bearer, double depth, FlapCut cut, Site site) {
    return new EdgeTab(-1, bearer, depth, 0, Hold.LATCH, cut, site);
  }

  /** A side that is cut and stays loose, as those of a lid; yet to be told. */
  static EdgeTab loose(Site site) {
    return new EdgeTab(-1, Bearer.NONE, 0, 0, Hold.FLAP, FlapCut.PLAIN, site);
  }

  /** A side whose fold stays a hinge; yet to be told. */
  static EdgeTab hinge(Site site) {
    return new EdgeTab(-1, Bearer.HINGE, 0, 0, Hold.FLAP, FlapCut.PLAIN, site);
  }

  EdgeTab on(int mySide) {
    return new EdgeTab(mySide, bearer, depth, bevel, hold, cut, site);
  }

  EdgeTab fromAcross(int itsSide) {
    return new EdgeTab(itsSide, bearer.fromAcross(), depth, bevel, hold, cut, site);
  }

  /** Whether the side has to be cut in the net. */
  public boolean isCut() {
    return !hold.isGlued() && bearer != Bearer.HINGE;
  }

  /** Whether the side is cut and nothing is joined along it, as round a lid. */
  public boolean isLoose() {
    return (hold == Hold.TUCK || hold == Hold.FLAP) && bearer != Bearer.HINGE;
  }

  public boolean isHinge() {
    return bearer == Bearer.HINGE;
  }

  /**
   * Whether it is a flap that is slipped in behind a facet, not one that is folded in first, whose
   * ends are as those of other tabs.
   */
  public boolean isTuck() {
    return hold == Hold.TUCK;
  }

  /** Whether it is to be as another, borne by who is said. */
  public boolean isLike(Bearer by, EdgeTab other) {
    return bearer == by
        && depth == other.depth
        && bevel == other.bevel
        && hold == other.hold
        && cut.equals(other.cut);
  }
}
