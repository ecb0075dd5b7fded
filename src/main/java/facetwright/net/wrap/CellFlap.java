package facetwright.net.wrap;

import facetwright.net.Ask;
import facetwright.net.panel.PairedFlap;
import facetwright.net.panel.TuckFlap;
import facetwright.words.Site;
import java.util.List;

/** A flap asked for on a free edge of a cell. */
sealed interface CellFlap {
  /**
   * One that is tucked in behind another cell.
   *
   * @param edge TOP or BOTTOM; null for the free one
   */
  record Tuck(WrapCell cell, WrapCell into, CellSide edge, TuckFlap flap, Site site)
      implements CellFlap {}

  /**
   * A hook on each of two edges that meet.
   *
   * @param edge TOP or BOTTOM, of both; null for the free one
   */
  record Hook(WrapCell cell, WrapCell other, CellSide edge, PairedFlap flap, Site site)
      implements CellFlap {}

  /** Holds that each of the cells can be held so to another. */
  static void check(
      boolean isOneWrap, List<WrapCell> cells, List<WrapCell> others, String what, Site at) {
    Ask.that(isOneWrap, "both have to be cells of one wrap", at);
    Ask.that(
        cells.size() == others.size(),
        cells.size() + " cells can't be " + what + " " + others.size() + ": choose as many of both",
        at);
    for (int i = 0; i < cells.size(); i++) {
      Ask.that(cells.get(i) != others.get(i), "a cell can't be " + what + " itself", at);
      Ask.that(cells.get(i).tab == null, "a cell made a tab bears no flap", at);
    }
  }
}
