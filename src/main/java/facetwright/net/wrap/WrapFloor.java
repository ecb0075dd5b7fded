package facetwright.net.wrap;

import facetwright.geom.CyclicPolygon;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Ask;
import facetwright.net.PanelRole;
import facetwright.net.Sense;
import facetwright.net.draft.NetDraft;
import facetwright.net.draft.PanelDraft;
import facetwright.net.draft.UsualTab;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A floor under a wrap: it hangs on one column, and tabs on its other sides are glued inside the
 * others.
 *
 * @param column from 0
 * @param tab how deep its tabs are at most, in mm; less deep where they need steep ends; 0 for none
 */
record WrapFloor(int column, double tab, Site site) {

  /** What it is called. */
  static final String NAME = "floor";

  /**
   * Refuses a second floor.
   *
   * @param first null for none
   */
  static void refuseSecond(WrapFloor first, Site at) {
    Ask.that(
        first == null,
        () -> Message.of("this wrap has a floor already, by %s", first.site().text()),
        at);
  }

  /** A tab's ends are cut back by so much of its side at most. */
  private static final double MOST_BACK = 0.45;

  /** The part of a free angle that a tab may fill. */
  private static final double CLEAR = 0.95;

  /** Draws it below the lowest row, and the wrap stands on it, its first column in front. */
  void draw(WrapDraft wrap, NetDraft net, DrawnCell[][] drawn) {
    int n = wrap.columnCount();
    for (int c = 0; c < n; c++) {
      Ask.that(
          drawn[0][c] != null && drawn[0][c].bottom() != null && wrap.cells[0][c].tab == null,
          "a floor needs a wall on each side, and column "
              + (c + 1)
              + " has none in the lowest row: keep it there, neither pinched below nor a tab",
          site);
    }
    List<Double> foot = wrap.grid().line(0);
    double least = foot.stream().mapToDouble(w -> w).min().orElseThrow();
    double high = wrap.rows.getFirst().height();
    double most = Math.min(high, least / 2);
    Ask.that(
        tab < most,
        () ->
            Message.of(
                "the floor's tabs can't be %s deep: give less than %s, so that they lie on their"
                    + " walls",
                Value.given(tab), Value.atMost(most)),
        site);
    WrapAngles angles = new WrapAngles(wrap);
    double sharpest = Arrays.stream(CyclicPolygon.turns(foot)).min().orElseThrow();
    double slant = Math.toRadians(Math.min(UsualTab.BEVEL, CLEAR * sharpest));
    PanelDraft floor =
        net.panel(NAME, PanelRole.FACET, corners(foot, drawn[0][column].bottom().segment()), site);
    net.score(drawn[0][column].bottom(), floor.edge(0), Sense.MOUNTAIN, angles.floor(column), site);
    for (int side = 1; side < n; side++) {
      int c = Math.floorMod(column - side, n);
      PanelDraft flap = tab > 0 ? tab(net, floor, side, c, slant) : null;
      if (flap != null) {
        net.score(floor.edge(side), flap.edge(0), Sense.MOUNTAIN, angles.floor(c), site);
      }
      net.seam(floor.edge(side), drawn[0][c].bottom(), flap, site);
    }
    net.standOn(floor, floor.edge(column));
  }

  /** As the wrap stands: its corners on one circle. */
  private List<Vec2> corners(List<Double> widths, Segment2 hinge) {
    double[] turns = CyclicPolygon.turns(widths);
    int n = turns.length;
    List<Vec2> corners = new ArrayList<>(List.of(hinge.to(), hinge.from()));
    Vec2 along = hinge.direction();
    double heading = Math.PI + Math.atan2(along.y(), along.x());
    for (int side = 1; side < n - 1; side++) {
      int c = Math.floorMod(column - side, n);
      heading += Math.toRadians(turns[c]);
      corners.add(corners.getLast().plus(Vec2.polar(widths.get(c), heading)));
    }
    return corners;
  }

  /**
   * @param slant between the glued side and a tab's ends: beside the hinge it has to clear the next
   *     wall, which lies off the floor by the turn of their corner
   */
  private PanelDraft tab(NetDraft net, PanelDraft floor, int side, int wall, double slant) {
    Segment2 foot = floor.edge(side).segment();
    Vec2 along = foot.direction();
    double back = Math.min(tab / Math.tan(slant), MOST_BACK * foot.length());
    Vec2 out = along.left().times(-back * Math.tan(slant));
    Vec2 in = along.times(back);
    return net.panel(
        "floor tab " + (wall + 1),
        PanelRole.TAB,
        List.of(
            foot.to(), foot.from(), foot.from().plus(in).plus(out), foot.to().minus(in).plus(out)),
        site);
  }
}
