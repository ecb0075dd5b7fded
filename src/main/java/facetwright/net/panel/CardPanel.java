package facetwright.net.panel;

import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.Ask;
import facetwright.net.Backing;
import facetwright.net.Datum;
import facetwright.net.NetException;
import facetwright.net.Opening;
import facetwright.net.PanelRole;
import facetwright.net.draft.EdgeDraft;
import facetwright.net.draft.NetDraft;
import facetwright.net.draft.PanelDraft;
import facetwright.net.fitting.Lettered;
import facetwright.words.Mend;
import facetwright.words.NearName;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A panel of a {@link PanelBuild}. Its edges are called "1", "2", … counter-clockwise from its
 * first corner; a four-sided one's also "bottom", "right", "top", "left", and a triangle's
 * "bottom", "right", "left". An attached panel is named and measured as seen with its hinge at the
 * bottom. Windows and holes are measured from its middle, ticks from the corners it was given by,
 * or from the left end of its hinge. Its middle is its centre of area; that of a tab lies at half
 * its depth over the middle of its hinge, however its ends are cut back.
 */
public final class CardPanel {
  private static final String BOTTOM = "bottom";

  /** What makers call the bottom edge, too. */
  private static final List<String> FOOT = List.of("base", "foot", "floor");

  private final NetDraft net;
  private final PanelDraft draft;
  private final Motion2 motion;
  private final Map<String, CardEdge> edges = new LinkedHashMap<>();

  CardPanel(NetDraft net, PanelDraft draft, Motion2 motion) {
    this.net = net;
    this.draft = draft;
    this.motion = motion;
    List<EdgeDraft> straight = draft.edges().stream().filter(e -> !e.isRound()).toList();
    List<String> words =
        switch (straight.size()) {
          case 3 -> List.of(BOTTOM, "right", "left");
          case 4 -> List.of(BOTTOM, "right", "top", "left");
          default -> List.of();
        };
    for (int i = 0; i < straight.size(); i++) {
      String word = words.isEmpty() ? String.valueOf(i + 1) : words.get(i);
      String full = "edge \"" + word + "\" of \"" + draft.name() + "\"";
      CardEdge edge = new CardEdge(net, full, straight.get(i));
      edges.put(word, edge);
      edges.put(String.valueOf(i + 1), edge);
      straight.get(i).call(words.isEmpty() ? word : (i + 1) + " (" + word + ")");
    }
  }

  PanelDraft draft() {
    return draft;
  }

  public String name() {
    return draft.name();
  }

  /** The edge with this name. */
  public CardEdge edge(String name, Site site) {
    CardEdge edge = edges.get(name.strip().toLowerCase(Locale.ROOT));
    if (edge == null) {
      throw new NetException(
          "panel \""
              + draft.name()
              + "\" has no edge \""
              + name
              + "\"; its edges are "
              + NearName.listed(name, List.copyOf(edges.keySet()))
              + (draft.edges().stream().anyMatch(EdgeDraft::isRound)
                  ? "; an arc is cut, and nothing hangs on it or is folded along it"
                  : ""),
          site,
          FOOT.contains(name.strip().toLowerCase(Locale.ROOT)) && edges.containsKey(BOTTOM)
              ? List.of(new Mend.Word(name, BOTTOM))
              : NearName.mends(name, edges.keySet()));
    }
    return edge;
  }

  /** Attaches a visible panel along the hinge. */
  public CardPanel attach(String name, String edge, FlapShape shape, Hinge hinge, Site site) {
    return attach(name, PanelRole.FACET, edge, shape, hinge, site);
  }

  /** Attaches a tab along the hinge. */
  public CardPanel tab(String name, String edge, FlapShape shape, Hinge hinge, Site site) {
    return attach(name, PanelRole.TAB, edge, shape, hinge, site);
  }

  private CardPanel attach(
      String name, PanelRole role, String edgeName, FlapShape shape, Hinge hinge, Site site) {
    CardEdge edge = edge(edgeName, site);
    double begin;
    double width;
    if (shape instanceof FlapShape.Own own) {
      List<Vec2> corners = own.corners(0, site);
      begin = corners.get(0).x();
      width = corners.get(1).x() - begin;
    } else if (Double.isNaN(hinge.width())) {
      EdgeDraft part = edge.longestFree(site);
      begin = edge.begin(part);
      width = edge.end(part) - begin;
    } else {
      width = Ask.length("the width on " + edge.name(), hinge.width(), edge.length(), site);
      begin = Double.isNaN(hinge.offset()) ? (edge.length() - width) / 2 : hinge.offset();
    }
    List<Vec2> shaped = shape.corners(width, site);
    EdgeDraft part = edge.isolate(begin, begin + width, site);
    Motion2 onto =
        Motion2.carrying(shaped.get(0), shaped.get(1), /* ontoFrom= */ part.to(), part.from());
    List<Vec2> corners = new ArrayList<>(shaped.stream().map(onto::apply).toList());
    corners.set(0, part.to());
    corners.set(1, part.from());
    PanelDraft panel = net.panel(name, role, corners, site);
    if (hinge.perforated()) {
      net.perforation(part, panel.edge(0), hinge.sense(), hinge.angle(), site);
    } else {
      net.score(part, panel.edge(0), hinge.sense(), hinge.angle(), site);
    }
    return new CardPanel(net, panel, onto);
  }

  /** Cuts a window that leaves a border all round. */
  public CardPanel window(double border, Site site) {
    Ask.length("a window's border", border, site);
    draft.openWithin(border, site);
    return this;
  }

  /** Cuts a window along an outline, measured from the panel's middle. */
  public CardPanel window(Polygon2 outline, Site site) {
    Motion2 about = aboutMiddle();
    draft.open(new Opening.Window(about.apply(outline), Datum.of(about), site));
    return this;
  }

  /** From measures about the panel's middle into the net. */
  private Motion2 aboutMiddle() {
    boolean isTab = draft.role() == PanelRole.TAB;
    Vec2 middle = isTab ? draft.over(edges.get("1").whole()) : draft.outline().centroid();
    return new Motion2(motion.cos(), motion.sin(), middle);
  }

  /**
   * Punches a hole.
   *
   * @param at measured from the panel's middle
   */
  public CardPanel hole(double diameter, Vec2 at, Site site) {
    Ask.length("a hole's diameter", diameter, site);
    Motion2 about = aboutMiddle();
    draft.open(new Opening.Hole(about.apply(at), diameter, Datum.of(about), site));
    return this;
  }

  /** Cuts a notch into a free edge. */
  public CardPanel notch(String edgeName, Notch notch, Site site) {
    notch.cut(edge(edgeName, site), draft, site);
    return this;
  }

  /**
   * Cuts a corner back, the same way along both edges.
   *
   * @param corner from 1; corner k lies between edges k − 1 and k (1: bottom left of a rectangle)
   */
  public CardPanel chamfer(int corner, double size, Site site) {
    FreeCorner free = freeCorner(corner, site);
    Ask.between("a chamfer there", size, 0.01, free.most(), site);
    draft.cutCorner(free.after(), free.on(-size), free.on(size));
    return this;
  }

  /**
   * Rounds corners by arcs that meet both edges.
   *
   * @param corners as for {@link #chamfer}
   */
  public CardPanel rounded(List<Integer> corners, double radius, Site site) {
    FreeCorner.refuse(
        corners.stream().map(c -> freeCorner(c, site)).toList(), draft.name(), radius, site);
    corners.forEach(c -> freeCorner(c, site).round(draft, radius));
    return this;
  }

  /** Rounds every corner that is free on both sides. */
  public CardPanel rounded(double radius, Site site) {
    List<Integer> free =
        IntStream.rangeClosed(1, count()).filter(c -> free(c).isPresent()).boxed().toList();
    Ask.that(
        !free.isEmpty(), "\"" + draft.name() + "\" has no corner that is free on both sides", site);
    return rounded(free, radius, site);
  }

  /** How many edges it was made with. */
  private int count() {
    return (int) edges.values().stream().distinct().count();
  }

  private FreeCorner freeCorner(int corner, Site site) {
    Ask.count("a corner of \"" + draft.name() + "\"", corner, 1, count(), site);
    String which = "corner " + corner + " of \"" + draft.name() + "\" is ";
    FreeCorner found =
        corner(corner).orElseThrow(() -> new NetException(which + "cut away already", site));
    Ask.that(!draft.after(found.before()).isRound(), which + "round already", site);
    return free(corner).orElseThrow(() -> new NetException(which + "not free on both sides", site));
  }

  private Optional<FreeCorner> corner(int corner) {
    List<EdgeDraft> after = edges.get(String.valueOf(corner)).parts();
    List<EdgeDraft> before = edges.get(String.valueOf(corner == 1 ? count() : corner - 1)).parts();
    return after.isEmpty() || before.isEmpty()
        ? Optional.empty()
        : Optional.of(new FreeCorner(before.getLast(), after.getFirst()));
  }

  private Optional<FreeCorner> free(int corner) {
    return corner(corner)
        .filter(c -> draft.after(c.before()) == c.after())
        .filter(c -> net.isFree(c.before()) && net.isFree(c.after()));
  }

  /** Puts paper or film behind its windows. */
  public CardPanel backing(Backing with) {
    draft.back(with);
    return this;
  }

  /** Glues a decorative paper on, smaller by the reveal all round. */
  public CardPanel layer(double reveal, String paper, Site site) {
    draft.layer(Ask.between("a reveal", reveal, 0, Ask.LONGEST, site), paper, site);
    return this;
  }

  /** Writes on it. */
  public CardPanel label(Lettered words) {
    draft.label(words);
    return this;
  }

  /** Draws a tick. */
  public CardPanel tick(Vec2 from, Vec2 to, Site site) {
    net.tick(draft, new Segment2(motion.apply(from), motion.apply(to)), site);
    return this;
  }

  /** What the panel is for. */
  public CardPanel become(PanelRole role) {
    draft.become(role);
    return this;
  }
}
