package facetwright.form;

import facetwright.geom.Apart;
import facetwright.geom.FacetFrame;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Newell;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec3;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Clearance;
import facetwright.net.Opening;
import facetwright.net.OpeningMends;
import facetwright.net.Shapes;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/** What every {@link Form} has passed, checked once. */
public final class FormCheck {
  /** How far a facet may leave its plane, in mm. */
  public static final LengthTolerance FLAT = LengthTolerance.UNSEEN;

  private static final int MOST_FACETS = 5000;

  private FormCheck() {}

  static void facets(List<Vec3> corners, List<Facet> facets) {
    require(!facets.isEmpty(), "a form needs at least one facet");
    require(
        facets.size() <= MOST_FACETS,
        "a form may have at most " + MOST_FACETS + " facets, not " + facets.size());
    Set<String> names = new HashSet<>();
    for (Facet facet : facets) {
      require(!facet.name().isBlank(), "every facet needs a name");
      require(
          names.add(facet.name()),
          "two facets are named \"" + facet.name() + "\": give each its own name");
      facet(corners, facet);
    }
  }

  /** What holds for each facet by itself. */
  static void facet(List<Vec3> corners, Facet facet) {
    String who = "facet \"" + facet.name() + "\" ";
    for (int c : facet.corners()) {
      require(
          c >= 0 && c < corners.size(),
          who + "names corner " + c + ", but corners run from 0 to " + (corners.size() - 1));
    }
    require(facet.size() >= 3, who + "needs at least three corners");
    require(
        new HashSet<>(facet.corners()).size() == facet.size(),
        who + "names a corner twice: list each once");
    List<Vec3> outline = facet.corners().stream().map(corners::get).toList();
    for (int i = 0; i < outline.size(); i++) {
      require(
          !LengthTolerance.FINE.same(outline.get(i), outline.get((i + 1) % outline.size())),
          who + "has two corners at one place: leave one out");
    }
    require(
        Newell.normal(outline).length() > LengthTolerance.FINE.mm(),
        who + "has no area: move its corners off the line");
    double warp = Newell.warp(outline);
    require(
        warp <= FLAT.mm(),
        () ->
            Message.of(
                "%sis not flat, its corners leave its plane by %s: split it into triangles or move"
                    + " a corner",
                who, Value.length(warp)));
    FacetFrame frame = FacetFrame.of(outline);
    Polygon2 flat = frame.flat(outline);
    require(flat.isSimple(), who + "crosses itself: list its corners in order round it");
    openings(facet, flat);
  }

  private static void openings(Facet facet, Polygon2 flat) {
    if (facet.openings().isEmpty()) {
      return;
    }
    PreparedGeometry card = PreparedGeometryFactory.prepare(Planar.polygon(flat));
    Apart apart = new Apart();
    for (Opening opening : facet.openings()) {
      Polygon cut = Planar.polygon(opening.outline());
      String which = "a " + opening.word() + " in facet \"" + facet.name() + "\" ";
      require(cut.isValid(), which + "crosses itself: list its corners in order round it");
      if (!card.containsProperly(cut)) {
        throw wrong(Shapes.overEdge(which.strip(), opening, flat), facet, flat, opening);
      }
      if (!apart.takes(cut)) {
        throw wrong(
            Message.text(which + "runs into another: make it smaller or move it"),
            facet,
            flat,
            opening);
      }
    }
  }

  private static FormException wrong(Message message, Facet facet, Polygon2 flat, Opening opening) {
    return new FormException(
        message,
        OpeningMends.of(List.of(Clearance.scoredRound(flat, facet.openings())), opening.site()));
  }

  /** The edges of facets that hang together. */
  static List<FormEdge> edges(List<Facet> facets) {
    List<FormEdge> edges = looseEdges(facets);
    hangTogether(facets, edges);
    return edges;
  }

  /** The edges, in the order in which facets name them first. */
  public static List<FormEdge> looseEdges(List<Facet> facets) {
    Map<Long, Integer> open = new HashMap<>();
    Map<Long, Integer> taken = new HashMap<>();
    List<FormEdge> edges = new ArrayList<>();
    for (int f = 0; f < facets.size(); f++) {
      Facet facet = facets.get(f);
      for (int s = 0; s < facet.size(); s++) {
        int from = facet.corner(s);
        int to = facet.corner(s + 1);
        Integer same = taken.put(key(from, to), f);
        if (same != null) {
          throw new FormException(
              "facets \""
                  + facets.get(same).name()
                  + "\" and \""
                  + facet.name()
                  + "\" run their shared edge the same way: list the corners of both"
                  + " counter-clockwise seen from outside, and let at most two facets share an"
                  + " edge");
        }
        Integer mate = open.get(key(to, from));
        if (mate == null) {
          open.put(key(from, to), edges.size());
          edges.add(new FormEdge(from, to, f, s, FormEdge.NONE, FormEdge.NONE));
        } else {
          FormEdge e = edges.get(mate);
          edges.set(mate, new FormEdge(e.from(), e.to(), e.left(), e.leftSide(), f, s));
        }
      }
    }
    return edges;
  }

  private static void hangTogether(List<Facet> facets, List<FormEdge> edges) {
    int[] group = new int[facets.size()];
    Arrays.setAll(group, i -> i);
    for (FormEdge e : edges) {
      if (!e.isRim()) {
        group[root(group, e.left())] = root(group, e.right());
      }
    }
    for (int f = 1; f < facets.size(); f++) {
      require(
          root(group, f) == root(group, 0),
          "facet \""
              + facets.get(f).name()
              + "\" shares no chain of edges with \""
              + facets.getFirst().name()
              + "\": join them, or make two forms");
    }
  }

  private static int root(int[] group, int i) {
    int at = i;
    while (group[at] != at) {
      group[at] = group[group[at]];
      at = group[at];
    }
    return at;
  }

  private static long key(int from, int to) {
    return ((long) from << 32) | to;
  }

  /** The same in words with values. */
  public static void require(boolean holds, Supplier<Message> told) {
    if (!holds) {
      throw new FormException(told.get());
    }
  }

  public static void require(boolean holds, String message) {
    if (!holds) {
      throw new FormException(message);
    }
  }
}
