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
  private final double x;
  private final double[] y;
  private final int last;

  SeamFlap(
      WrapDraft wrap, NetDraft net, DrawnCell[][] drawn, WrapAngles angles, double x, double[] y) {
    this.wrap = wrap;
    this.net = net;
    this.drawn = drawn;
    this.angles = angles;
    this.x = x;
    this.y = y;
    last = wrap.widths.size() - 1;
  }

  void draw() {
    PanelDraft below = null;
    for (int r = 0; r < drawn.length; r++) {
      if (!isJoined(r)) {
        below = null;
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
    return isJoined(r) && wrap.seam > 0 && !wrap.rows.get(r).name().equals(WrapRow.RIM);
  }

  /** Whether the flap of this row hangs on that of the row above: not where a diagonal parts it. */
  private boolean runsOn(int r) {
    return hasFlap(r)
        && hasFlap(r + 1)
        && drawn[r][0].top() != null
        && drawn[r + 1][0].bottom() != null
        && !isPinched(r)
        && !isPinched(r + 1);
  }

  private boolean isPinched(int r) {
    return wrap.cells[r][0].gusset != null;
  }

  private PanelDraft flap(int r) {
    double height = wrap.rows.get(r).height();
    double free =
        Math.min(Math.tan(Math.toRadians(wrap.seamBevel)), MOST_BEVELED * height / wrap.seam);
    double low = runsOn(r - 1) ? 0 : free;
    double top = runsOn(r) ? 0 : free;
    if (isPinched(r)) {
      double half = wrap.widths.getFirst() / 2;
      Ask.that(
          wrap.seam < half,
          () ->
              Message.of(
                  "the seam is as wide as the gusset it is glued under: make it narrower than %s",
                  Value.limit(half)),
          site());
      // Under a gusset the flap must stay on one side of the diagonal score.
      double diagonal = height / half;
      low = drawn[r][0].top() == null ? Math.max(low, diagonal) : low;
      top = drawn[r][0].bottom() == null ? Math.max(top, diagonal) : top;
    }
    double y0 = y[r];
    double y1 = y[r + 1];
    double point = height / (low + top);
    List<Vec2> corners =
        low + top > 0 && height - (low + top) * wrap.seam <= LengthTolerance.FINE.mm()
            ? List.of(new Vec2(x, y0), new Vec2(x + point, y0 + low * point), new Vec2(x, y1))
            : List.of(
                new Vec2(x, y0),
                new Vec2(x + wrap.seam, y0 + low * wrap.seam),
                new Vec2(x + wrap.seam, y1 - top * wrap.seam),
                new Vec2(x, y1));
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
