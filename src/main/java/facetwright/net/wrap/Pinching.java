package facetwright.net.wrap;

import facetwright.net.Ask;

/** Which edges of a wrap's cells are pinched, and which cells are folded in half over them. */
final class Pinching {
  private Pinching() {}

  static boolean isKept(WrapDraft wrap, int row, int column) {
    return row >= 0 && row < wrap.rows.size() && !wrap.cells[row][column].removed;
  }

  static boolean isPinched(WrapDraft wrap, int row, int column) {
    WrapCell cell = wrap.cells[row][column];
    return cell.gusset != null && !cell.removed;
  }

  /**
   * Which edge of a pinched cell is pinched: the one that is said; else the one where the next cell
   * is missing; where both are free, the one farther from the middle of the wrap, the top of the
   * middle row; where neither is, the one beyond which there is less card.
   */
  static boolean isAtTop(WrapDraft wrap, int row, int column) {
    CellSide said = wrap.cells[row][column].gussetEdge;
    if (said != null) {
      return said == CellSide.TOP;
    }
    boolean above = isKept(wrap, row + 1, column);
    boolean below = isKept(wrap, row - 1, column);
    if (above && below) {
      double over = beyond(wrap, row, column, 1);
      double under = beyond(wrap, row, column, -1);
      return over == under ? 2 * row + 1 >= wrap.rows.size() : over < under;
    }
    return above == below ? 2 * row + 1 >= wrap.rows.size() : below;
  }

  private static double beyond(WrapDraft wrap, int row, int column, int step) {
    double sum = 0;
    for (int r = row + step; isKept(wrap, r, column); r += step) {
      sum += wrap.rows.get(r).height();
    }
    return sum;
  }

  /** Whether a cell lies beyond a pinched edge, folded in half between its neighbours. */
  static boolean isHalved(WrapDraft wrap, int row, int column) {
    return isKept(wrap, row, column)
        && !isPinched(wrap, row, column)
        && (isBeyond(wrap, row, column, -1) || isBeyond(wrap, row, column, 1));
  }

  private static boolean isBeyond(WrapDraft wrap, int row, int column, int toward) {
    for (int r = row + toward; isKept(wrap, r, column); r += toward) {
      if (isPinched(wrap, r, column)) {
        return isAtTop(wrap, r, column) == (toward < 0);
      }
    }
    return false;
  }

  /** Which way the pinched edge under a halved cell points. */
  static Pinch way(WrapDraft wrap, int row, int column) {
    for (int toward : new int[] {-1, 1}) {
      for (int r = row + toward; isKept(wrap, r, column); r += toward) {
        if (isPinched(wrap, r, column)) {
          return wrap.cells[r][column].gusset;
        }
      }
    }
    throw new IllegalStateException("nothing is pinched under it");
  }

  /**
   * Refuses a pinched edge where card goes on that can't be folded in half: one whose neighbours
   * are not there to lie against.
   */
  static void refuseHeld(WrapDraft wrap, WrapCell cell, String name) {
    int step = isAtTop(wrap, cell.row, cell.column) ? 1 : -1;
    int n = wrap.columnCount();
    for (int r = cell.row + step; isKept(wrap, r, cell.column); r += step) {
      for (int by : new int[] {0, 1, n - 1}) {
        int c = (cell.column + by) % n;
        Ask.that(
            isKept(wrap, r, c)
                && wrap.cells[r][c].tab == null
                && !isPinched(wrap, r, c)
                && (by == 0 || !isHalved(wrap, r, c)),
            name
                + " can't be pinched: cut away the cell above or below it, to free an edge, or keep"
                + " whole walls all round beyond it, to make a fin",
            cell.gussetSite);
      }
    }
  }
}
