package facetwright.net.wrap;

import facetwright.geom.Box2;
import facetwright.geom.Motion2;
import facetwright.geom.Vec2;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the cells of a wrap lie in the sheet. Rows that taper alike lie on in one fan, as the
 * development of a cone does. A row that tapers otherwise hangs on its neighbour cell by cell where
 * no two of its cells are scored to each other; else it lies apart, a piece of its own.
 */
final class WrapFrames {
  /** Room between pieces, in mm; on the sheet they are laid anew. */
  private static final double APART = 10;

  private final WrapDraft wrap;
  private final WrapGrid grid;
  private final int n;
  private final int high;
  private final CellFrame[][] frames;
  private final int[] fan;
  private final int[] hangsOn;

  WrapFrames(WrapDraft wrap) {
    this.wrap = wrap;
    grid = wrap.grid();
    n = wrap.columnCount();
    high = wrap.rows.size();
    frames = new CellFrame[high][n];
    fan = new int[high];
    hangsOn = new int[high];
    if (grid.isStraight()) {
      straight();
    } else {
      tapered();
    }
  }

  CellFrame frame(int row, int column) {
    return frames[row][column];
  }

  /** Whether a row lies apart from the one above it, and is joined to it when made. */
  boolean isApart(int row) {
    return fan[row] != fan[row + 1] && hangsOn[row] != row + 1 && hangsOn[row + 1] != row;
  }

  private void straight() {
    double y = 0;
    for (int r = 0; r < high; r++) {
      double x = 0;
      double top = y + wrap.rows.get(r).height();
      for (int c = 0; c < n; c++) {
        double right = x + grid.foot(r, c);
        frames[r][c] = CellFrame.rectangle(new Vec2(x, y), new Vec2(right, top));
        x = right;
      }
      y = top;
    }
  }

  private void tapered() {
    for (int r = 0; r < high; r++) {
      fan[r] = r > 0 && !grid.runsOn(r - 1) ? fan[r - 1] + 1 : r == 0 ? 0 : fan[r - 1];
      hangsOn[r] = -1;
    }
    for (int r = 0; r < high; r++) {
      if (isAlone(r) && isLoose(r)) {
        hangsOn[r] =
            r > 0 && hangsOn[r - 1] < 0
                ? r - 1
                : r + 1 < high && !(isAlone(r + 1) && isLoose(r + 1)) ? r + 1 : -1;
      }
    }
    double bottom = 0;
    for (int r = 0; r < high; r++) {
      if (hangsOn[r] < 0 && (r == 0 || fan[r] != fan[r - 1])) {
        bottom = group(r, bottom) + APART;
      }
    }
  }

  /** Whether no other row lies in its fan. */
  private boolean isAlone(int r) {
    return (r == 0 || fan[r - 1] != fan[r]) && (r + 1 == high || fan[r + 1] != fan[r]);
  }

  /** Whether no two of its cells are scored to each other. */
  private boolean isLoose(int r) {
    for (int c = 0; c < n; c++) {
      if (isFacet(r, c) && isFacet(r, (c + 1) % n)) {
        return false;
      }
    }
    return true;
  }

  private boolean isFacet(int r, int c) {
    return !wrap.cells[r][c].removed && wrap.cells[r][c].tab == null;
  }

  /** Lays a fan and what hangs on it, from a height on; returns where it ends. */
  private double group(int first, double bottom) {
    List<Integer> rows = new ArrayList<>();
    for (int r = first; r < high && fan[r] == fan[first]; r++) {
      chain(r, r == first);
      rows.add(r);
    }
    for (int r = 0; r < high; r++) {
      if (rows.contains(hangsOn[r])) {
        for (int c = 0; c < n; c++) {
          frames[r][c] = hung(r, c);
        }
        rows.add(r);
      }
    }
    List<Vec2> corners = new ArrayList<>();
    for (int r : rows) {
      List.of(frames[r]).forEach(f -> corners.addAll(f.corners()));
    }
    Box2 box = Motion2.NONE.boxOf(corners);
    Motion2 shift = Motion2.shift(new Vec2(-box.minX(), bottom - box.minY()));
    for (int r : rows) {
      for (int c = 0; c < n; c++) {
        frames[r][c] = frames[r][c].moved(shift);
      }
    }
    return bottom + box.height();
  }

  /** Each cell beside the one before it, the whole fan alike on both sides of upright. */
  private void chain(int r, boolean isFirst) {
    double heading = 0;
    for (int c = 0; c + 1 < n; c++) {
      heading += (grid.splay(r, c) + grid.splay(r, c + 1)) / 2;
    }
    Vec2 at = Vec2.ZERO;
    for (int c = 0; c < n; c++) {
      Vec2 along = Vec2.polar(1, heading);
      Vec2 left = isFirst ? at : frames[r - 1][c].upperLeft();
      Vec2 right = isFirst ? at.plus(along.times(grid.foot(r, c))) : frames[r - 1][c].upperRight();
      CellFrame free = standing(left, right, along, r, c);
      frames[r][c] =
          c == 0
              ? free
              : new CellFrame(left, right, free.upperRight(), frames[r][c - 1].upperRight());
      at = right;
      heading -= c + 1 < n ? grid.splay(r, c) + grid.splay(r, c + 1) : 0;
    }
  }

  private CellFrame standing(Vec2 left, Vec2 right, Vec2 along, int r, int c) {
    Vec2 top = left.toward(right, 0.5).plus(along.left().times(grid.height(r, c)));
    Vec2 half = along.times(grid.top(r, c) / 2);
    return new CellFrame(left, right, top.plus(half), top.minus(half));
  }

  private CellFrame hung(int r, int c) {
    CellFrame on = frames[hangsOn[r]][c];
    Vec2 along = on.along();
    if (hangsOn[r] < r) {
      return standing(on.upperLeft(), on.upperRight(), along, r, c);
    }
    Vec2 foot = on.lowerMiddle().minus(along.left().times(grid.height(r, c)));
    Vec2 half = along.times(grid.foot(r, c) / 2);
    return new CellFrame(foot.minus(half), foot.plus(half), on.lowerRight(), on.lowerLeft());
  }
}
