package facetwright.form.unfold;

import static facetwright.form.EdgeTab.Bearer.BOTH;
import static facetwright.form.EdgeTab.Bearer.EITHER;
import static facetwright.form.EdgeTab.Bearer.HINGE;
import static facetwright.form.EdgeTab.Bearer.NONE;
import static facetwright.form.EdgeTab.Bearer.OTHER;
import static facetwright.form.EdgeTab.Bearer.THIS;

import facetwright.form.EdgeTab;
import facetwright.form.EdgeTab.Bearer;
import facetwright.form.FormEdge;
import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.PartingSides;
import facetwright.geom.RoundOff;
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
    // What is tucked in has one place only, so that tabs give way to it.
    for (boolean isTuck : new boolean[] {true, false}) {
      layout.cuts().stream()
          .filter(e -> SaidFlap.shape(layout.flat(), e).isPresent() == isTuck)
          .forEach(e -> fitter.place(e, List.of()));
    }
    return fitter.planned();
  }

  /**
   * Tabs that lie on each other under every likeness of a group; none where an edge falls on itself
   * turned over, so that a tab on one side of it would have to be on both.
   */
  static Optional<TabPlan> alike(Layout layout, Tabs tabs, List<Likeness> group) {
    return isAnyTurnedOver(layout, group) ? Optional.empty() : nearlyAlike(layout, tabs, group);
  }

  /** Whether an edge that is cut falls on itself turned over under a likeness of a group. */
  static boolean isAnyTurnedOver(Layout layout, List<Likeness> group) {
    return layout.cuts().stream().anyMatch(e -> isTurnedOver(layout, e, group));
  }

  /** The same, but edges that fall on themselves turned over are alike only as they are turned. */
  static Optional<TabPlan> nearlyAlike(Layout layout, Tabs tabs, List<Likeness> group) {
    boolean isKept =
        layout.cuts().stream()
            .allMatch(
                e ->
                    !SaidFlap.isOneSided(layout.flat(), e)
                        && group.stream().allMatch(l -> l.keepsSaid(e)));
    if (!isKept) {
      return Optional.empty();
    }
    TabFitter fitter = new TabFitter(layout, tabs);
    Set<Integer> done = new HashSet<>();
    for (int e : layout.cuts()) {
      if (!done.contains(e)) {
        List<Likeness> apart = apart(layout, e, group);
        fitter.place(e, apart);
        done.add(e);
        apart.forEach(l -> done.add(l.edge(e)));
      }
    }
    return Optional.of(fitter.planned());
  }

  private static boolean isTurnedOver(Layout layout, int e, List<Likeness> group) {
    int left = layout.flat().edge(e).left();
    return group.stream().anyMatch(l -> l.edge(e) == e && l.facet(left) != left);
  }

  /** The likenesses under which an edge does not fall on itself turned over. */
  private static List<Likeness> apart(Layout layout, int e, List<Likeness> group) {
    if (!isTurnedOver(layout, e, group)) {
      return group;
    }
    List<Likeness> turns = group.stream().filter(l -> !l.isMirrored()).toList();
    return isTurnedOver(layout, e, turns) ? List.of() : turns;
  }

  private TabPlan planned() {
    return new TabPlan(List.copyOf(placed), List.copyOf(dropped));
  }

  private void place(int edge, List<Likeness> group) {
    Bearer bearer = flat.tab(edge).map(EdgeTab::bearer).orElse(tabs.on() ? EITHER : NONE);
    if (bearer == NONE || bearer == HINGE) {
      return;
    }
    FormEdge e = flat.edge(edge);
    List<Tab> left = bearer == OTHER ? List.of() : flaps(edge, e.left(), group);
    if (bearer == BOTH) {
      both(edge, left);
      return;
    }
    List<Tab> right = bearer == THIS ? List.of() : flaps(edge, e.right(), group);
    if (left.isEmpty() && right.isEmpty()) {
      dropped.addAll(Twin.of(edge, e.left(), group).stream().map(Twin::edge).toList());
    } else if (left.isEmpty() || right.isEmpty()) {
      placed.addAll(left.isEmpty() ? right : left);
    } else {
      // On the line of a mirror both are worth as much, but for what rounding makes of it.
      placed.addAll(worth(left) >= worth(right) * (1 - RoundOff.SOLVED) ? left : right);
    }
  }

  private void both(int edge, List<Tab> left) {
    placed.addAll(left);
    List<Tab> right = left.isEmpty() ? left : flaps(edge, flat.edge(edge).right(), List.of());
    if (right.isEmpty()) {
      placed.removeAll(left);
      dropped.add(edge);
    }
    placed.addAll(right);
  }

  /** What this facet can bear there: of the shape said, or as deep as it fits. */
  private List<Tab> flaps(int edge, int carrier, List<Likeness> group) {
    Optional<List<Vec2>> shape = SaidFlap.shape(flat, edge);
    return shape.isEmpty()
        ? best(edge, carrier, group)
        : shape.map(s -> Tab.shaped(layout, edge, carrier, s)).filter(this::fits).stream().toList();
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
    double hostFrom = flat.angle(host, flat.sideOf(edge, host) + 1);
    double hostTo = flat.angle(host, flat.sideOf(edge, host));
    double bevel = bevel(edge);
    double atFrom =
        Math.min(Math.min(bevel, hostFrom / 2), FreeAngle.at(layout, edge, carrier, true));
    double atTo = Math.min(Math.min(bevel, hostTo / 2), FreeAngle.at(layout, edge, carrier, false));
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
    double length = Tab.side(layout, twins.getFirst().edge(), twins.getFirst().carrier()).length();
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
              ? Tab.slanted(layout, twin.edge(), twin.carrier(), depth, atTo, atFrom)
              : Tab.slanted(layout, twin.edge(), twin.carrier(), depth, atFrom, atTo);
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
    boolean isWhole =
        SaidFlap.slot(flat, tab.edge(), flat.side(tab.edge(), host))
            .map(s -> Overlap.inside(s.outline(), flat.outline(host), flat.isConvex(host)))
            .orElse(true);
    return isWhole
        && flat.openings(host).stream().noneMatch(cut -> PartingSides.meet(tab.hidden(), cut));
  }
}
