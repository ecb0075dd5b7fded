package facetwright.net.wrap;

import facetwright.net.Ask;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Folds said of the scores beside chosen cells. */
final class CellFolds {
  private CellFolds() {}

  /** Those on one side of each cell. */
  static void set(WrapDraft wrap, List<WrapCell> cells, CellSide side, WrapDraft.Fold fold) {
    int set = 0;
    for (WrapCell c : cells) {
      set += isSet(wrap, c, side, fold) ? 1 : 0;
    }
    Ask.that(set > 0, "no score runs along that side of the chosen cells", fold.site());
  }

  /** Those of rows, between the chosen cells and the rows next to them. */
  static void setBeside(WrapDraft wrap, List<WrapCell> cells, WrapDraft.Fold fold) {
    Set<Long> chosen = new HashSet<>();
    cells.forEach(c -> chosen.add(key(c.row, c.column)));
    int set = 0;
    for (WrapCell c : cells) {
      if (!chosen.contains(key(c.row + 1, c.column))) {
        set += isSet(wrap, c, CellSide.TOP, fold) ? 1 : 0;
      }
      if (!chosen.contains(key(c.row - 1, c.column))) {
        set += isSet(wrap, c, CellSide.BOTTOM, fold) ? 1 : 0;
      }
    }
    Ask.that(set > 0, "no row score runs beside the chosen cells", fold.site());
  }

  private static long key(int row, int column) {
    return row * 1000L + column;
  }

  private static boolean isSet(WrapDraft wrap, WrapCell c, CellSide side, WrapDraft.Fold fold) {
    int n = wrap.columnCount();
    WrapDraft.ScoreKey key =
        switch (side) {
          case TOP -> new WrapDraft.ScoreKey(c.row, c.column, true);
          case BOTTOM -> new WrapDraft.ScoreKey(c.row - 1, c.column, true);
          case RIGHT -> new WrapDraft.ScoreKey(c.row, c.column, false);
          case LEFT -> new WrapDraft.ScoreKey(c.row, (c.column + n - 1) % n, false);
        };
    if (key.above() && (key.row() < 0 || key.row() + 1 >= wrap.rows.size())) {
      return false;
    }
    wrap.folds.put(key, fold);
    return true;
  }
}
