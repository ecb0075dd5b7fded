package facetwright.net;

import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.words.Site;
import java.io.Serializable;
import java.util.List;

/**
 * A decorative paper glued on a panel, smaller by the reveal all round. Where the reveal leaves no
 * more than a strip narrower than {@link #NARROWEST}, there is none.
 *
 * @param panel the panel it is glued on
 * @param reveal the border of card left showing, in mm, 0 or more
 * @param paper the name of the paper, for sorting
 */
public record Layer(int panel, double reveal, String paper, Site site) implements Serializable {
  /** The name of a paper that the script gives none: papers call it so in their own language. */
  public static final String UNNAMED = "layer paper";

  /** The narrowest paper that is cut and glued, in mm; common practice, no source. */
  public static final double NARROWEST = 0.5;

  /** Whether a piece of paper is wide enough somewhere to be cut and glued. */
  public static boolean isWide(Polygon2 outline, List<Polygon2> windows) {
    return Planar.hasRoom(outline, windows, NARROWEST / 2);
  }

  /** The same with another border left showing. */
  public Layer showing(double mm) {
    return new Layer(panel, mm, paper, site);
  }

  /** Whether the reveal leaves a piece of this panel that is wide enough. */
  public boolean isLeftOf(Panel on) {
    List<Polygon2> openings = on.openings().stream().map(Opening::outline).toList();
    return Planar.hasRoom(on.outline(), openings, reveal + NARROWEST / 2);
  }
}
