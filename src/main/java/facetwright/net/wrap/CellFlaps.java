package facetwright.net.wrap;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Vec2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Ask;
import facetwright.net.FoldAngle;
import facetwright.net.Join.Hold;
import facetwright.net.NetException;
import facetwright.net.PanelRole;
import facetwright.net.Sense;
import facetwright.net.draft.EdgeDraft;
import facetwright.net.draft.NetDraft;
import facetwright.net.draft.PanelDraft;
import facetwright.net.panel.PairedFlap;
import facetwright.words.Site;
import java.util.List;

/** Draws the flaps on edges of a wrap that hold without glue, or on both edges of its seam. */
final class CellFlaps {
  private final WrapDraft wrap;
  private final NetDraft net;
  private final DrawnCell[][] drawn;

  CellFlaps(WrapDraft wrap, NetDraft net, DrawnCell[][] drawn) {
    this.wrap = wrap;
    this.net = net;
    this.drawn = drawn;
  }

  void draw() {
    for (CellFlap flap : wrap.flaps) {
      switch (flap) {
        case CellFlap.Tuck t -> tuck(t);
        case CellFlap.Hook h -> {
          EdgeDraft one = free(h.cell(), h.edge(), h.site());
          EdgeDraft two = free(h.other(), h.edge(), h.site());
          pair(net, one, two, h.flap(), new Fold(Sense.MOUNTAIN, FoldAngle.TO_SOLVE), h.site());
        }
      }
    }
  }

  private void tuck(CellFlap.Tuck tuck) {
    EdgeDraft edge = free(tuck.cell(), tuck.edge(), tuck.site());
    PanelDraft lid = edge.panel();
    List<PanelDraft> bearers = net.beside(lid);
    if (bearers.size() == 1) {
      net.hinge(lid, bearers.getFirst());
    }
    String on = "the free edge of \"" + lid.name() + "\"";
    List<Vec2> corners = tuck.flap().corners(edge.length(), on, tuck.site());
    PanelDraft flap = hung(net, edge, corners, "tuck of " + lid.name(), tuck.site());
    net.score(edge(lid, flap), flap.edge(0), Sense.MOUNTAIN, tuck.flap().fold(), tuck.site());
    tuck.flap().round(flap, tuck.site());
    net.lap(flap, cell(tuck.into(), tuck.site()).main(), Hold.TUCK, tuck.site());
  }

  /** How flaps are folded that hang on the two edges of a join. */
  record Fold(Sense sense, FoldAngle angle) {}

  /** A flap on half of each of two edges that meet. */
  static void pair(
      NetDraft net, EdgeDraft one, EdgeDraft two, PairedFlap flap, Fold fold, Site site) {
    Ask.that(
        LengthTolerance.FINE.same(one.length(), two.length()),
        () ->
            Message.of(
                "the edges of \"%s\" and \"%s\" that meet are %s and %s long: where both bear a"
                    + " %s, they have to be equally long",
                one.panel().name(),
                two.panel().name(),
                Value.given(one.length()),
                Value.given(two.length()),
                flap.word()),
        site);
    List<Vec2> corners = flap.corners(one.length(), "\"" + one.panel().name() + "\"", site);
    PanelDraft onOne = half(net, one, corners, flap, site);
    PanelDraft onTwo = half(net, two, corners, flap, site);
    EdgeDraft bearsOne = edge(one.panel(), onOne);
    EdgeDraft bearsTwo = edge(two.panel(), onTwo);
    net.score(bearsOne, onOne.edge(0), fold.sense(), fold.angle(), site);
    net.score(bearsTwo, onTwo.edge(0), fold.sense(), fold.angle(), site);
    net.seam(bearsOne, two, onOne, flap.hold(), site);
    net.seam(bearsTwo, one, onTwo, flap.hold(), site);
  }

  /** Its side is divided at its middle, the half that bears no flap stays the side. */
  private static PanelDraft half(
      NetDraft net, EdgeDraft side, List<Vec2> corners, PairedFlap flap, Site site) {
    String name = flap.hold() == Hold.GLUE ? "seam flap" : flap.word();
    return hung(net, side, corners, name + " of " + side.panel().name(), site);
  }

  /**
   * A flap where it lies in the net; its side is divided where the flap's hinge begins and ends.
   *
   * @param corners seen with the side at the bottom, from its left end, the hinge first
   */
  private static PanelDraft hung(
      NetDraft net, EdgeDraft side, List<Vec2> corners, String name, Site site) {
    Vec2 left = side.to();
    Vec2 back = side.segment().direction().times(-1);
    Vec2 out = back.left();
    List<Vec2> there =
        corners.stream().map(c -> left.plus(back.times(c.x())).plus(out.times(c.y()))).toList();
    PanelDraft flap = net.panel(name, PanelRole.TAB, there, site);
    EdgeDraft hinge = side;
    if (!LengthTolerance.FINE.same(hinge.from(), there.get(1))) {
      hinge = side.panel().split(side, there.get(1));
    }
    if (!LengthTolerance.FINE.same(hinge.to(), there.get(0))) {
      side.panel().split(hinge, there.get(0));
    }
    return flap;
  }

  /** The side along which a flap just hung lies. */
  private static EdgeDraft edge(PanelDraft bearer, PanelDraft flap) {
    Vec2 from = flap.edge(1).from();
    return bearer.edges().stream()
        .filter(e -> LengthTolerance.FINE.same(e.from(), from))
        .findFirst()
        .orElseThrow();
  }

  private DrawnCell cell(WrapCell cell, Site site) {
    Ask.that(
        !cell.removed,
        wrap.name(cell.row, cell.column) + " is cut away: keep it, or name another cell",
        site);
    return drawn[cell.row][cell.column];
  }

  private EdgeDraft free(WrapCell cell, CellSide said, Site site) {
    DrawnCell made = cell(cell, site);
    String name = wrap.name(cell.row, cell.column);
    for (CellSide side : said == null ? List.of(CellSide.TOP, CellSide.BOTTOM) : List.of(said)) {
      EdgeDraft edge = side == CellSide.TOP ? made.top() : made.bottom();
      if (edge != null && net.isFree(edge) && !net.isJoined(edge)) {
        return edge;
      }
    }
    String which = said == null ? "" : said == CellSide.TOP ? " at its top" : " at its bottom";
    throw new NetException(
        "\""
            + name
            + "\" has no free edge"
            + which
            + " for a flap: cut away the cell beyond it, or choose another cell",
        site);
  }
}
