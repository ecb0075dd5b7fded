package facetwright.net.wrap;

import facetwright.net.Ask;
import facetwright.net.Net;
import facetwright.net.draft.EdgeDraft;
import facetwright.net.draft.NetDraft;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Draws a wrap's pattern as a net. */
final class WrapBuild {
  private final WrapDraft wrap;
  private final int n;
  private final int high;
  private final NetDraft net;
  private final DrawnCell[][] drawn;
  private final WrapAngles angles;
  private final WrapFrames frames;

  WrapBuild(WrapDraft wrap) {
    this.wrap = wrap;
    n = wrap.columnCount();
    high = wrap.rows.size();
    net = new NetDraft(wrap.twice);
    drawn = new DrawnCell[high][n];
    angles = new WrapAngles(wrap);
    frames = new WrapFrames(wrap);
  }

  Net build() {
    for (int r = 0; r < high; r++) {
      for (int c = 0; c < n; c++) {
        if (!wrap.cells[r][c].removed) {
          drawn[r][c] = draw(wrap.cells[r][c]);
        }
      }
    }
    for (int r = 0; r < high; r++) {
      for (int c = 0; c < n; c++) {
        columnScore(r, c);
        rowScore(r, c);
      }
    }
    new SeamFlap(wrap, net, drawn, angles, frames).draw();
    cutaways();
    laps();
    stance();
    if (wrap.floor != null) {
      wrap.floor.draw(wrap, net, drawn);
    }
    new CellFlaps(wrap, net, drawn).draw();
    return net.build();
  }

  private DrawnCell draw(WrapCell cell) {
    boolean above = isKept(cell.row + 1, cell.column);
    boolean below = isKept(cell.row - 1, cell.column);
    String name = wrap.name(cell.row, cell.column);
    CellFrame frame = frames.frame(cell.row, cell.column);
    if (cell.gusset != null) {
      boolean atTop = Pinching.isAtTop(wrap, cell.row, cell.column);
      Pinching.refuseHeld(wrap, cell, name);
      return DrawnCell.pinched(net, cell, name, frame, atTop, atTop ? !above : !below);
    }
    if (cell.tab != null) {
      Ask.that(
          above != below,
          above
              ? name + " can't be a tab: a tab has one free side; cut away the cell above or below"
              : name + " can't be a tab: it hangs on nothing",
          cell.tab.site());
      return tab(cell, name, above);
    }
    return Pinching.isHalved(wrap, cell.row, cell.column)
        ? DrawnCell.halved(
            net, cell, name, frame, Pinching.way(wrap, cell.row, cell.column), wrap.site)
        : DrawnCell.plain(net, cell, name, frame, wrap.site);
  }

  private DrawnCell tab(WrapCell cell, String name, boolean above) {
    WrapGrid grid = wrap.grid();
    int wall = above ? cell.row + 1 : cell.row - 1;
    CellFrame on = frames.frame(wall, cell.column);
    CellFrame square =
        grid.isStraight()
            ? frames.frame(cell.row, cell.column)
            : on.beside(above, grid.height(cell.row, cell.column));
    double splay = grid.splay(wall, cell.column);
    double usual = angles.usualBevel(square.lowerWidth(), square.height(), above ? splay : -splay);
    double middle = angles.toMiddle(wall, cell.column, !above);
    return DrawnCell.tab(net, cell, name, new DrawnCell.Flap(square, above, middle), usual);
  }

  private boolean isKept(int row, int column) {
    return Pinching.isKept(wrap, row, column);
  }

  private void columnScore(int r, int c) {
    if (c + 1 >= n || drawn[r][c] == null || drawn[r][c + 1] == null) {
      return;
    }
    EdgeDraft right = drawn[r][c].right();
    EdgeDraft left = drawn[r][c + 1].left();
    if (wrap.cells[r][c].tab != null || wrap.cells[r][c + 1].tab != null) {
      if (right.from().equals(left.to()) && right.to().equals(left.from())) {
        net.slit(right, left, wrap.site);
      }
      return;
    }
    net.score(right, left, angles.columnSense(r, c), angles.column(r, c), foldSite(r, c, false));
  }

  private void rowScore(int r, int c) {
    if (r + 1 >= high || drawn[r][c] == null || drawn[r + 1][c] == null) {
      return;
    }
    List<EdgeDraft> lower = drawn[r][c].above();
    List<EdgeDraft> upper = drawn[r + 1][c].below();
    if (isJoint(r, c)) {
      new Joint(wrap, net).draw(lower.getFirst(), upper.getFirst(), r, c, angles);
      return;
    }
    for (int i = 0; i < lower.size(); i++) {
      net.score(
          lower.get(i),
          upper.get(i),
          angles.rowSense(r, c),
          angles.row(r, c),
          foldSite(r, c, true));
    }
  }

  /** Whether a cell and the one above it lie apart in the sheet. */
  private boolean isJoint(int r, int c) {
    return frames.isApart(r) && wrap.cells[r][c].tab == null && wrap.cells[r + 1][c].tab == null;
  }

  /** Where the fold of a score was said, or where the wrap was made. */
  private Site foldSite(int r, int c, boolean above) {
    WrapDraft.Fold told = wrap.folds.get(new WrapDraft.ScoreKey(r, c, above));
    return told == null ? wrap.site : told.site();
  }

  private void laps() {
    for (WrapDraft.CellLap lap : wrap.laps) {
      for (WrapCell cell : List.of(lap.under(), lap.over())) {
        Ask.that(
            !cell.removed,
            wrap.name(cell.row, cell.column) + " is cut away and lies on nothing",
            lap.site());
      }
      net.lap(
          drawn[lap.under().row][lap.under().column].main(),
          drawn[lap.over().row][lap.over().column].main(),
          lap.site());
    }
  }

  /** Remembers what cut away cells lay against. */
  private void cutaways() {
    for (int r = 0; r < high; r++) {
      for (int c = 0; c < n; c++) {
        WrapCell cell = wrap.cells[r][c];
        if (cell.removed) {
          List<EdgeDraft> sides = new ArrayList<>();
          at(r + 1, c).ifPresent(d -> sides.addAll(d.below()));
          at(r - 1, c).ifPresent(d -> sides.addAll(d.above()));
          at(r, c - 1).ifPresent(d -> sides.add(d.right()));
          at(r, c + 1).ifPresent(d -> sides.add(d.left()));
          net.cutaway(sides, cell.removedSite);
        }
      }
    }
  }

  private Optional<DrawnCell> at(int r, int c) {
    return r >= 0 && r < high && c >= 0 && c < n
        ? Optional.ofNullable(drawn[r][c])
        : Optional.empty();
  }

  /** The corners round the waist of a pinched wrap, else round the foot of its lowest full row. */
  private void stance() {
    int line = -1;
    for (int r = 0; r < high && line < 0; r++) {
      for (int c = 0; c < n && line < 0; c++) {
        if (drawn[r][c] != null && wrap.cells[r][c].gusset != null) {
          line = drawn[r][c].bottom() == null ? r + 1 : r;
        }
      }
    }
    for (int r = 0; r < high && line < 0; r++) {
      long facets = 0;
      for (int c = 0; c < n; c++) {
        facets += drawn[r][c] != null && wrap.cells[r][c].tab == null ? 1 : 0;
      }
      line = facets >= 3 ? r : -1;
    }
    List<NetDraft.CornerDraft> ring = new ArrayList<>();
    for (int c = 0; c < n && line >= 0; c++) {
      if (line < high && drawn[line][c] != null && drawn[line][c].bottom() != null) {
        ring.add(new NetDraft.CornerDraft(drawn[line][c].bottom()));
      } else if (line > 0 && drawn[line - 1][c] != null && drawn[line - 1][c].top() != null) {
        EdgeDraft top = drawn[line - 1][c].top();
        ring.add(new NetDraft.CornerDraft(top.panel().after(top)));
      }
    }
    if (ring.size() >= 3) {
      net.stance(ring);
    }
  }
}
