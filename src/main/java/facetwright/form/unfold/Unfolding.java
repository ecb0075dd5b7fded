package facetwright.form.unfold;

import facetwright.form.FormCheck;
import java.io.Serializable;

/**
 * How to unfold a form to a net. A net is chosen that does not overlap, where all tabs fit, that
 * fits the sheet where one is asked about ({@link Nets#on}), and that packs small, in this order.
 * Where the maker names no style and the form lies on itself in a mirror, a net that lies on itself
 * turned over is preferred to one somewhat smaller; not every such form has one: of an open prism
 * over a star there is none without overlap, nor is there of an antiprism, whose mirrors keep top
 * and base apart. Tabs are as symmetric as its panels where that costs nothing. Where no net in one
 * piece is found it is split into the fewest pieces found, and a note says so; a style that can't
 * be drawn without overlap gives way to a searched tree, and a note says so. The same form and
 * settings give the same net; of nets as good as each other it is the one found first, so that a
 * form changed by a hair keeps its net.
 *
 * <p>What is not promised: that a net in one piece is found wherever there is one, or that the
 * smallest is.
 *
 * @param style how it is laid flat
 * @param base name of the facet it stands on and spreads from; empty for the facet named "base", or
 *     else the one that faces down most
 * @param tabs how tabs are made
 * @param tries how many trees of scores a search may try, 1 to 100 000
 * @param seed where the search's chance starts
 */
public record Unfolding(UnfoldStyle style, String base, Tabs tabs, int tries, long seed)
    implements Serializable {
  /** How much larger the box may be of a net that lies on itself turned over, in hundredths. */
  public static final int FOR_A_MIRROR = 15;

  public Unfolding {
    FormCheck.require(
        tries >= 1 && tries <= 100_000, "a search tries 1 to 100 000 trees, not " + tries);
  }

  /** This style with the usual tabs and no sheet. */
  public static Unfolding as(UnfoldStyle style) {
    return new Unfolding(style, "", Tabs.USUAL, 120, 1);
  }

  public Unfolding on(String baseFacet) {
    return new Unfolding(style, baseFacet, tabs, tries, seed);
  }

  public Unfolding with(Tabs newTabs) {
    return new Unfolding(style, base, newTabs, tries, seed);
  }
}
