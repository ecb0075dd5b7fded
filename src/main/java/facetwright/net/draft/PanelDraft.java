package facetwright.net.draft;

import facetwright.geom.Arc;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.RoundOff;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.message.Value;
import facetwright.net.Ask;
import facetwright.net.Backing;
import facetwright.net.NetException;
import facetwright.net.Opening;
import facetwright.net.Panel;
import facetwright.net.PanelRole;
import facetwright.net.Shapes;
import facetwright.net.fitting.Lettered;
import facetwright.words.SaidTwice;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** A panel in the making. */
public final class PanelDraft {
  private String name;
  private PanelRole role;
  private final Site site;
  private final SaidTwice twice;
  private boolean isOnBlank;
  private boolean isNamed;
  private final List<EdgeDraft> edges = new ArrayList<>();
  private final List<Opening> openings = new ArrayList<>();
  private final List<Lettered> labels = new ArrayList<>();
  private LayerDraft layer;
  private Backing backing;

  /** A decorative paper to be glued on. */
  public record LayerDraft(double reveal, String paper, Site site) {}

  PanelDraft(String name, PanelRole role, List<Vec2> corners, Site site, SaidTwice twice) {
    this.name = name;
    this.role = role;
    this.site = site;
    this.twice = twice;
    corners.forEach(c -> edges.add(new EdgeDraft(this, c)));
  }

  /**
   * Cuts a window that leaves a border all round.
   *
   * @throws NetException where the border leaves none, with the border that it has to be under
   */
  public void openWithin(double border, Site at) {
    List<Polygon2> left = Planar.inset(outline(), border);
    Ask.that(
        !left.isEmpty(),
        () -> Shapes.noWindow(border, Value.name(name), Planar.mostInset(outline())),
        at);
    left.forEach(w -> open(new Opening.Window(w, at)));
  }

  /** Half its depth over the middle of the side that it hangs by: the middle of a tab. */
  public Vec2 over(Segment2 hinge) {
    Vec2 in = hinge.direction().left();
    double depth =
        edges.stream().mapToDouble(e -> e.from().minus(hinge.from()).dot(in)).max().orElse(0);
    return hinge.middle().plus(in.times(depth / 2));
  }

  public String name() {
    return name;
  }

  public void rename(String newName) {
    name = newName;
    isNamed = true;
  }

  /** Says that it was found between the lines of a blank, where its outline lies as it does. */
  public PanelDraft onBlank() {
    isOnBlank = true;
    return this;
  }

  public PanelRole role() {
    return role;
  }

  public void become(PanelRole newRole) {
    role = newRole;
  }

  /** The sides, counter-clockwise. */
  public List<EdgeDraft> edges() {
    return List.copyOf(edges);
  }

  /** The side that is drawn lowest, as far as a side runs level. */
  EdgeDraft lowest() {
    return edges.stream()
        .min(
            Comparator.comparingLong(
                e -> -Math.round(e.segment().direction().x() / RoundOff.SOLVED)))
        .orElseThrow();
  }

  /** Side by number, counted round and round. */
  public EdgeDraft edge(int index) {
    return edges.get(Math.floorMod(index, edges.size()));
  }

  /** The outline as it stands now. */
  public Polygon2 outline() {
    return new Polygon2(edges.stream().map(EdgeDraft::from).toList(), arcs());
  }

  /** These sides, one after another, stand for an arc. */
  public void round(List<EdgeDraft> sides, Vec2 centre) {
    EdgeDraft.Bow bow = new EdgeDraft.Bow(centre);
    sides.forEach(side -> side.bow(bow));
  }

  /** Some of its sides stand for arcs. */
  void round(List<Arc> arcs) {
    for (Arc arc : arcs) {
      round(
          IntStream.range(0, arc.sides()).mapToObj(i -> edge(arc.first() + i)).toList(),
          arc.centre());
    }
  }

  /** The arcs, each with the sides in a row that stand for it now. */
  private List<Arc> arcs() {
    List<Arc> arcs = new ArrayList<>();
    for (int e = 0; e < edges.size(); e++) {
      if (edge(e).isRound() && edge(e).bow() != edge(e - 1).bow()) {
        int sides = 1;
        while (edge(e + sides).bow() == edge(e).bow()) {
          sides++;
        }
        arcs.add(new Arc(e, sides, edge(e).bow().centre()));
      }
    }
    return arcs;
  }

  /** Whether the outline, as it stands now, neither crosses nor touches itself. */
  public boolean isSimple() {
    try {
      return outline().isSimple();
    } catch (IllegalArgumentException e) {
      return false;
    }
  }

  /** The side after this one. */
  public EdgeDraft after(EdgeDraft edge) {
    return edges.get((edges.indexOf(edge) + 1) % edges.size());
  }

  /**
   * Divides a side at a point: the given side keeps the first part, the returned one is the rest.
   */
  public EdgeDraft split(EdgeDraft edge, Vec2 at) {
    EdgeDraft rest = new EdgeDraft(this, at);
    rest.call(edge.called());
    edges.add(edges.indexOf(edge) + 1, rest);
    return rest;
  }

  /**
   * Cuts a corner back: the corner where {@code edge} starts is replaced by one point on the side
   * before and one on {@code edge}. The returned new side joins them.
   */
  public EdgeDraft cutCorner(EdgeDraft edge, Vec2 onBefore, Vec2 onEdge) {
    EdgeDraft bevel = new EdgeDraft(this, onBefore);
    edges.add(edges.indexOf(edge), bevel);
    edge.moveStart(onEdge);
    return bevel;
  }

  /** Puts corners between the start and the end of a side: a notch. Returns the new sides. */
  public List<EdgeDraft> detour(EdgeDraft edge, List<Vec2> corners) {
    List<EdgeDraft> added = corners.stream().map(c -> new EdgeDraft(this, c)).toList();
    added.getLast().call(edge.called());
    edges.addAll(edges.indexOf(edge) + 1, added);
    return added;
  }

  public void open(Opening opening) {
    openings.add(opening);
  }

  /** Puts paper or film behind all its windows, those cut later among them. */
  public void back(Backing with) {
    if (backing != null) {
      twice.replaced("backing", name, backing.site(), with.site());
    }
    backing = with;
  }

  public void layer(double reveal, String paper, Site layerSite) {
    if (layer != null) {
      twice.replaced("layer", name, layer.site(), layerSite);
    }
    layer = new LayerDraft(reveal, paper, layerSite);
  }

  /** Words go on it. */
  public void label(Lettered words) {
    if (!labels.isEmpty()) {
      twice.beside("label", name, labels.getLast().site(), words.site());
    }
    labels.add(words);
  }

  List<Lettered> labels() {
    return List.copyOf(labels);
  }

  Optional<LayerDraft> layer() {
    return Optional.ofNullable(layer);
  }

  private List<Opening> backed() {
    if (backing == null) {
      return openings;
    }
    Ask.that(
        openings.stream().anyMatch(Opening.Window.class::isInstance),
        "\"" + name + "\" has no window to put a backing behind: cut one",
        backing.site());
    return openings.stream()
        .map(o -> o instanceof Opening.Window w ? w.backed(backing) : o)
        .toList();
  }

  Panel build() {
    try {
      Panel.OnBlank found = isOnBlank ? new Panel.OnBlank(outline().corners(), isNamed) : null;
      List<String> sides = edges.stream().map(EdgeDraft::called).toList();
      return new Panel(name, role, outline(), backed(), site, found, sides);
    } catch (IllegalArgumentException e) {
      throw new NetException("panel \"" + name + "\": " + e.getMessage(), site);
    }
  }
}
