package facetwright.papers.facets;

import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.geom.Box2;
import facetwright.geom.FacetFrame;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.Net;
import facetwright.net.Panel;
import facetwright.net.PanelRole;
import facetwright.words.Spoken;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.SequencedMap;

/** All facets of a design, tabs left out, numbered in the order of its net. */
public record FacetList(List<FacetLine> all) {
  public FacetList {
    all = List.copyOf(all);
  }

  /**
   * @param folded the same net made
   * @param spoken for each panel how the script speaks of it
   */
  public static FacetList of(Net net, FoldedForm folded, List<Spoken> spoken) {
    boolean isKnown = folded.closure() != Closure.NOT_SOLVED;
    List<FacetLine> lines = new ArrayList<>();
    for (int p = 0; p < net.panels().size(); p++) {
      Panel panel = net.panels().get(p);
      if (panel.role() == PanelRole.TAB && spoken.get(p).own().isEmpty()) {
        continue;
      }
      Polygon2 outline = panel.outline();
      Box2 box;
      Optional<Facing> facing = Optional.empty();
      if (isKnown) {
        int panelNumber = p;
        List<Vec3> corners =
            outline.corners().stream().map(c -> folded.whole().get(panelNumber).apply(c)).toList();
        FacetFrame frame = FacetFrame.of(corners);
        box = Box2.around(corners.stream().map(frame::flat).toList());
        facing = Optional.of(Facing.of(frame.normal()));
      } else {
        box = alongLongest(outline);
      }
      int arcs = outline.arcs().stream().mapToInt(a -> a.sides() - 1).sum();
      lines.add(
          new FacetLine(
              lines.size() + 1,
              p,
              panel.name(),
              panel.role(),
              spoken.get(p),
              outline.size() - arcs,
              box.width(),
              box.height(),
              facing));
    }
    return new FacetList(lines);
  }

  private static Box2 alongLongest(Polygon2 outline) {
    Segment2 longest = outline.side(0);
    for (int i = 1; i < outline.size(); i++) {
      longest = outline.side(i).length() > longest.length() ? outline.side(i) : longest;
    }
    Vec2 x = longest.to().minus(longest.from()).unit();
    return Box2.around(
        outline.corners().stream().map(c -> new Vec2(c.dot(x), x.cross(c))).toList());
  }

  /** The facet that is this panel; empty for a tab. */
  public Optional<FacetLine> ofPanel(int panel) {
    return all.stream().filter(f -> f.panel() == panel).findFirst();
  }

  /**
   * The words that mean several, each with the numbers of the facets that it means, of whichever
   * part: a word that is said of a part means facets of that part only. Those that mean fewest come
   * first.
   */
  public SequencedMap<String, List<Integer>> groups() {
    SequencedMap<String, List<Integer>> groups = new LinkedHashMap<>();
    for (FacetLine line : all) {
      line.spoken().words().stream()
          .skip(line.spoken().isHeld() ? line.spoken().words().size() : 1)
          .forEach(w -> groups.computeIfAbsent(w, _ -> new ArrayList<>()).add(line.number()));
    }
    SequencedMap<String, List<Integer>> several = new LinkedHashMap<>();
    groups.entrySet().stream()
        .filter(g -> g.getValue().size() > 1)
        .sorted(Comparator.comparingInt(g -> g.getValue().size()))
        .forEachOrdered(g -> several.put(g.getKey(), g.getValue()));
    return several;
  }
}
