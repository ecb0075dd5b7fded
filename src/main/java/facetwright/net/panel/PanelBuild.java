package facetwright.net.panel;

import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion2;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Ask;
import facetwright.net.FoldAngle;
import facetwright.net.Join.Hold;
import facetwright.net.Net;
import facetwright.net.NetException;
import facetwright.net.Opening;
import facetwright.net.PanelRole;
import facetwright.net.Sense;
import facetwright.net.Shapes;
import facetwright.net.Stance;
import facetwright.net.draft.EdgeDraft;
import facetwright.net.draft.NetDraft;
import facetwright.net.draft.PanelDraft;
import facetwright.words.SaidTwice;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A net made panel by panel: start with a panel, attach panels and tabs to its edges. Each start
 * panel begins a piece of its own, such as a box and its lid; the pieces are laid apart. The form
 * stands on its base or on the first panel, as {@link Stance#asCalled} tells. Every measure is in
 * mm.
 */
public final class PanelBuild {
  /** Room between two pieces as they are laid apart, in mm. */
  private static final double APART = 10;

  /** Where the next piece is drawn before it is laid: farther than any piece reaches. */
  private static final double FAR = 200_000;

  private final NetDraft net = new NetDraft();
  private final List<CardPanel> starts = new ArrayList<>();

  /** Starts a piece with a rectangle. */
  public CardPanel rectangle(String name, double width, double height, Site site) {
    Ask.length("the width of \"" + name + "\"", width, site);
    Ask.length("the height of \"" + name + "\"", height, site);
    return start(name, Polygon2.rectangle(0, 0, width, height), site);
  }

  /** Starts a piece with a regular polygon whose first edge lies at the bottom. */
  public CardPanel regular(String name, int sides, double side, Site site) {
    Ask.length("the side of \"" + name + "\"", side, site);
    return start(name, new Polygon2(new FlapShape.Regular(sides).corners(side, site)), site);
  }

  /** Starts a piece with a panel of any outline; a clockwise one is turned round. */
  public CardPanel polygon(String name, List<Vec2> corners, Site site) {
    return start(name, Shapes.outline("\"" + name + "\"", corners, site), site);
  }

  /** Starts a piece with a panel of an outline, its arcs free edges. */
  public CardPanel outline(String name, Polygon2 outline, Site site) {
    return start(name, outline, site);
  }

  private CardPanel start(String name, Polygon2 outline, Site site) {
    Motion2 motion = Motion2.shift(new Vec2(starts.size() * FAR, 0));
    PanelDraft draft = net.panel(name, PanelRole.FACET, motion.apply(outline), site);
    CardPanel panel = new CardPanel(net, draft, motion);
    starts.add(panel);
    return panel;
  }

  /**
   * Two edges meet when made. They should be equally long, yet need not be: then their ends are not
   * sure to meet, and of edges in several parts the longest part takes the difference.
   *
   * @param tab the tab on {@code a} that is glued under {@code b}'s panel, or null
   * @throws NetException when the tab hangs elsewhere, or a part of the longer edge meets nothing
   */
  public PanelBuild join(CardEdge a, CardEdge b, CardPanel tab, Site site) {
    if (tab == null && b.parts().size() > a.parts().size()) {
      return join(b, a, null, site);
    }
    PanelDraft glued = tab == null ? null : tab.draft();
    EdgeDraft longest =
        a.parts().stream().max(Comparator.comparingDouble(EdgeDraft::length)).orElseThrow();
    double more = b.length() - a.length();
    Ask.that(
        longest.length() + more > LengthTolerance.FINE.mm(),
        () ->
            Message.of(
                "%s is %s longer than %s: part of it meets nothing",
                a.name(), Value.limit(-more), b.name()),
        site);
    boolean found = tab == null;
    for (EdgeDraft part : a.parts()) {
      // The left end of a meets the right end of b, so that what follows is measured back from it.
      boolean after = part != longest && a.begin(part) > a.begin(longest);
      double end = b.length() - a.begin(part) - (after ? more : 0);
      double begin = b.length() - a.end(part) - (after || part == longest ? more : 0);
      EdgeDraft other = b.meeting(begin, end, site);
      EdgeDraft across = net.across(part);
      boolean carries = across != null && across.panel() == glued;
      found |= carries;
      net.seam(part, other, carries ? glued : null, site);
    }
    Ask.that(found, "the tab does not hang on " + a.name(), site);
    return this;
  }

  /** Attaches a tab to {@code edge} of {@code panel} and joins that edge to the other with it. */
  public CardPanel join(CardPanel panel, String edge, CardEdge other, FlapShape shape, Site site) {
    Hinge hinge = Hinge.whole(Sense.MOUNTAIN, FoldAngle.TO_SOLVE);
    CardPanel tab = panel.tab("tab of " + panel.name(), edge, shape, hinge, site);
    join(panel.edge(edge, site), other, tab, site);
    return tab;
  }

  /**
   * Two edges meet when made, and each bears a flap along half of it.
   *
   * @throws NetException when the edges are not equally long, or something hangs on them
   */
  public PanelBuild join(
      CardPanel a, String edge, CardPanel b, String otherEdge, PairedFlap flap, Site site) {
    CardEdge one = a.edge(edge, site);
    CardEdge two = b.edge(otherEdge, site);
    Ask.that(
        LengthTolerance.FINE.same(one.length(), two.length()),
        () ->
            Message.of(
                "%s is %s long and %s %s: where both bear a %s, they have to be equally long",
                one.name(),
                Value.given(one.length()),
                two.name(),
                Value.given(two.length()),
                flap.word()),
        site);
    CardPanel mine = half(a, edge, one, flap, site);
    CardPanel its = half(b, otherEdge, two, flap, site);
    meet(mine, one, two, flap.hold(), site);
    meet(its, two, one, flap.hold(), site);
    return this;
  }

  private static CardPanel half(
      CardPanel panel, String edge, CardEdge whole, PairedFlap flap, Site site) {
    FlapShape shape = flap.shape(whole.length(), whole.name(), site);
    Hinge hinge = Hinge.whole(Sense.MOUNTAIN, FoldAngle.TO_SOLVE);
    return panel.tab(flap.word() + " of " + panel.name(), edge, shape, hinge, site);
  }

  private void meet(CardPanel flap, CardEdge bearer, CardEdge other, Hold hold, Site site) {
    double half = bearer.length() / 2;
    net.seam(
        bearer.meeting(0, half, site),
        other.isolate(half, 2 * half, site),
        flap.draft(),
        hold,
        site);
  }

  /** One panel lies flat on another when made. */
  public PanelBuild lap(CardPanel under, CardPanel over, Site site) {
    Ask.that(under.draft() != over.draft(), "a panel can't lie on itself", site);
    net.lap(under.draft(), over.draft(), site);
    return this;
  }

  /**
   * Attaches a flap that slips behind another panel and holds by friction, without glue.
   *
   * @param flap how it is made
   */
  public CardPanel tuck(CardPanel panel, String edge, CardPanel into, TuckFlap flap, Site site) {
    Ask.that(panel != into, "a flap can't be tucked behind the panel it hangs on", site);
    List<PanelDraft> bearers = net.beside(panel.draft());
    if (bearers.size() == 1) {
      net.hinge(panel.draft(), bearers.getFirst());
    }
    CardEdge foot = panel.edge(edge, site);
    FlapShape shape = flap.shape(foot.length(), foot.name(), site);
    Hinge hinge = Hinge.whole(Sense.MOUNTAIN, flap.fold());
    CardPanel made = panel.tab("tuck of " + panel.name(), edge, shape, hinge, site);
    flap.round(made.draft(), site);
    net.lap(made.draft(), into.draft(), Hold.TUCK, site);
    return made;
  }

  /**
   * Attaches a tongue that goes through a slot in another panel, inside of one of its edges.
   *
   * @throws NetException where the slot does not lie within that panel
   */
  public CardPanel tongue(
      CardPanel panel, String edge, CardPanel into, String otherEdge, TongueFlap flap, Site site) {
    Ask.that(panel != into, "a tongue can't go through the panel it hangs on", site);
    CardEdge foot = panel.edge(edge, site);
    Opening.Slot slot = flap.opening(foot, into.edge(otherEdge, site), site);
    if (!into.draft().outline().box().holds(slot.outline().box(), LengthTolerance.FINE)
        || Planar.past(slot.outline(), into.draft().outline()) > LengthTolerance.FINE.mm()) {
      throw new NetException(
          Shapes.overEdge("the slot in \"" + into.name() + "\"", slot, into.draft().outline()),
          site);
    }
    Hinge hinge = Hinge.whole(Sense.MOUNTAIN, flap.fold());
    CardPanel made =
        panel.tab("tongue of " + panel.name(), edge, flap.shape(foot, site), hinge, site);
    into.draft().open(slot);
    net.lap(made.draft(), into.draft(), Hold.TONGUE, site);
    return made;
  }

  /** The fold between two panels stays a hinge, which opens and shuts. */
  public PanelBuild hinge(CardPanel panel, CardPanel on, Site site) {
    Ask.that(
        net.hinge(panel.draft(), on.draft()),
        "\"" + panel.name() + "\" does not hang on \"" + on.name() + "\": attach it there first",
        site);
    return this;
  }

  /** Two edges that lie along each other in the net are parted by a slit, not left as two cuts. */
  public PanelBuild slit(CardEdge a, CardEdge b, Site site) {
    EdgeDraft one = a.longestFree(site);
    EdgeDraft two = b.longestFree(site);
    Ask.that(
        LengthTolerance.FINE.same(one.from(), two.to())
            && LengthTolerance.FINE.same(one.to(), two.from()),
        a.name() + " and " + b.name() + " do not lie along each other",
        site);
    net.slit(one, two, site);
    return this;
  }

  /** What was said twice of the same panels. */
  public SaidTwice twice() {
    return net.twice();
  }

  /** Which of the built net's panels this is. */
  public int number(CardPanel panel) {
    return net.panels().indexOf(panel.draft());
  }

  /**
   * The net, its pieces side by side from the origin.
   *
   * @throws NetException when it breaks an invariant of nets
   */
  public Net build() {
    Net built = net.build();
    int[] piece = built.pieceOfPanel();
    int first = first();
    List<Integer> beside =
        IntStream.range(0, piece.length).filter(p -> piece[p] == piece[first]).boxed().toList();
    built = built.with(Stance.asCalled(built, beside, first));
    Box2[] boxes = new Box2[built.pieces()];
    for (int p = 0; p < piece.length; p++) {
      Box2 box = built.panels().get(p).outline().box();
      boxes[piece[p]] = boxes[piece[p]] == null ? box : boxes[piece[p]].union(box);
    }
    double x = 0;
    List<Motion2> motions = new ArrayList<>();
    for (Box2 box : Arrays.asList(boxes)) {
      motions.add(Motion2.shift(new Vec2(x - box.minX(), -box.minY())));
      x += box.width() + APART;
    }
    return built.moved(motions);
  }

  /** The number of the first panel that a piece was started with. */
  private int first() {
    return starts.stream()
        .mapToInt(this::number)
        .filter(number -> number >= 0)
        .findFirst()
        .orElse(0);
  }
}
