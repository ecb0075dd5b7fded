package facetwright.net.wrap;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Vec2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Ask;
import facetwright.net.PanelRole;
import facetwright.net.draft.NetDraft;
import facetwright.net.draft.PanelDraft;
import facetwright.words.Site;
import java.util.List;

/** The flap right of a wrap's last column, and the seam that closes the wrap. */
final class SeamFlap {
  /** Part of a row's height that a free end may take off the flap's outer edge. */
  private static final double MOST_BEVELED = 1.0 / 3;

  private final WrapDraft wrap;
  private final NetDraft net;
  private final DrawnCell[][] drawn;
  private final WrapAngles angles;
  private final WrapFrames frames;
  private final int last;

  SeamFlap(
      WrapDraft wrap, NetDraft net, DrawnCell[][] drawn, WrapAngles angles, WrapFrames frames) {
    this.wrap = wrap;
    this.net = net;
    this.drawn = drawn;
    this.angles = angles;
    this.frames = frames;
    last = wrap.columnCount() - 1;
  }

  void draw() {
    PanelDraft below = null;
    for (int r = 0; r < drawn.length; r++) {
      if (!isJoined(r)) {
        below = null;
        continue;
      }
      if (wrap.seamPair != null && !isRim(r)) {
        both(r);
        continue;
      }
      PanelDraft flap = hasFlap(r) ? flap(r) : null;
      if (flap != null && below != null && runsOn(r - 1)) {
        net.score(
            below.edge(2), flap.edge(0), angles.rowSense(r - 1, 0), angles.row(r - 1, 0), site());
      }
      net.seam(drawn[r][last].right(), drawn[r][0].left(), flap, site());
      below = flap;
    }
  }

  private Site site() {
    return wrap.seamSite;
  }

  private boolean isJoined(int r) {
    return r >= 0
        && r < drawn.length
        && drawn[r][last] != null
        && drawn[r][0] != null
        && wrap.cells[r][last].tab == null
        && wrap.cells[r][0].tab == null;
  }

  private boolean hasFlap(int r) {
    return isJoined(r) && wrap.seam > 0 && !isRim(r);
  }

  private boolean isRim(int r) {
    return wrap.rows.get(r).name().equals(WrapRow.RIM);
  }

  private void both(int r) {
    for (int column : new int[] {0, last}) {
      WrapCell cell = wrap.cells[r][column];
      Ask.that(
          cell.gusset == null,
          "\""
              + wrap.name(r, column)
              + "\" is pinched beside the seam, and has no room for half of a flap: let columns"
              + " that are not pinched meet there, or take a seam on: \"last\"",
          site());
    }
    CellFlaps.pair(
        net,
        drawn[r][last].right(),
        drawn[r][0].left(),
        wrap.seamPair,
        new CellFlaps.Fold(angles.columnSense(r, last), angles.column(r, last)),
        site());
  }

  /** Whether the flap of this row hangs on that of the row above: not where a diagonal parts it. */
  private boolean runsOn(int r) {
    return hasFlap(r)
        && hasFlap(r + 1)
        && drawn[r][0].top() != null
        && drawn[r + 1][0].bottom() != null
        && !frames.isApart(r)
        && !isPinched(r)
        && !isPinched(r + 1);
  }

  private boolean isPinched(int r) {
    return wrap.cells[r][0].gusset != null;
  }

  /** Its ends follow those of the column it is glued under, which leans out with the taper. */
  private PanelDraft flap(int r) {
    CellFrame beside = frames.frame(r, last);
    double height = beside.lowerRight().distance(beside.upperRight());
    double splay = Math.tan(wrap.grid().splay(r, 0));
    double free =
        Math.min(Math.tan(Math.toRadians(wrap.seamBevel)), MOST_BEVELED * height / wrap.seam);
    double low = runsOn(r - 1) ? -splay : Math.max(free, -splay);
    double top = runsOn(r) ? splay : Math.max(free, splay);
    if (isPinched(r)) {
      boolean atTop = drawn[r][0].top() == null;
      CellFrame first = frames.frame(r, 0);
      Vec2 point = atTop ? first.upperMiddle() : first.lowerMiddle();
      Vec2 waist = atTop ? first.lowerLeft() : first.upperLeft();
      Vec2 side = (atTop ? first.upperLeft() : first.lowerLeft()).minus(waist).unit();
      // How far the point lies along the glued side and off it: the diagonal score runs to it.
      double along = point.minus(waist).dot(side);
      double off = Math.abs(point.minus(waist).cross(side));
      Ask.that(
          wrap.seam < off,
          () ->
              Message.of(
                  "the seam is as wide as the gusset it is glued under: make it narrower than %s",
                  Value.limit(off)),
          site());
      // Under a gusset the flap must stay on one side of the diagonal score.
      double diagonal = along / off;
      low = atTop ? Math.max(low, diagonal) : low;
      top = atTop ? top : Math.max(top, diagonal);
    }
    Vec2 foot = beside.lowerRight();
    Vec2 up = beside.upperRight().minus(foot).unit();
    Vec2 out = up.left().times(-1);
    double point = height / (low + top);
    List<Vec2> corners =
        low + top > 0 && height - (low + top) * wrap.seam <= LengthTolerance.FINE.mm()
            ? List.of(
                foot, foot.plus(out.times(point)).plus(up.times(low * point)), beside.upperRight())
            : List.of(
                foot,
                foot.plus(out.times(wrap.seam)).plus(up.times(low * wrap.seam)),
                beside.upperRight().plus(out.times(wrap.seam)).minus(up.times(top * wrap.seam)),
                beside.upperRight());
    String name = drawn.length == 1 ? "seam flap" : "seam flap (row " + (r + 1) + ")";
    PanelDraft flap = net.panel(name, PanelRole.TAB, corners, site());
    net.score(
        drawn[r][last].right(),
        flap.edge(-1),
        angles.columnSense(r, last),
        angles.column(r, last),
        site());
    return flap;
  }
}
