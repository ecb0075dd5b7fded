package facetwright.form;

import facetwright.geom.FacetFrame;
import facetwright.net.Opening;
import facetwright.net.fitting.Lettered;
import facetwright.words.Site;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;

/**
 * One flat face of a form.
 *
 * @param name what the maker calls it, such as "base" or "side 3"; unlike any other in its form
 * @param corners indices into the form's corners, counter-clockwise seen from outside
 * @param openings windows and holes, in the facet's own frame (see {@link FacetFrame})
 * @param layers a decorative paper, or none
 * @param tabs what was said of tabs along its sides, at most once a side
 * @param notches cut into its sides
 * @param labels words on it
 * @param site where the script made it
 */
public record Facet(
    String name,
    List<Integer> corners,
    List<Opening> openings,
    List<FacetLayer> layers,
    List<EdgeTab> tabs,
    List<FacetNotch> notches,
    List<Lettered> labels,
    Site site)
    implements Serializable {

  public Facet {
    corners = List.copyOf(corners);
    openings = List.copyOf(openings);
    layers = List.copyOf(layers);
    tabs = List.copyOf(tabs);
    notches = List.copyOf(notches);
    labels = List.copyOf(labels);
    if (layers.size() > 1) {
      throw new FormException("facet \"" + name + "\" can carry one layer only");
    }
  }

  /** A plain facet, made by no script. */
  public static Facet of(String name, List<Integer> corners) {
    return new Facet(
        name, corners, List.of(), List.of(), List.of(), List.of(), List.of(), Site.NONE);
  }

  /** A plain facet made at a place in a script. */
  public static Facet of(String name, List<Integer> corners, Site site) {
    return new Facet(name, corners, List.of(), List.of(), List.of(), List.of(), List.of(), site);
  }

  public int size() {
    return corners.size();
  }

  /** Corner by number, counted round and round. */
  public int corner(int index) {
    return corners.get(Math.floorMod(index, corners.size()));
  }

  /** Whether nothing is cut into it and nothing goes on it. */
  public boolean isPlain() {
    return openings.isEmpty() && layers.isEmpty() && labels.isEmpty();
  }

  public boolean hasWindow() {
    return openings.stream().anyMatch(Opening.Window.class::isInstance);
  }

  Facet named(String newName) {
    return new Facet(newName, corners, openings, layers, tabs, notches, labels, site);
  }

  Facet at(Site newSite) {
    return new Facet(name, corners, openings, layers, tabs, notches, labels, newSite);
  }

  /**
   * The same facet on other corners.
   *
   * @throws FormException where tabs were said of sides that it may not have any more
   */
  public Facet on(List<Integer> newCorners) {
    FormCheck.require(
        tabs.isEmpty() && notches.isEmpty(),
        "the change would move sides of facet \""
            + name
            + "\" of which a "
            + (tabs.isEmpty() ? "notch" : "tab")
            + " was said: change the form first, then say its tabs and notches");
    return numbered(newCorners);
  }

  /** The same facet where its corners are counted otherwise. */
  Facet numbered(List<Integer> newCorners) {
    return new Facet(name, newCorners, openings, layers, tabs, notches, labels, site);
  }

  /** With this said of a side in place of what was said of it before. */
  Facet tabbed(EdgeTab tab) {
    List<EdgeTab> all = new ArrayList<>(tabs);
    all.removeIf(t -> t.side() == tab.side());
    all.add(tab);
    return new Facet(name, corners, openings, layers, all, notches, labels, site);
  }

  Facet notched(FacetNotch notch) {
    List<FacetNotch> all = new ArrayList<>(notches);
    all.add(notch);
    return new Facet(name, corners, openings, layers, tabs, all, labels, site);
  }

  public Facet with(List<Opening> newOpenings) {
    return new Facet(name, corners, newOpenings, layers, tabs, notches, labels, site);
  }

  Facet opened(Opening opening) {
    List<Opening> all = new ArrayList<>(openings);
    all.add(opening);
    return with(all);
  }

  Facet layered(FacetLayer layer) {
    return new Facet(name, corners, openings, List.of(layer), tabs, notches, labels, site);
  }

  Facet labelled(Lettered words) {
    List<Lettered> all = new ArrayList<>(labels);
    all.add(words);
    return new Facet(name, corners, openings, layers, tabs, notches, all, site);
  }
}
