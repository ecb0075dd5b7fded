package facetwright.net.wrap;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.net.Ask;
import facetwright.net.Clearance;
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
import java.util.function.DoubleFunction;

/**
 * A cell drawn in the net.
 *
 * @param main its panel, the middle triangle of a pinched one, or the left half of a halved one
 * @param below the sides along its lower edge: none at the tip of a pointed tab, the right half and
 *     the left of one that is pinched
 * @param above those along its upper edge
 */
record DrawnCell(
    PanelDraft main,
    EdgeDraft right,
    EdgeDraft left,
    List<EdgeDraft> below,
    List<EdgeDraft> above) {

  DrawnCell {
    below = List.copyOf(below);
    above = List.copyOf(above);
  }

  /** Null when that edge is pinched, or the tip of a pointed tab. */
  EdgeDraft bottom() {
    return below.size() == 1 ? below.getFirst() : null;
  }

  /** Null when that edge is pinched, or the tip of a pointed tab. */
  EdgeDraft top() {
    return above.size() == 1 ? above.getFirst() : null;
  }

  static DrawnCell plain(NetDraft net, WrapCell cell, String name, CellFrame f, Site site) {
    PanelDraft panel = net.panel(name, PanelRole.FACET, f.corners(), site);
    dress(panel, cell, f, _ -> panel.outline().centroid());
    return whole(panel);
  }

  /**
   * Where a tab lies.
   *
   * @param frame square on the side it hangs on
   * @param above whether it hangs on the cell above it
   * @param toMiddle from its fold to over the middle of the opening it is folded over, in mm; NaN
   *     where that is not known
   */
  record Flap(CellFrame frame, boolean above, double toMiddle) {
    /**
     * Where a hole is punched in it of which no place is said, so that those of all tabs folded
     * over one opening lie over each other: over the opening's middle, where it reaches there with
     * card to spare all round; else, and where there is no such middle, at half its depth.
     */
    Vec2 hole(Polygon2 outline, double diameter) {
      Vec2 over = off(toMiddle);
      boolean isRoom = toMiddle > 0 && outline.contains(over);
      for (int i = 0; i < outline.size() && isRoom; i++) {
        double room = outline.side(i).distance(over) - diameter / 2;
        isRoom = Clearance.isEnough(room, Clearance.FROM_EDGE);
      }
      return isRoom ? over : frame.middle();
    }

    private Vec2 off(double by) {
      return above
          ? frame.upperMiddle().minus(frame.up().times(by))
          : frame.lowerMiddle().plus(frame.up().times(by));
    }
  }

  /**
   * @param usual how far its ends are cut back where that is not said, in mm
   */
  static DrawnCell tab(NetDraft net, WrapCell cell, String name, Flap flap, double usual) {
    CellFrame f = flap.frame();
    boolean above = flap.above();
    double back =
        cell.tab.bevel() < 0 ? usual : f.height() * Math.tan(Math.toRadians(cell.tab.bevel()));
    Vec2 in = f.along().times(back);
    List<Vec2> corners = new ArrayList<>(f.corners());
    int free = above ? 0 : 2;
    corners.set(free, above ? corners.get(0).plus(in) : corners.get(2).minus(in));
    corners.set(free + 1, above ? corners.get(1).minus(in) : corners.get(3).plus(in));
    boolean isPointed = f.lowerWidth() - 2 * back <= LengthTolerance.FINE.mm();
    if (isPointed) {
      corners.set(free, corners.get(free).toward(corners.remove(free + 1), 0.5));
    }
    PanelDraft panel = net.panel(name, PanelRole.TAB, corners, cell.tab.site());
    dress(panel, cell, f, d -> flap.hole(panel.outline(), d));
    if (!isPointed) {
      return whole(panel);
    }
    // Its tip took the place of the free side.
    return new DrawnCell(
        panel,
        above ? panel.edge(0) : panel.edge(1),
        panel.edge(2),
        above ? List.of() : List.of(panel.edge(0)),
        above ? List.of(panel.edge(1)) : List.of());
  }

  private static DrawnCell whole(PanelDraft panel) {
    return new DrawnCell(
        panel, panel.edge(1), panel.edge(3), List.of(panel.edge(0)), List.of(panel.edge(2)));
  }

  /**
   * Divides the cell by two diagonals from its waist corners to the middle of the pinched edge.
   *
   * @param isFree whether the halves of that edge meet each other
   */
  static DrawnCell pinched(
      NetDraft net, WrapCell cell, String name, CellFrame f, boolean atTop, boolean isFree) {
    Site site = cell.gussetSite;
    Vec2 a = f.lowerLeft();
    Vec2 b = f.lowerRight();
    Vec2 c = f.upperRight();
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
    if (isFree) {
      net.seam(rightHalf, leftHalf, null, site);
    }
    dress(middle, cell, f, _ -> middle.outline().centroid());
    List<EdgeDraft> waist = List.of(middle.edge(1));
    List<EdgeDraft> halves = List.of(rightHalf, leftHalf);
    return new DrawnCell(
        middle, right.edge(0), left.edge(0), atTop ? waist : halves, atTop ? halves : waist);
  }

  /** Divides the cell up its middle, to be folded together with its neighbours. */
  static DrawnCell halved(
      NetDraft net, WrapCell cell, String name, CellFrame f, Pinch way, Site site) {
    Ask.that(
        cell.cutouts.isEmpty() && cell.layer == null,
        name + " is folded in half within a fin: cut and paper the cells beside it instead",
        cell.cutouts.isEmpty()
            ? cell.layer == null ? site : cell.layer.site()
            : cell.cutouts.getFirst().site());
    Vec2 foot = f.lowerMiddle();
    Vec2 top = f.upperMiddle();
    PanelDraft left =
        net.panel(
            "left half of " + name,
            PanelRole.FACET,
            List.of(f.lowerLeft(), foot, top, f.upperLeft()),
            site);
    PanelDraft right =
        net.panel(
            "right half of " + name,
            PanelRole.FACET,
            List.of(foot, f.lowerRight(), f.upperRight(), top),
            site);
    cell.labels.forEach(left::label);
    Sense middle = way == Pinch.IN ? Sense.VALLEY : Sense.MOUNTAIN;
    net.score(left.edge(1), right.edge(3), middle, FoldAngle.degrees(180), site);
    return new DrawnCell(
        left,
        right.edge(1),
        left.edge(3),
        List.of(right.edge(0), left.edge(0)),
        List.of(right.edge(2), left.edge(2)));
  }

  /**
   * @param middle where a hole of a diameter goes of which no place is said
   */
  private static void dress(
      PanelDraft panel, WrapCell cell, CellFrame f, DoubleFunction<Vec2> middle) {
    for (WrapCell.Cutout cutout : cell.cutouts) {
      switch (cutout) {
        case WrapCell.Cutout.Border(double inset, Site site) -> panel.openWithin(inset, site);
        case WrapCell.Cutout.Shape(Polygon2 outline, Site site) -> {
          Motion2 about = f.about();
          panel.open(new Opening.Window(about.apply(outline), Datum.of(about), site));
        }
        case WrapCell.Cutout.Punch(double diameter, Vec2 at, Site site) -> {
          Motion2 about = at == null ? f.about(middle.apply(diameter)) : f.about();
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
