package facetwright.net.wrap;

import facetwright.net.Ask;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Sets how the scores of chosen cells are folded. */
final class CellFolds {
  private final WrapDraft wrap;
  private final List<WrapCell> cells;
  private final List<WrapDraft.Fold> before;
  private int set;

  CellFolds(WrapDraft wrap, List<WrapCell> cells) {
    this.wrap = wrap;
    this.cells = cells;
    this.before = List.copyOf(wrap.folds.values());
  }

  /** Those on one side of each cell. */
  void set(CellSide side, WrapDraft.Fold fold) {
    cells.forEach(c -> set(c, side, fold));
    Ask.that(set > 0, "no score runs along that side of the chosen cells", fold.site());
    tellReplaced(fold);
  }

  /** Those between the cells and the rows next to them. */
  void set(WrapDraft.Fold fold) {
    Set<Long> chosen = new HashSet<>();
    cells.forEach(c -> chosen.add(key(c.row, c.column)));
    for (WrapCell c : cells) {
      if (!chosen.contains(key(c.row + 1, c.column))) {
        set(c, CellSide.TOP, fold);
      }
      if (!chosen.contains(key(c.row - 1, c.column))) {
        set(c, CellSide.BOTTOM, fold);
      }
    }
    Ask.that(set > 0, "no row score runs beside the chosen cells", fold.site());
    tellReplaced(fold);
  }

  private void tellReplaced(WrapDraft.Fold fold) {
    wrap.twice.replaced(
        "fold", before, wrap.folds.values(), WrapDraft.Fold::site, /* again= */ fold.site());
  }

  private static long key(int row, int column) {
    return row * 1000L + column;
  }

  private void set(WrapCell c, CellSide side, WrapDraft.Fold fold) {
    int n = wrap.columnCount();
    WrapDraft.ScoreKey key =
        switch (side) {
          case TOP -> new WrapDraft.ScoreKey(c.row, c.column, true);
          case BOTTOM -> new WrapDraft.ScoreKey(c.row - 1, c.column, true);
          case RIGHT -> new WrapDraft.ScoreKey(c.row, c.column, false);
          case LEFT -> new WrapDraft.ScoreKey(c.row, (c.column + n - 1) % n, false);
        };
    if (key.above() && (key.row() < 0 || key.row() + 1 >= wrap.rows.size())) {
      return;
    }
    wrap.folds.put(key, fold);
    set++;
  }
}
