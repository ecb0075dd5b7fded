package facetwright.net.wrap;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.net.Datum;
import facetwright.net.FoldAngle;
import facetwright.net.Opening;
import facetwright.net.PanelRole;
import facetwright.net.Sense;
import facetwright.net.draft.EdgeDraft;
import facetwright.net.draft.NetDraft;
import facetwright.net.draft.PanelDraft;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;

/**
 * A cell drawn in the net.
 *
 * @param main its panel, or the middle triangle of a pinched one
 * @param bottom null when that edge is pinched, or the tip of a pointed tab
 * @param top null when that edge is pinched, or the tip of a pointed tab
 * @param pinched the two halves of a pinched edge; none where no edge is
 */
record DrawnCell(
    PanelDraft main,
    EdgeDraft bottom,
    EdgeDraft right,
    EdgeDraft top,
    EdgeDraft left,
    List<EdgeDraft> pinched) {

  /** The sides along its lower edge. */
  List<EdgeDraft> below() {
    return bottom == null ? pinched : List.of(bottom);
  }

  /** The sides along its upper edge. */
  List<EdgeDraft> above() {
    return top == null ? pinched : List.of(top);
  }

  static DrawnCell plain(NetDraft net, WrapCell cell, String name, CellFrame f, Site site) {
    return whole(net.panel(name, PanelRole.FACET, f.corners(), site), cell, f);
  }

  /**
   * @param above whether it hangs on the cell above it
   */
  static DrawnCell tab(
      NetDraft net, WrapCell cell, String name, CellFrame f, boolean above, WrapAngles angles) {
    double usual = angles.usualBevel(f.width(), f.height());
    double back =
        cell.tab.bevel() < 0 ? usual : f.height() * Math.tan(Math.toRadians(cell.tab.bevel()));
    Vec2 in = new Vec2(back, 0);
    List<Vec2> corners = new ArrayList<>(f.corners());
    int free = above ? 0 : 2;
    corners.set(free, above ? corners.get(0).plus(in) : corners.get(2).minus(in));
    corners.set(free + 1, above ? corners.get(1).minus(in) : corners.get(3).plus(in));
    boolean isPointed = f.width() - 2 * back <= LengthTolerance.FINE.mm();
    if (isPointed) {
      corners.set(free, corners.get(free).toward(corners.remove(free + 1), 0.5));
    }
    PanelDraft panel = net.panel(name, PanelRole.TAB, corners, cell.tab.site());
    if (!isPointed) {
      return whole(panel, cell, f);
    }
    dress(panel, cell, f);
    // Its tip took the place of the free side.
    return new DrawnCell(
        panel,
        above ? null : panel.edge(0),
        above ? panel.edge(0) : panel.edge(1),
        above ? panel.edge(1) : null,
        panel.edge(2),
        List.of());
  }

  private static DrawnCell whole(PanelDraft panel, WrapCell cell, CellFrame f) {
    dress(panel, cell, f);
    return new DrawnCell(
        panel, panel.edge(0), panel.edge(1), panel.edge(2), panel.edge(3), List.of());
  }

  /** Divides the cell by two diagonals from its waist corners to the middle of the pinched edge. */
  static DrawnCell pinched(NetDraft net, WrapCell cell, String name, CellFrame f, boolean atTop) {
    Site site = cell.gussetSite;
    Vec2 a = f.low();
    Vec2 b = f.lowerRight();
    Vec2 c = f.highCorner();
    Vec2 d = f.upperLeft();
    Vec2 m = atTop ? d.toward(c, 0.5) : a.toward(b, 0.5);
    PanelDraft middle =
        net.panel(name, PanelRole.FACET, atTop ? List.of(m, a, b) : List.of(m, c, d), site);
    PanelDraft right =
        net.panel("right gusset of " + name, PanelRole.GUSSET, List.of(b, c, m), site);
    PanelDraft left = net.panel("left gusset of " + name, PanelRole.GUSSET, List.of(d, a, m), site);
    Sense diagonal = cell.gusset == Pinch.IN ? Sense.VALLEY : Sense.MOUNTAIN;
    // Corners of the middle: m, then counter-clockwise; of the right: b, c, m; of the left: d, a,
    // m.
    EdgeDraft ofRight = atTop ? right.edge(2) : right.edge(1);
    EdgeDraft ofLeft = atTop ? left.edge(1) : left.edge(2);
    EdgeDraft toRight = atTop ? middle.edge(2) : middle.edge(0);
    EdgeDraft toLeft = atTop ? middle.edge(0) : middle.edge(2);
    net.score(toRight, ofRight, diagonal, FoldAngle.TO_SOLVE_AS_SAID, site);
    net.score(toLeft, ofLeft, diagonal, FoldAngle.TO_SOLVE_AS_SAID, site);
    EdgeDraft rightHalf = atTop ? right.edge(1) : right.edge(2);
    EdgeDraft leftHalf = atTop ? left.edge(2) : left.edge(1);
    net.seam(rightHalf, leftHalf, null, site);
    dress(middle, cell, f);
    EdgeDraft waist = middle.edge(1);
    return new DrawnCell(
        middle,
        atTop ? waist : null,
        right.edge(0),
        atTop ? null : waist,
        left.edge(0),
        List.of(rightHalf, leftHalf));
  }

  private static void dress(PanelDraft panel, WrapCell cell, CellFrame f) {
    for (WrapCell.Cutout cutout : cell.cutouts) {
      switch (cutout) {
        case WrapCell.Cutout.Border(double inset, Site site) -> panel.openWithin(inset, site);
        case WrapCell.Cutout.Shape(Polygon2 outline, Site site) -> {
          Motion2 about = Motion2.shift(f.middle());
          panel.open(new Opening.Window(about.apply(outline), Datum.of(about), site));
        }
        case WrapCell.Cutout.Punch(double diameter, Vec2 at, Site site) -> {
          Motion2 about = Motion2.shift(at == null ? panel.outline().centroid() : f.middle());
          Vec2 place = at == null ? Vec2.ZERO : at;
          panel.open(new Opening.Hole(about.apply(place), diameter, Datum.of(about), site));
        }
      }
    }
    if (cell.backing != null) {
      panel.back(cell.backing);
    }
    cell.labels.forEach(panel::label);
    if (cell.layer != null) {
      panel.layer(cell.layer.reveal(), cell.layer.paper(), cell.layer.site());
    }
  }
}
