package facetwright.export;

import facetwright.fold.Folding;
import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.measure.Unit;
import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.PanelRole;
import facetwright.net.Sense;
import facetwright.net.draft.EdgeDraft;
import facetwright.net.draft.NetDraft;
import facetwright.net.draft.PanelDraft;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.Room;
import facetwright.net.sheet.SheetLayout;
import facetwright.net.sheet.Stock;
import facetwright.papers.order.Order;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Small nets made by hand for the tests of drawings and files. */
public final class Papers {
  public static final Stock A4 = stock("A4", 210, 297);
  public static final Stock LETTER = stock("Letter", 215.9, 279.4);
  public static final Stock A2 = stock("A2", 420, 594);
  private static final FoldAngle SQUARE = FoldAngle.degrees(90);

  private Papers() {}

  public static Stock stock(String name, double width, double height) {
    return new Stock(name, width, height, 220, 0.275, Stock.Grain.LONG);
  }

  /** A closed cube: base, four walls, a lid on the north wall, seven tabs. */
  public static Net cube(double side, double tab) {
    NetDraft draft = new NetDraft();
    PanelDraft base = square(draft, "base", 0, 0, side);
    List<PanelDraft> walls = new ArrayList<>();
    for (String name : List.of("south wall", "east wall", "north wall", "west wall")) {
      EdgeDraft edge = base.edge(walls.size());
      walls.add(attach(draft, edge, name, PanelRole.FACET, side, 0, SQUARE));
    }
    PanelDraft lid = attach(draft, walls.get(2).edge(2), "lid", PanelRole.FACET, side, 0, SQUARE);
    for (int i = 0; i < 4; i++) {
      seam(draft, walls.get(i).edge(1), walls.get((i + 3) % 4).edge(3), tab);
    }
    seam(draft, walls.get(1).edge(2), lid.edge(1), tab);
    seam(draft, walls.get(0).edge(2), lid.edge(2), tab);
    seam(draft, walls.get(3).edge(2), lid.edge(3), tab);
    draft.standOn(base);
    return draft.build();
  }

  /** An open tray with a window, a hole, a layer, ticks, a slit flap and a perforated valley. */
  public static Net tray(double side, double wall) {
    NetDraft draft = new NetDraft();
    PanelDraft base = square(draft, "floor", 0, 0, side);
    base.open(
        new Opening.Window(
            Polygon2.regular(new Vec2(side / 3, side / 3), 6, side / 6, 0), Site.NONE));
    base.open(new Opening.Hole(new Vec2(side * 0.75, side * 0.75), 6, Site.NONE));
    List<PanelDraft> walls = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      walls.add(attach(draft, base.edge(i), "wall " + (i + 1), PanelRole.FACET, wall, 0, SQUARE));
    }
    for (int i = 0; i < 4; i++) {
      seam(draft, walls.get(i).edge(1), walls.get((i + 3) % 4).edge(3), wall / 2.5);
    }
    walls.get(1).layer(3, "gold", Site.NONE);
    EdgeDraft rim = walls.get(0).edge(2);
    PanelDraft flap = panelOn(draft, rim, "flap", PanelRole.FACET, wall / 2, 3);
    draft.perforation(rim, flap.edge(0), Sense.VALLEY, FoldAngle.degrees(45), Site.NONE);
    Segment2 far = walls.get(2).edge(2).segment();
    draft.tick(
        walls.get(2), new Segment2(far.middle(), far.middle().plus(new Vec2(0, -4))), Site.NONE);
    draft.standOn(base);
    return draft.build();
  }

  /** Two squares cut apart by a slit, hanging together by a third below both. */
  public static Net slitSquares(double side) {
    NetDraft draft = new NetDraft();
    PanelDraft left = square(draft, "left", 0, side, side);
    PanelDraft right = square(draft, "right", side, side, side);
    PanelDraft below =
        draft.panel(
            "below",
            PanelRole.FACET,
            List.of(
                new Vec2(0, 0),
                new Vec2(2 * side, 0),
                new Vec2(2 * side, side),
                new Vec2(side, side),
                new Vec2(0, side)),
            Site.NONE);
    draft.score(left.edge(0), below.edge(3), Sense.VALLEY, FoldAngle.TO_SOLVE, Site.NONE);
    draft.score(right.edge(0), below.edge(2), Sense.MOUNTAIN, FoldAngle.TO_SOLVE, Site.NONE);
    draft.slit(left.edge(1), right.edge(3), Site.NONE);
    return draft.build();
  }

  public static Job job(String title, Net net, Stock stock) {
    Laid laid = SheetLayout.lay(net, stock, new Room(5, 2));
    return Jobs.of(title, "Tidewell", laid, Folding.fold(laid.net()), Order.usual(Unit.MM));
  }

  /** Laid as it is, its lower left corner at the given place of a single sheet. */
  public static Laid at(Net net, Stock stock, double x, double y) {
    Vec2 shift = new Vec2(x - net.box().minX(), y - net.box().minY());
    Net moved = net.moved(Collections.nCopies(net.pieces(), Motion2.shift(shift)));
    return new Laid(moved, stock, 1, stock.width() >= net.box().maxX(), new Room(0, 0));
  }

  private static PanelDraft square(NetDraft draft, String name, double x, double y, double side) {
    return draft.panel(
        name, PanelRole.FACET, Polygon2.rectangle(x, y, side, side).corners(), Site.NONE);
  }

  private static PanelDraft attach(
      NetDraft draft,
      EdgeDraft edge,
      String name,
      PanelRole role,
      double depth,
      double bevel,
      FoldAngle angle) {
    PanelDraft panel = panelOn(draft, edge, name, role, depth, bevel);
    draft.score(edge, panel.edge(0), Sense.MOUNTAIN, angle, Site.NONE);
    return panel;
  }

  private static PanelDraft panelOn(
      NetDraft draft, EdgeDraft edge, String name, PanelRole role, double depth, double bevel) {
    Vec2 along = edge.segment().direction();
    Vec2 out = along.left().times(-depth);
    return draft.panel(
        name,
        role,
        List.of(
            edge.to(),
            edge.from(),
            edge.from().plus(out).plus(along.times(bevel)),
            edge.to().plus(out).minus(along.times(bevel))),
        Site.NONE);
  }

  private static void seam(NetDraft draft, EdgeDraft carrier, EdgeDraft other, double depth) {
    PanelDraft tab =
        attach(
            draft,
            carrier,
            "tab",
            PanelRole.TAB,
            depth,
            Math.min(depth, carrier.length() / 3),
            SQUARE);
    draft.seam(carrier, other, tab, Site.NONE);
  }
}
