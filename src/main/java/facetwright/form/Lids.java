package facetwright.form;

import facetwright.form.EdgeTab.Bearer;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.RoundOff;
import facetwright.geom.Segment2;
import facetwright.net.Join.Hold;
import facetwright.net.panel.Notch;
import facetwright.words.Site;
import java.util.Comparator;
import java.util.List;

/** Facets that open and shut: lids on their hinge, and the flaps that keep them shut. */
public final class Lids {
  /** Of the room that dust flaps have, they take so much where nothing is said. */
  private static final double OF_ROOM = 0.8;

  private Lids() {}

  /**
   * A flap that slips in behind a facet.
   *
   * @param depth how far it reaches in, in mm
   * @param relief how far it is set back at each end of its side, in mm
   * @param bevel how far its sides lean in, in degrees from square
   * @param radius of the arcs at its far corners, in mm; NaN for the usual
   * @param dust how deep the dust flaps are that fold in under the lid first, in mm; 0 for none,
   *     NaN for as deep as the tuck where there is room
   */
  public record Tuck(double depth, double relief, double bevel, double radius, double dust) {}

  /**
   * A facet that hangs on one other alone, by a fold that stays a hinge; its other sides are cut
   * and stay loose.
   *
   * @throws FormException when the two do not share just one side
   */
  public static Form hinged(Form form, String lid, String on, Site site) {
    int facet = form.facet(lid);
    FormEdge hinge = shared(form, facet, form.facet(on));
    Form changed = form;
    for (FormEdge edge : around(form, facet)) {
      if (!edge.equals(hinge)) {
        changed = changed.withTab(lid, across(form, edge, facet), EdgeTab.loose(site));
      }
    }
    return changed.withTab(lid, on, EdgeTab.hinge(site));
  }

  /**
   * A lid that is tucked in behind a facet, with its dust flaps. It hangs on the facet farthest
   * from that one, unless it has a hinge already.
   *
   * @throws FormException when the two do not share just one side, or share the hinge, or when it
   *     is tucked in there already
   */
  public static Form tucked(Form form, String lid, String into, Tuck tuck, Site site) {
    int facet = form.facet(lid);
    FormEdge front = shared(form, facet, form.facet(into));
    boolean isTucked =
        form.facets().get(facet).tabs().stream()
            .anyMatch(t -> t.isTuck() && t.side() == front.sideOf(facet));
    FormCheck.require(
        !isTucked,
        "\""
            + lid
            + "\" is tucked in behind \""
            + into
            + "\" already: say it once, with the measures that are meant");
    Form changed = form;
    if (form.facets().get(facet).tabs().stream().noneMatch(EdgeTab::isHinge)) {
      changed = hinged(form, lid, across(form, opposite(form, facet, front), facet), site);
    } else {
      boolean isHinge =
          form.facets().get(facet).tabs().stream()
              .anyMatch(t -> t.isHinge() && t.side() == front.sideOf(facet));
      FormCheck.require(
          !isHinge,
          "\""
              + lid
              + "\" is hinged to \""
              + into
              + "\" and can't be tucked in behind it: tuck it"
              + " in behind another facet");
    }
    double room = OF_ROOM * Planar.mostInset(form.flat(facet));
    double dust = Double.isNaN(tuck.dust) ? Math.min(tuck.depth, room) : tuck.dust;
    for (FormEdge edge : around(form, facet)) {
      EdgeTab said =
          changed.facets().get(facet).tabs().stream()
              .filter(t -> t.side() == edge.sideOf(facet))
              .findFirst()
              .orElseThrow();
      if (edge.equals(front)) {
        changed = changed.withTab(lid, into, flap(tuck, site));
      } else if (!said.isHinge() && dust > LengthTolerance.FINE.mm() && !said.isTuck()) {
        EdgeTab flap = new EdgeTab(-1, Bearer.OTHER, dust, 0, Hold.FLAP, FlapCut.PLAIN, site);
        changed = changed.withTab(lid, across(form, edge, facet), flap);
      }
    }
    return changed;
  }

  /**
   * A notch in a side of a facet that is free: at an opening of the form, or where a lid is cut
   * loose.
   *
   * @param edge which of several: the facet that it meets, or "top" or "bottom"; empty where there
   *     is one only
   * @throws FormException where there is none, or several and none of them is named
   */
  public static Form notched(Form form, String facet, String edge, Notch notch, Site site) {
    int at = form.facet(facet);
    List<FormEdge> free = free(form, at);
    FormCheck.require(
        !free.isEmpty(),
        "\""
            + facet
            + "\" has no free edge to cut a notch into: open a facet that it meets, or make it a"
            + " lid, first");
    FormEdge chosen = free.getFirst();
    if (!edge.isEmpty()) {
      int other = form.hasFacet(edge) ? form.facet(edge) : FormEdge.NONE;
      chosen =
          free.stream()
              .filter(e -> other != FormEdge.NONE && (e.left() == other || e.right() == other))
              .findFirst()
              .orElseGet(() -> outermost(form, free, edge));
      FormCheck.require(
          chosen != null,
          "\""
              + facet
              + "\" has no free edge \""
              + edge
              + "\": name the lid that it meets there, or \"top\" or \"bottom\"");
    }
    FormCheck.require(
        !edge.isEmpty() || free.size() == 1,
        "\""
            + facet
            + "\" has "
            + free.size()
            + " free edges: say which, { edge: \"top\" } or \"bottom\", or the lid that it meets"
            + " there");
    return form.withNotch(at, new FacetNotch(chosen.sideOf(at), notch, site));
  }

  /**
   * Whether a side is as is said already, since it is to open and to bear no tab. Refuses glue
   * along a side that is to open, whichever of the two is said first.
   */
  static boolean isLoose(Facet facet, Facet other, int side, EdgeTab said) {
    for (EdgeTab before : facet.tabs()) {
      if (before.side() != side || opens(before) == opens(said)) {
        continue;
      }
      if (opens(before) && said.hold().isGlued() && said.bearer() == Bearer.NONE) {
        return true;
      }
      boolean isBoth = isGlue(before) || isGlue(said);
      FormCheck.require(
          !isBoth,
          "\""
              + facet.name()
              + "\" and \""
              + other.name()
              + (opens(before)
                  ? "\" are to come apart there, as a lid opens: glue would hold it shut"
                  : "\" have a tab to be glued already, which would hold the lid shut")
              + "; leave the tab out, or what makes a lid of it");
    }
    return false;
  }

  private static boolean opens(EdgeTab said) {
    return said.isLoose() || said.isHinge();
  }

  private static boolean isGlue(EdgeTab said) {
    return said.hold().isGlued() && said.bearer() != Bearer.NONE;
  }

  /** Refuses to take away a facet to which a flap or a hinge was said. */
  static void refuseHeld(Form form, int facet) {
    for (FormEdge edge : around(form, facet)) {
      for (EdgeTab said : form.facets().get(facet).tabs()) {
        boolean isHeld =
            said.side() == edge.sideOf(facet)
                && (said.isHinge() || (said.isCut() && said.bearer() != Bearer.NONE));
        FormCheck.require(
            !isHeld,
            "\""
                + form.facets().get(facet).name()
                + "\" can't be left out: a "
                + (said.isHinge() ? "hinge" : said.hold().word())
                + " between it and \""
                + across(form, edge, facet)
                + "\" was said before; leave one of the two out, or open it first");
      }
    }
  }

  /** Its edges along which nothing is joined and no flap hangs on it. */
  private static List<FormEdge> free(Form form, int facet) {
    return form.edges().stream()
        .filter(e -> e.left() == facet || e.right() == facet)
        .filter(
            e ->
                e.isRim()
                    || form.facets().get(facet).tabs().stream()
                        .anyMatch(
                            t ->
                                t.side() == e.sideOf(facet)
                                    && t.isLoose()
                                    && t.bearer() != Bearer.THIS))
        .toList();
  }

  private static FormEdge outermost(Form form, List<FormEdge> free, String word) {
    boolean isTop = word.equals("top");
    if (!isTop && !word.equals("bottom")) {
      return null;
    }
    Comparator<FormEdge> byHeight =
        Comparator.comparingDouble(
            e -> form.corners().get(e.from()).z() + form.corners().get(e.to()).z());
    return free.stream().max(isTop ? byHeight : byHeight.reversed()).orElseThrow();
  }

  private static EdgeTab flap(Tuck tuck, Site site) {
    FlapCut cut = FlapCut.tuck(tuck.relief, tuck.radius);
    return new EdgeTab(-1, Bearer.THIS, tuck.depth, 90 - tuck.bevel, Hold.TUCK, cut, site);
  }

  private static FormEdge shared(Form form, int one, int two) {
    List<FormEdge> between = form.between(one, two);
    String both =
        "\"" + form.facets().get(one).name() + "\" and \"" + form.facets().get(two).name() + "\"";
    FormCheck.require(!between.isEmpty(), both + " do not meet");
    FormCheck.require(
        between.size() == 1, both + " meet along more than one side: a lid needs a straight hinge");
    return between.getFirst();
  }

  private static List<FormEdge> around(Form form, int facet) {
    return form.edges().stream()
        .filter(e -> !e.isRim() && (e.left() == facet || e.right() == facet))
        .toList();
  }

  private static String across(Form form, FormEdge edge, int facet) {
    return form.facets().get(edge.left() == facet ? edge.right() : edge.left()).name();
  }

  /** The side that runs most nearly against the front; of those alike the farthest. */
  private static FormEdge opposite(Form form, int facet, FormEdge front) {
    Polygon2 lid = form.flat(facet);
    Segment2 shut = lid.side(front.sideOf(facet));
    FormEdge best = null;
    double least = Double.POSITIVE_INFINITY;
    for (FormEdge edge : around(form, facet)) {
      Segment2 side = lid.side(edge.sideOf(facet));
      double along = side.direction().dot(shut.direction());
      boolean isNearer =
          best != null
              && Math.abs(along - least) <= RoundOff.PART
              && side.middle().distance(shut.middle())
                  <= lid.side(best.sideOf(facet)).middle().distance(shut.middle());
      if (!edge.equals(front) && along <= least + RoundOff.PART && !isNearer) {
        best = edge;
        least = along;
      }
    }
    FormCheck.require(
        best != null,
        "\"" + form.facets().get(facet).name() + "\" meets no other facet that it could hang on");
    return best;
  }
}
