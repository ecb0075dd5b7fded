package facetwright.net.wrap;

import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.PanelRole;
import facetwright.net.draft.EdgeDraft;
import facetwright.net.draft.NetDraft;
import facetwright.net.draft.PanelDraft;
import java.util.List;

/**
 * Where two rows of a wrap lie apart in the sheet, for they taper otherwise: tabs on the lower are
 * glued inside the upper, as deep as the seam is wide.
 */
record Joint(WrapDraft wrap, NetDraft net) {
  /** A tab is no deeper than this part of the panel it is glued to. */
  private static final double MOST_DEEP = 0.5;

  /** A tab's ends are cut back by so much of its side at most. */
  private static final double MOST_BACK = 0.45;

  void draw(EdgeDraft lower, EdgeDraft upper, int row, int column, WrapAngles angles) {
    double deep = Math.min(wrap.seam, MOST_DEEP * wrap.grid().height(row + 1, column));
    PanelDraft tab = null;
    // Under the first column the seam's flap is glued, too.
    double beside = column == 0 ? wrap.seam : 0;
    if (deep > 0 && lower.length() > 2 * beside) {
      Segment2 side = lower.segment();
      Vec2 along = side.direction();
      double closing = Math.max(0, Math.tan(-wrap.grid().splay(row + 1, column)));
      double back = Math.min(deep * (1 + closing), MOST_BACK * (side.length() - beside));
      Vec2 in = along.times(back);
      Vec2 out = along.left().times(-deep);
      tab =
          net.panel(
              "joint tab " + (column + 1) + " (row " + (row + 1) + ")",
              PanelRole.TAB,
              List.of(
                  side.to(),
                  side.from(),
                  side.from().plus(in).plus(out),
                  side.to().minus(in).minus(along.times(beside)).plus(out)),
              wrap.site);
      net.score(
          lower, tab.edge(0), angles.rowSense(row, column), angles.row(row, column), wrap.site);
    }
    net.seam(lower, upper, tab, wrap.site);
  }
}
