package facetwright.fold;

import facetwright.geom.Vec2;
import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.net.Sense;
import facetwright.net.draft.EdgeDraft;
import facetwright.net.draft.NetDraft;
import facetwright.net.draft.PanelDraft;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;

/** Nets as three-line fixtures. */
public final class Card {
  public static final FoldAngle SQUARE = FoldAngle.degrees(90);

  public final NetDraft draft = new NetDraft();
  private int line = 1;

  public Site next() {
    return new Site(line++, 1);
  }

  public PanelDraft panel(String name, double... xy) {
    List<Vec2> corners = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      corners.add(new Vec2(xy[i], xy[i + 1]));
    }
    return draft.panel(name, PanelRole.FACET, corners, next());
  }

  public PanelDraft rectangle(String name, double x, double y, double w, double h) {
    return panel(name, x, y, x + w, y, x + w, y + h, x, y + h);
  }

  /** A rectangle hung on a side; its side 0 is scored, side 2 is the far one. */
  public PanelDraft flap(EdgeDraft side, String name, double depth, Sense sense, FoldAngle angle) {
    Vec2 out = side.segment().direction().left().times(-depth);
    Site at = next();
    PanelDraft flap =
        draft.panel(
            name,
            PanelRole.FACET,
            List.of(side.to(), side.from(), side.from().plus(out), side.to().plus(out)),
            at);
    draft.score(side, flap.edge(0), sense, angle, at);
    return flap;
  }

  /** A mountain flap at a right angle. */
  public PanelDraft wall(EdgeDraft side, String name, double depth) {
    return flap(side, name, depth, Sense.MOUNTAIN, SQUARE);
  }

  /** A tab beveled at 45° on side {@code a} that makes it meet {@code b}. */
  public PanelDraft tab(EdgeDraft a, EdgeDraft b, double depth, FoldAngle angle) {
    return tab(a, b, depth, depth, angle);
  }

  public PanelDraft tab(EdgeDraft a, EdgeDraft b, double depth, double bevel, FoldAngle angle) {
    Vec2 along = a.segment().direction();
    Vec2 out = along.left().times(-depth);
    Site at = next();
    PanelDraft tab =
        draft.panel(
            "tab of " + a.panel().name(),
            PanelRole.TAB,
            List.of(
                a.to(),
                a.from(),
                a.from().plus(out).plus(along.times(bevel)),
                a.to().plus(out).minus(along.times(bevel))),
            at);
    draft.score(a, tab.edge(0), Sense.MOUNTAIN, angle, at);
    draft.seam(a, b, tab, at);
    return tab;
  }

  public void seam(EdgeDraft a, EdgeDraft b) {
    draft.seam(a, b, null, next());
  }

  public Net net() {
    return draft.build();
  }

  /** A tray standing on its base: walls of one depth, folded by one angle, corners seamed. */
  public static Card tray(double width, double depth, double height, FoldAngle angle) {
    Card card = new Card();
    PanelDraft base = card.rectangle("base", 0, 0, width, depth);
    List<PanelDraft> walls = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      walls.add(card.flap(base.edge(i), "wall " + (i + 1), height, Sense.MOUNTAIN, angle));
    }
    for (int i = 0; i < 4; i++) {
      card.seam(walls.get(i).edge(3), walls.get((i + 1) % 4).edge(1));
    }
    card.draft.standOn(base);
    return card;
  }

  /** A wrap of columns, folded by signed angles (mountain positive), its ends seamed. */
  public static Card wrap(double height, double[] widths, double[] angles) {
    Card card = new Card();
    PanelDraft first = card.rectangle("column 1", 0, 0, widths[0], height);
    List<NetDraft.CornerDraft> ring =
        new ArrayList<>(List.of(new NetDraft.CornerDraft(first.edge(0))));
    EdgeDraft open = first.edge(1);
    for (int i = 1; i < widths.length; i++) {
      double angle = angles[i - 1];
      PanelDraft next =
          card.flap(
              open,
              "column " + (i + 1),
              widths[i],
              angle > 0 ? Sense.MOUNTAIN : Sense.VALLEY,
              FoldAngle.degrees(Math.abs(angle)));
      ring.add(new NetDraft.CornerDraft(next.edge(1)));
      open = next.edge(2);
    }
    card.seam(open, first.edge(3));
    card.draft.stance(ring);
    return card;
  }

  /**
   * A pyramid over a rectangle: side i has a ridge to its left and one to its right, and those that
   * meet are equally long.
   */
  public static Net pyramid(double width, double depth, double[] ridges, FoldAngle angle) {
    Card card = new Card();
    PanelDraft base = card.rectangle("base", 0, 0, width, depth);
    List<PanelDraft> sides = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      var foot = base.edge(i).segment();
      double left = ridges[i];
      double right = ridges[(i + 1) % 4];
      double w = foot.length();
      double along = (left * left - right * right + w * w) / (2 * w);
      var tip =
          foot.from()
              .plus(foot.direction().times(along))
              .plus(foot.direction().left().times(-Math.sqrt(left * left - along * along)));
      PanelDraft side =
          card.panel(
              "side " + (i + 1),
              foot.to().x(),
              foot.to().y(),
              foot.from().x(),
              foot.from().y(),
              tip.x(),
              tip.y());
      card.draft.score(base.edge(i), side.edge(0), Sense.MOUNTAIN, angle, new Site(1, 1));
      sides.add(side);
    }
    for (int i = 0; i < 4; i++) {
      card.seam(sides.get(i).edge(2), sides.get((i + 1) % 4).edge(1));
    }
    card.draft.standOn(base);
    return card.net();
  }
}
