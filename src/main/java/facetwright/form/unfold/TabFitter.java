package facetwright.form.unfold;

import static facetwright.form.EdgeTab.Bearer.EITHER;
import static facetwright.form.EdgeTab.Bearer.NONE;
import static facetwright.form.EdgeTab.Bearer.OTHER;
import static facetwright.form.EdgeTab.Bearer.THIS;

import facetwright.form.EdgeTab;
import facetwright.form.EdgeTab.Bearer;
import facetwright.form.FormEdge;
import facetwright.geom.AngleTolerance;
import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion2;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.RoundOff;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Puts a tab on one side of each cut edge. Its ends are slanted so that in the net it stays clear
 * of panels and other tabs, and so that once glued it stays inside the panel it hides under, clear
 * of that panel's windows and of other tabs there: at a corner of the host the slant is at most
 * half the corner's angle. Both sides are tried, then steeper slants and smaller depths.
 */
final class TabFitter {
  private static final double[] SLANTS = {1, 0.6, 0.35};
  private static final double NARROWER = 0.8;

  /** The part of the edge's length that a tab keeps at its far side. */
  private static final double FAR_SIDE = 0.1;

  /** The part of a free angle that a tab may fill. */
  private static final double CLEAR = 0.95;

  /** Where two tabs would share a free angle narrower than twice this, the first takes it all. */
  private static final double SHARED = Math.toRadians(15);

  private final Layout layout;
  private final FlatForm flat;
  private final Tabs tabs;
  private final List<Tab> placed = new ArrayList<>();
  private final List<Integer> dropped = new ArrayList<>();
  private final Box2[] pieceBox;

  private TabFitter(Layout layout, Tabs tabs) {
    this.layout = layout;
    this.flat = layout.flat();
    this.tabs = tabs;
    pieceBox = new Box2[layout.pieces()];
    for (int f : layout.order()) {
      Box2 box = layout.box(f);
      int p = layout.piece(f);
      pieceBox[p] = pieceBox[p] == null ? box : pieceBox[p].union(box);
    }
  }

  static TabPlan plan(Layout layout, Tabs tabs) {
    TabFitter fitter = new TabFitter(layout, tabs);
    layout.cuts().forEach(e -> fitter.place(e, List.of()));
    return fitter.planned();
  }

  /**
   * Tabs that lie on each other under every likeness of a group; none where an edge falls on itself
   * turned over, so that a tab on one side of it would have to be on both.
   */
  static Optional<TabPlan> alike(Layout layout, Tabs tabs, List<Likeness> group) {
    TabFitter fitter = new TabFitter(layout, tabs);
    Set<Integer> done = new HashSet<>();
    for (int e : layout.cuts()) {
      int left = layout.flat().edge(e).left();
      if (group.stream().anyMatch(l -> l.edge(e) == e && l.facet(left) != left)
          || !group.stream().allMatch(l -> l.keepsSaid(e))) {
        return Optional.empty();
      }
      if (!done.contains(e)) {
        fitter.place(e, group);
        group.forEach(l -> done.add(l.edge(e)));
      }
    }
    return Optional.of(fitter.planned());
  }

  private TabPlan planned() {
    return new TabPlan(List.copyOf(placed), List.copyOf(dropped));
  }

  private void place(int edge, List<Likeness> group) {
    FormEdge e = flat.edge(edge);
    Bearer bearer = flat.tab(edge).map(EdgeTab::bearer).orElse(tabs.on() ? EITHER : NONE);
    List<Tab> left = bearer == OTHER || bearer == NONE ? List.of() : best(edge, e.left(), group);
    List<Tab> right = bearer == THIS || bearer == NONE ? List.of() : best(edge, e.right(), group);
    if (bearer == NONE) {
      return;
    }
    if (left.isEmpty() && right.isEmpty()) {
      dropped.addAll(Twin.of(edge, e.left(), group).stream().map(Twin::edge).toList());
    } else if (left.isEmpty() || right.isEmpty()) {
      placed.addAll(left.isEmpty() ? right : left);
    } else {
      placed.addAll(worth(left) >= worth(right) - RoundOff.PART ? left : right);
    }
  }

  private double depth(int edge) {
    double said = flat.tab(edge).map(EdgeTab::depth).orElse(0.0);
    return said > 0 ? said : tabs.depth();
  }

  private double bevel(int edge) {
    double said = flat.tab(edge).map(EdgeTab::bevel).orElse(0.0);
    return Math.toRadians(said > 0 ? said : tabs.bevel());
  }

  private double worth(List<Tab> of) {
    return of.stream().mapToDouble(this::worth).sum();
  }

  /** Larger is better; a tab that makes the net's box larger counts a little less. */
  private double worth(Tab tab) {
    Box2 box = pieceBox[layout.piece(tab.carrier())];
    double area = tab.outline().area();
    return box.holds(tab.box(), LengthTolerance.FINE) ? 1.2 * area : area;
  }

  private List<Tab> best(int edge, int carrier, List<Likeness> group) {
    int host = flat.across(edge, carrier);
    double hostFrom = flat.outline(host).angle(flat.sideOf(edge, host) + 1);
    double hostTo = flat.outline(host).angle(flat.sideOf(edge, host));
    double bevel = bevel(edge);
    double atFrom = Math.min(Math.min(bevel, hostFrom / 2), room(edge, carrier, true));
    double atTo = Math.min(Math.min(bevel, hostTo / 2), room(edge, carrier, false));
    if (group.stream().anyMatch(l -> l.isMirrored() && l.edge(edge) == edge)) {
      atFrom = Math.min(atFrom, atTo);
      atTo = atFrom;
    }
    List<Twin> twins = Twin.of(edge, carrier, group);
    List<Tab> best = List.of();
    for (double slant : SLANTS) {
      List<Tab> tabsThere = deepest(twins, atFrom * slant, atTo * slant);
      if (!tabsThere.isEmpty()
          && (best.isEmpty()
              || tabsThere.getFirst().outline().area() > best.getFirst().outline().area())) {
        best = tabsThere;
      }
      if (!best.isEmpty() && best.getFirst().depth() > NARROWER * depth(edge)) {
        break;
      }
    }
    return best;
  }

  /** The deepest tabs that fit with these slants, one a twin; empty where none do. */
  private List<Tab> deepest(List<Twin> twins, double atFrom, double atTo) {
    double run = 1 / Math.tan(atFrom) + 1 / Math.tan(atTo);
    double length = flat.length(twins.getFirst().edge());
    double depth = depth(twins.getFirst().edge());
    double least = Math.min(depth, tabs.minDepth());
    if (run > 0) {
      depth = Math.min(depth, (1 - FAR_SIDE) * length / run);
    }
    for (; depth >= least - LengthTolerance.ROUNDING.mm(); depth *= NARROWER) {
      List<Tab> all = fitting(twins, depth, atFrom, atTo);
      if (!all.isEmpty()) {
        return all;
      }
    }
    return List.of();
  }

  private List<Tab> fitting(List<Twin> twins, double depth, double atFrom, double atTo) {
    int before = placed.size();
    boolean all = true;
    for (Twin twin : twins) {
      Tab tab =
          twin.mirrored()
              ? tab(twin.edge(), twin.carrier(), depth, atTo, atFrom)
              : tab(twin.edge(), twin.carrier(), depth, atFrom, atTo);
      all = fits(tab);
      if (!all) {
        break;
      }
      placed.add(tab);
    }
    List<Tab> added = placed.subList(before, placed.size());
    List<Tab> fit = all ? List.copyOf(added) : List.of();
    added.clear();
    return fit;
  }

  private Tab tab(int edge, int carrier, double depth, double atFrom, double atTo) {
    Segment2 side = layout.outline(carrier).side(flat.sideOf(edge, carrier));
    Vec2 along = side.direction();
    Vec2 out = along.left().times(-depth);
    Polygon2 outline =
        new Polygon2(
            List.of(
                side.to(),
                side.from(),
                side.from().plus(along.times(depth / Math.tan(atFrom))).plus(out),
                side.to().minus(along.times(depth / Math.tan(atTo))).plus(out)));
    int host = flat.across(edge, carrier);
    Segment2 hostSide = flat.side(edge, host);
    Motion2 under = Motion2.carrying(side.from(), side.to(), hostSide.to(), hostSide.from());
    return new Tab(edge, carrier, host, outline, under.apply(outline), outline.box(), depth);
  }

  private boolean fits(Tab tab) {
    return clearInNet(tab) && hiddenUnderHost(tab);
  }

  private boolean clearInNet(Tab tab) {
    int piece = layout.piece(tab.carrier());
    Box2 box = tab.box();
    for (int f : layout.order()) {
      if (layout.piece(f) == piece
          && layout.box(f).meets(box)
          && Overlap.between(layout.outline(f), tab.outline())) {
        return false;
      }
    }
    for (Tab other : placed) {
      if (layout.piece(other.carrier()) == piece
          && other.box().meets(box)
          && Overlap.between(other.outline(), tab.outline())) {
        return false;
      }
    }
    return true;
  }

  private boolean hiddenUnderHost(Tab tab) {
    int host = tab.host();
    if (!Overlap.inside(tab.hidden(), flat.outline(host), flat.isConvex(host))) {
      return false;
    }
    for (Tab other : placed) {
      if (other.host() == host && Overlap.between(other.hidden(), tab.hidden())) {
        return false;
      }
    }
    return flat.openings(host).stream().noneMatch(cut -> Planar.meet(tab.hidden(), cut));
  }

  /** The angle free for a tab at one end of a side, between the side and the next panel there. */
  private double room(int edge, int carrier, boolean atFrom) {
    Segment2 side = layout.outline(carrier).side(flat.sideOf(edge, carrier));
    Vec2 end = atFrom ? side.from() : side.to();
    Vec2 along = atFrom ? side.direction() : side.direction().times(-1);
    double free = 2 * Math.PI;
    boolean mate = false;
    Box2 near = Box2.around(List.of(end)).grown(LengthTolerance.FINE.mm());
    for (int f : layout.order()) {
      if (layout.piece(f) != layout.piece(carrier) || !layout.box(f).meets(near)) {
        continue;
      }
      Polygon2 panel = layout.outline(f);
      for (int c = 0; c < panel.size(); c++) {
        if (!LengthTolerance.FINE.same(panel.corner(c), end)) {
          continue;
        }
        // At the start of a side the free angle lies clockwise from it, at its end the other way.
        int s = atFrom ? c - 1 : c;
        Vec2 ray = panel.corner(atFrom ? c - 1 : c + 1).minus(end).unit();
        double turn = Math.atan2(along.cross(ray), along.dot(ray));
        double angle = atFrom ? positive(-turn) : positive(turn);
        if (angle < free) {
          free = angle;
          mate =
              f == flat.across(edge, carrier)
                  && Math.floorMod(s, panel.size()) == flat.sideOf(edge, f);
        }
      }
    }
    double share = mate || free / 2 < SHARED ? free : free / 2;
    return CLEAR * share;
  }

  private static double positive(double angle) {
    return angle < AngleTolerance.FINE.radians() ? angle + 2 * Math.PI : angle;
  }
}
