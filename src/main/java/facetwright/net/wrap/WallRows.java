package facetwright.net.wrap;

import java.util.Arrays;
import java.util.List;

/**
 * The rows that are walls, between which columns taper as they are said to: not those of which only
 * tabs are kept, nor a gable and what lies beyond it. A gable is a row with pinched columns beside
 * one that has none.
 *
 * @param from the lowest
 * @param to the row above the highest
 */
record WallRows(int from, int to) {
  /** Of a wrap that is told the width of its columns at every line. */
  static final WallRows ALL = new WallRows(0, Integer.MAX_VALUE);

  static WallRows of(WrapCell[][] cells) {
    int from = 0;
    int to = cells.length;
    while (to - from > 1 && isTabs(cells[from])) {
      from++;
    }
    while (to - from > 1 && isTabs(cells[to - 1])) {
      to--;
    }
    for (int r = to - 1; r > from; r--) {
      to = isPinched(cells[r]) && !isPinched(cells[r - 1]) ? r : to;
    }
    for (int r = from; r < to - 1; r++) {
      from = isPinched(cells[r]) && !isPinched(cells[r + 1]) ? r + 1 : from;
    }
    return new WallRows(from, to);
  }

  private static boolean isTabs(WrapCell[] row) {
    List<WrapCell> kept = Arrays.stream(row).filter(c -> !c.removed).toList();
    return !kept.isEmpty() && kept.stream().allMatch(c -> c.tab != null);
  }

  private static boolean isPinched(WrapCell[] row) {
    return Arrays.stream(row).anyMatch(c -> c.gusset != null);
  }
}
