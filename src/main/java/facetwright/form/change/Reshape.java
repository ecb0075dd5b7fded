package facetwright.form.change;

import facetwright.form.Change;
import facetwright.form.Facet;
import facetwright.form.FacetNames;
import facetwright.form.Form;
import facetwright.form.FormCheck;
import facetwright.form.FormEdge;
import facetwright.form.Sides;
import facetwright.geom.FacetFrame;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion3;
import facetwright.geom.Newell;
import facetwright.geom.RoundOff;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Ask;
import java.util.ArrayList;
import java.util.List;

/** Changes of a form that move or add corners: scale, raise, twist, dual. */
public final class Reshape {
  private Reshape() {}

  /** Larger or smaller, windows and holes alike; reveals keep their width. */
  public static Change scaled(double factor) {
    return form -> scaled(form, factor);
  }

  /** Raises a facet to a point over its centre, in mm; under 0 sinks it. Sides "name 1", …. */
  public static Change raised(String facet, double height) {
    return form -> raised(form, form.facet(facet), height);
  }

  /**
   * Turns "top" against "base" about the axis through the base's centre, counter-clockwise from
   * above; what stands between turns in proportion to its height. Facets that would warp are split
   * along their shorter diagonal into "name a" and "name b".
   */
  public static Change twisted(double degrees) {
    return form -> twisted(form, degrees);
  }

  /**
   * Swaps corners and facets: the polar dual about the centre, its sphere as far out as the edges
   * on average. Convex forms only.
   */
  public static Change dual() {
    return Reshape::dual;
  }

  private static Form scaled(Form form, double factor) {
    FormCheck.require(
        factor > 0 && factor <= 1e6, "a factor is over 0 and up to 1 000 000, not " + factor);
    List<Facet> facets =
        form.facets().stream()
            .map(f -> f.with(f.openings().stream().map(o -> o.scaled(factor)).toList()))
            .toList();
    return Form.of(form.corners().stream().map(c -> c.times(factor)).toList(), facets);
  }

  private static Form raised(Form form, int facet, double height) {
    FormCheck.require(
        height != 0 && Math.abs(height) <= Ask.LONGEST,
        () ->
            Message.of(
                "a facet is raised by up to %s, or sunk by less than 0, and not by %s",
                Value.given(Ask.LONGEST), Value.given(height)));
    Facet base = form.facets().get(facet);
    FormCheck.require(
        base.isPlain(),
        "facet \""
            + base.name()
            + "\" has windows, a layer or a label: raise it first, then add them");
    FacetFrame frame = form.frame(facet);
    if (height < 0) {
      below(form, facet, frame, -height);
    }
    List<Vec3> corners = new ArrayList<>(form.corners());
    corners.add(frame.origin().plus(frame.normal().times(height)));
    List<Facet> facets = new ArrayList<>(form.facets());
    facets.remove(facet);
    for (int s = 0; s < base.size(); s++) {
      facets.add(
          Facet.of(
              base.name() + " " + (s + 1),
              List.of(base.corner(s), base.corner(s + 1), corners.size() - 1),
              base.site()));
    }
    return Form.of(corners, FacetNames.apart(form, facets));
  }

  /** Refuses to sink a facet as far as the card below its centre. */
  private static void below(Form form, int facet, FacetFrame frame, double depth) {
    for (int f = 0; f < form.facets().size(); f++) {
      FacetFrame other = form.frame(f);
      double toward = -frame.normal().dot(other.normal());
      double off = other.normal().dot(other.origin().minus(frame.origin()));
      if (f == facet || toward < RoundOff.PART) {
        continue;
      }
      double room = off / toward;
      Vec3 at = frame.origin().minus(frame.normal().times(room)).minus(other.origin());
      boolean isMet =
          room > LengthTolerance.FINE.mm()
              && form.flat(f).contains(new Vec2(at.dot(other.x()), at.dot(other.y())));
      String name = form.facets().get(f).name();
      FormCheck.require(
          !isMet || depth < room,
          () ->
              Message.of(
                  "facet %s sunk by %s goes through %s, %s below it: sink it less than %s",
                  Value.name(form.facets().get(facet).name()),
                  Value.given(depth),
                  Value.name(name),
                  Value.length(room),
                  Value.atMost(room)));
    }
  }

  private static Form twisted(Form form, double degrees) {
    FormCheck.require(Math.abs(degrees) <= 360, "a twist lies in -360° to 360°, not " + degrees);
    FormCheck.require(
        form.hasFacet("base") && form.hasFacet("top"),
        "a twist needs a facet named \"base\" and one named \"top\": name them first");
    FacetFrame base = form.frame(form.facet("base"));
    FacetFrame top = form.frame(form.facet("top"));
    FormCheck.require(
        base.normal().dot(top.normal()) < -1 + RoundOff.PART,
        "a twist needs a top that lies level with the base");
    Vec3 axis = base.normal().times(-1);
    double full = top.origin().minus(base.origin()).dot(axis);
    List<Vec3> corners = new ArrayList<>();
    for (Vec3 c : form.corners()) {
      double part = c.minus(base.origin()).dot(axis) / full;
      corners.add(
          Motion3.about(base.origin(), base.origin().plus(axis), Math.toRadians(degrees) * part)
              .apply(c));
    }
    List<Facet> facets = new ArrayList<>();
    for (int f = 0; f < form.facets().size(); f++) {
      facets.addAll(twisted(form, f, corners));
    }
    return Form.of(corners, FacetNames.apart(form, facets));
  }

  private static List<Facet> twisted(Form form, int f, List<Vec3> corners) {
    Facet facet = form.facets().get(f);
    List<Vec3> now = facet.corners().stream().map(corners::get).toList();
    if (Newell.warp(now) <= LengthTolerance.FINE.mm()) {
      FacetFrame was = FacetFrame.of(now);
      return List.of(
          facet.openings().isEmpty() ? facet : Carry.onto(facet, was, facet.corners(), now));
    }
    FormCheck.require(
        facet.size() == 4,
        "the twist would warp facet \"" + facet.name() + "\", which has more than four corners");
    FormCheck.require(
        facet.isPlain(),
        "facet \""
            + facet.name()
            + "\" has windows, a layer or a label: twist first, then add them");
    int start = now.get(0).distance(now.get(2)) <= now.get(1).distance(now.get(3)) ? 0 : 1;
    return List.of(
        Facet.of(
            facet.name() + " a",
            List.of(facet.corner(start), facet.corner(start + 1), facet.corner(start + 2)),
            facet.site()),
        Facet.of(
            facet.name() + " b",
            List.of(facet.corner(start + 2), facet.corner(start + 3), facet.corner(start)),
            facet.site()));
  }

  private static Form dual(Form form) {
    FormCheck.require(form.isConvex(), "a dual can be made of a closed form without hollows only");
    Vec3 centre = form.centre();
    double radius =
        form.edges().stream().mapToDouble(e -> distance(form, e, centre)).average().orElseThrow();
    List<Vec3> corners = new ArrayList<>();
    for (int f = 0; f < form.facets().size(); f++) {
      FacetFrame frame = form.frame(f);
      double away = frame.origin().minus(centre).dot(frame.normal());
      corners.add(centre.plus(frame.normal().times(radius * radius / away)));
    }
    int[][] edgeOf = Sides.edgeOfSide(form);
    List<Facet> facets = new ArrayList<>();
    for (int c = 0; c < form.corners().size(); c++) {
      facets.add(Facet.of("facet " + (c + 1), Sides.facetsRound(form, edgeOf, c)));
    }
    return Form.of(corners, facets);
  }

  private static double distance(Form form, FormEdge e, Vec3 p) {
    Vec3 from = form.corners().get(e.from());
    Vec3 along = form.corners().get(e.to()).minus(from).unit();
    return p.minus(from).cross(along).length();
  }
}
