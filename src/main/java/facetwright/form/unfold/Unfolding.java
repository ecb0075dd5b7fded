package facetwright.form.unfold;

import facetwright.form.Form;
import facetwright.form.FormCheck;
import facetwright.form.FormException;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.NetException;
import java.io.Serializable;

/**
 * How to unfold a form to a net. A net is chosen that does not overlap, where all tabs fit, that
 * fits the sheet where one is named, and that packs small, in this order. Where the maker names no
 * style and the form lies on itself in a mirror, a net that lies on itself turned over is preferred
 * to one somewhat smaller; not every such form has one: of an open prism over a star there is none
 * without overlap, nor is there of an antiprism, whose mirrors keep top and base apart. Tabs are as
 * symmetric as its panels where that costs nothing. Where no net in one piece is found it is split
 * into the fewest pieces found, and a note says so; a style that can't be drawn without overlap
 * gives way to a searched tree, and a note says so. The same form and settings give the same net;
 * of nets as good as each other it is the one found first, so that a form changed by a hair keeps
 * its net.
 *
 * <p>What is not promised: that a net in one piece is found wherever there is one, or that the
 * smallest is.
 *
 * @param style how it is laid flat
 * @param base name of the facet it stands on and spreads from; empty for the facet named "base", or
 *     else the one that faces down most
 * @param tabs how tabs are made
 * @param sheetWidth width in mm of a sheet it should fit, 0 for none
 * @param sheetHeight height of that sheet, 0 for none
 * @param tries how many trees of scores a search may try, 1 to 100 000
 * @param seed where the search's chance starts
 */
public record Unfolding(
    UnfoldStyle style,
    String base,
    Tabs tabs,
    double sheetWidth,
    double sheetHeight,
    int tries,
    long seed)
    implements Serializable {
  /** How much larger the box may be of a net that lies on itself turned over, in hundredths. */
  public static final int FOR_A_MIRROR = 15;

  public Unfolding {
    FormCheck.require(
        sheetWidth >= 0 && sheetHeight >= 0 && sheetWidth < 1e5 && sheetHeight < 1e5,
        () -> Message.of("a sheet to fit is 0 to %s wide and high", Value.given(100_000)));
    FormCheck.require(
        tries >= 1 && tries <= 100_000, "a search tries 1 to 100 000 trees, not " + tries);
  }

  /** This style with the usual tabs and no sheet. */
  public static Unfolding as(UnfoldStyle style) {
    return new Unfolding(style, "", Tabs.USUAL, 0, 0, 120, 1);
  }

  public Unfolding on(String baseFacet) {
    return new Unfolding(style, baseFacet, tabs, sheetWidth, sheetHeight, tries, seed);
  }

  public Unfolding with(Tabs newTabs) {
    return new Unfolding(style, base, newTabs, sheetWidth, sheetHeight, tries, seed);
  }

  /** Prefers nets that fit this sheet, turned as may be. */
  public Unfolding fitting(double width, double height) {
    return new Unfolding(style, base, tabs, width, height, tries, seed);
  }

  /**
   * Unfolds a form.
   *
   * @throws FormException when the base names no facet
   * @throws NetException never for a form that passed its checks, save where a facet that is flat
   *     to 0.001 mm only has sides so short that its neighbours can't meet it to 1e-6 mm
   */
  public UnfoldResult unfold(Form form) {
    return new Nets(form, this).on(sheetWidth, sheetHeight);
  }
}
