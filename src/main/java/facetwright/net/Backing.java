package facetwright.net;

import facetwright.words.Site;
import java.io.Serializable;

/**
 * A paper or film wanted behind a window, glued on the inside of the card.
 *
 * @param paper its name, such as "vellum"
 * @param least how far it reaches past the window all round at least, in mm
 * @param most and at most, where there is room; the same as the least where the maker said how far
 * @param cut to what shape
 * @param site where the script asked for it
 */
public record Backing(String paper, double least, double most, Cut cut, Site site)
    implements Serializable {
  /** A narrower overlap holds no glue, in mm; common practice, no source. */
  public static final double LEAST = 3;

  /** The overlap where there is room for it, in mm; common practice, no source. */
  public static final double USUAL = 5;

  /** How far it keeps from scores, edges, holes and what is glued there; common practice. */
  public static final double CLEAR = 1;

  /** To what shape it is cut. */
  public enum Cut {
    /** A rectangle where there is room for one, or else the window's own shape. */
    EITHER,
    RECTANGLE,
    /** The window's own shape, larger by the overlap. */
    OUTLINE
  }

  public Backing {
    if (!(least > 0 && most >= least)) {
      throw new IllegalArgumentException("an overlap lies over 0 mm, not " + least + " to " + most);
    }
  }

  /** With as much overlap as is usual and as there is room for. */
  public static Backing usual(String paper, Cut cut, Site site) {
    return new Backing(paper, LEAST, USUAL, cut, site);
  }
}
