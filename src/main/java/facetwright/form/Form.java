package facetwright.form;

import facetwright.geom.FacetFrame;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Ask;
import facetwright.net.Backing;
import facetwright.net.Opening;
import facetwright.net.fitting.Lettered;
import facetwright.words.Site;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;

/**
 * A polyhedral form that has passed its checks: every facet flat (to 0.001 mm) and simple, every
 * edge shared by at most two facets that run it opposite ways, all facets hanging together, and a
 * closed form's facets facing outward. Immutable; every change is a new form.
 *
 * <p>What is not checked: that facets don't pass through each other.
 */
public final class Form implements Serializable {
  /** A body that encloses no more, in mm³, is flat. */
  private static final double LEAST_VOLUME = 1e-9;

  private static final long serialVersionUID = 1L;

  private final List<Vec3> corners;
  private final List<Facet> facets;
  private final List<FormEdge> edges;

  /** Found where they are asked for: the same each time, whoever finds them. */
  private transient FacetFrame[] frames;

  private Form(List<Vec3> corners, List<Facet> facets, List<FormEdge> edges) {
    this.corners = List.copyOf(corners);
    this.facets = List.copyOf(facets);
    this.edges = List.copyOf(edges);
  }

  /**
   * The form with these facets. Corners that no facet names are dropped; the facets of a closed
   * form are turned where they face inward.
   *
   * @param corners in mm
   * @throws FormException naming the facet that is wrong and what to do
   */
  public static Form of(List<Vec3> corners, List<Facet> facets) {
    FormCheck.facets(corners, facets);
    UsedCorners parts = UsedCorners.of(corners, facets);
    Form form = new Form(parts.corners(), parts.facets(), FormCheck.edges(parts.facets()));
    if (!form.isClosed()) {
      return form;
    }
    double volume = form.volume();
    FormCheck.require(
        Math.abs(volume) > LEAST_VOLUME,
        "the form encloses no volume: move a facet off the others");
    if (volume > 0) {
      return form;
    }
    List<Facet> turned = parts.facets().stream().map(f -> f.on(f.corners().reversed())).toList();
    return new Form(parts.corners(), turned, FormCheck.edges(turned));
  }

  public List<Vec3> corners() {
    return corners;
  }

  public List<Facet> facets() {
    return facets;
  }

  /** Every edge once, in the order in which facets name them first. */
  public List<FormEdge> edges() {
    return edges;
  }

  /**
   * The number of the facet with this name.
   *
   * @throws FormException when there is none
   */
  public int facet(String name) {
    for (int i = 0; i < facets.size(); i++) {
      if (facets.get(i).name().equals(name)) {
        return i;
      }
    }
    throw new FormException(
        "there is no facet \"" + name + "\"; the facets are " + FacetNames.listed(facets));
  }

  public boolean hasFacet(String name) {
    return facets.stream().anyMatch(f -> f.name().equals(name));
  }

  /** The corners of a facet in space, counter-clockwise seen from outside. */
  public List<Vec3> outline(int facet) {
    return known(facet).corners().stream().map(corners::get).toList();
  }

  /** The flat frame of a facet. */
  public FacetFrame frame(int facet) {
    FacetFrame[] known = frames == null ? new FacetFrame[facets.size()] : frames;
    if (known[facet] == null) {
      known[facet] = FacetFrame.of(outline(facet));
      frames = known;
    }
    return known[facet];
  }

  /** The facet laid flat in its own frame, corner by corner. */
  public Polygon2 flat(int facet) {
    return frame(facet).flat(outline(facet));
  }

  /** Whether every edge belongs to two facets. */
  public boolean isClosed() {
    return edges.stream().noneMatch(FormEdge::isRim);
  }

  /** Whether it is closed and no corner lies outside the plane of any facet (to 0.001 mm). */
  public boolean isConvex() {
    return FormMeasure.isConvex(this);
  }

  /**
   * The volume enclosed, in mm³, windows counted as closed; by the divergence theorem.
   *
   * @throws FormException when the form is open
   */
  public double volume() {
    return FormMeasure.volume(this);
  }

  /** The area of all facets in mm², windows and holes not taken out. */
  public double area() {
    return FormMeasure.area(this);
  }

  /** Centre of volume of a closed form, middle of the corners of an open one. */
  public Vec3 centre() {
    return FormMeasure.centre(this);
  }

  public double length(FormEdge edge) {
    return corners.get(edge.from()).distance(corners.get(edge.to()));
  }

  /** The box around the form. */
  public Bounds bounds() {
    return Bounds.around(corners);
  }

  /** Cuts a window into a facet; the outline is given in its frame, in mm. */
  public Form withWindow(String facet, Polygon2 outline, Site site) {
    return opened(facet, new Opening.Window(outline, site));
  }

  /** Punches a hole into a facet; the centre is given in the facet's frame, in mm. */
  public Form withHole(String facet, Vec2 centre, double diameter, Site site) {
    FormCheck.require(
        diameter > 0 && diameter <= Ask.LONGEST,
        () ->
            Message.of(
                "a hole's diameter is over 0 and up to %s, not %s",
                Value.given(Ask.LONGEST), Value.given(diameter)));
    return opened(facet, new Opening.Hole(centre, diameter, site));
  }

  /**
   * Cuts a window that leaves an even border of card inside the facet.
   *
   * @param border in mm, over 0 and small enough to leave a window
   */
  public Form withWindowInset(String facet, double border, Site site) {
    return withWindow(facet, Inset.of(flat(facet(facet)), border, facet), site);
  }

  /** Puts paper or film behind the windows of a facet. */
  public Form withBacking(String facet, Backing backing) {
    int index = facet(facet);
    Facet on = facets.get(index);
    FormCheck.require(
        on.hasWindow(),
        "facet \"" + facet + "\" has no window to put a backing behind: cut one first");
    List<Opening> openings =
        on.openings().stream()
            .map(o -> o instanceof Opening.Window w ? w.backed(backing) : o)
            .toList();
    return with(index, on.with(openings));
  }

  private Form opened(String facet, Opening opening) {
    int index = facet(facet);
    return with(index, facets.get(index).opened(opening));
  }

  /** Writes on a facet. */
  public Form withLabel(String facet, Lettered words) {
    int index = facet(facet);
    return with(index, facets.get(index).labelled(words));
  }

  /** Glues a decorative paper on a facet, in place of any it carries. */
  public Form withLayer(String facet, double reveal, String paper, Site site) {
    int index = facet(facet);
    return with(index, facets.get(index).layered(new FacetLayer(reveal, paper, site)));
  }

  /**
   * Says what holds two facets along the edges that they share.
   *
   * @param said as told from the first of them
   * @throws FormException where the two share no edge
   */
  public Form withTab(String facet, String other, EdgeTab said) {
    int one = facet(facet);
    int two = facet(other);
    List<Facet> all = new ArrayList<>(facets);
    for (FormEdge edge : between(one, two)) {
      if (!Lids.isLoose(all.get(one), all.get(two), edge.sideOf(one), said)) {
        all.set(one, all.get(one).tabbed(said.on(edge.sideOf(one))));
        all.set(two, all.get(two).tabbed(said.fromAcross(edge.sideOf(two))));
      }
    }
    FormCheck.require(
        !between(one, two).isEmpty(), "\"" + facet + "\" and \"" + other + "\" do not meet");
    return new Form(corners, all, edges);
  }

  /** The same with a notch in a facet. */
  Form withNotch(int facet, FacetNotch notch) {
    List<Facet> all = new ArrayList<>(facets);
    all.set(facet, all.get(facet).notched(notch));
    return new Form(corners, all, edges);
  }

  /** The edges that two facets share. */
  public List<FormEdge> between(int one, int two) {
    return edges.stream()
        .filter(e -> (e.left() == one && e.right() == two) || (e.left() == two && e.right() == one))
        .toList();
  }

  /** The same form, facets that no script made held to be made at this place. */
  public Form withSite(Site site) {
    List<Facet> placed = facets.stream().map(f -> f.site().isKnown() ? f : f.at(site)).toList();
    return new Form(corners, placed, edges);
  }

  /**
   * Calls a facet by another name.
   *
   * @throws FormException when another facet has that name
   */
  public Form withName(String facet, String name) {
    int index = facet(facet);
    FormCheck.require(
        facet.equals(name) || !hasFacet(name),
        "another facet is called \"" + name + "\" already: take another name");
    return with(index, facets.get(index).named(name));
  }

  /** Takes a facet away: an open-topped box is a box without its top. */
  public Form withoutFacet(String facet) {
    int index = facet(facet);
    FormCheck.require(facets.size() > 1, "the last facet can't be taken away");
    Lids.refuseHeld(this, index);
    List<Facet> rest = new ArrayList<>(facets);
    rest.remove(index);
    return of(corners, rest);
  }

  /** Another form made of this one, such as {@code form.changed(Chamfer.edges(3))}. */
  public Form changed(Change change) {
    return change.of(this);
  }

  /** With other openings or papers on a facet, whose corners and name stay. */
  private Form with(int index, Facet facet) {
    FormCheck.facet(corners, facet);
    List<Facet> all = new ArrayList<>(facets);
    all.set(index, facet);
    return new Form(corners, all, edges);
  }

  private Facet known(int facet) {
    FormCheck.require(
        facet >= 0 && facet < facets.size(),
        "there is no facet number " + facet + ": they run from 0 to " + (facets.size() - 1));
    return facets.get(facet);
  }
}
