package facetwright.form.change;

import facetwright.form.Change;
import facetwright.form.Facet;
import facetwright.form.FacetNames;
import facetwright.form.Form;
import facetwright.form.FormCheck;
import facetwright.form.FormEdge;
import facetwright.form.FormException;
import facetwright.form.FormMeasure;
import facetwright.form.Limits;
import facetwright.form.Sides;
import facetwright.form.make.HalfSpaces;
import facetwright.geom.AngleTolerance;
import facetwright.geom.FacetFrame;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Most;
import facetwright.geom.Newell;
import facetwright.geom.Vec3;
import facetwright.message.Message;
import facetwright.message.Value;
import java.util.ArrayList;
import java.util.List;

/** Chamfers: edges or corners cut back. */
public final class Chamfer {
  /** Two cuts that come so near to each other on an edge meet in one corner. */
  private static final LengthTolerance MEET = new LengthTolerance(1e-7);

  private Chamfer() {}

  /**
   * Planes every edge off so that each facet loses a margin of this width along its sides; the new
   * facets are named "edge 1", …. Convex forms only.
   *
   * @param amount in mm
   */
  public static Change edges(double amount) {
    return form -> edges(form, amount);
  }

  /**
   * Cuts every corner off through the points at a distance along its edges; the new facets are
   * named "corner 1", …. At half an edge the cuts meet and the edge is gone.
   *
   * @param distance in mm, at most half the shortest edge
   */
  public static Change corners(double distance) {
    return form -> corners(form, distance);
  }

  /** Every edge planed off so that each facet loses a margin of this width along its sides. */
  private static Form edges(Form form, double amount) {
    Limits.length("the chamfer", amount);
    FormCheck.require(
        form.isConvex(), "edges can be chamfered on a closed form without hollows only");
    try {
      return planed(form, amount);
    } catch (FormException e) {
      // What a chamfer that goes does to windows is told as it is.
      Form plain =
          Form.of(
              form.corners(),
              form.facets().stream().map(f -> Facet.of(f.name(), f.corners())).toList());
      throw goes(plain, amount) ? e : new FormException(tooMuch(plain, amount));
    }
  }

  private static boolean goes(Form form, double amount) {
    try {
      planed(form, amount);
      return true;
    } catch (FormException e) {
      return false;
    }
  }

  /**
   * @throws FormException where a facet or an edge would be gone, or slivers would be left
   */
  private static Form planed(Form form, double amount) {
    Vec3 inner = form.centre();
    List<HalfSpaces.Plane> planes = new ArrayList<>();
    for (int f = 0; f < form.facets().size(); f++) {
      FacetFrame frame = form.frame(f);
      planes.add(
          new HalfSpaces.Plane(frame.normal(), frame.origin().minus(inner).dot(frame.normal())));
    }
    List<String> names = new ArrayList<>();
    for (FormEdge e : form.edges()) {
      Vec3 left = planes.get(e.left()).normal();
      Vec3 right = planes.get(e.right()).normal();
      double fold = FormMeasure.fold(form, e);
      Vec3 normal = left.plus(right).unit();
      double depth = amount * Math.sin(fold / 2);
      double distance = form.corners().get(e.from()).minus(inner).dot(normal) - depth;
      if (fold > AngleTolerance.UNSEEN.radians()) {
        FormCheck.require(distance > 0, "an edge would be gone");
        names.add("edge " + (names.size() + 1));
        planes.add(new HalfSpaces.Plane(normal, distance));
      }
    }
    HalfSpaces.Body body = HalfSpaces.under(inner, planes);
    List<Facet> facets = new ArrayList<>();
    for (int p = 0; p < planes.size(); p++) {
      List<Integer> loop = body.loops().get(p);
      FormCheck.require(loop.size() >= 3, "a facet would be gone");
      facets.add(
          p < form.facets().size()
              ? Carry.onto(form, p, loop, body.corners())
              : Facet.of(names.get(p - form.facets().size()), loop));
    }
    return Form.of(body.corners(), FacetNames.apart(form, facets));
  }

  private static Message tooMuch(Form form, double amount) {
    return Message.of(
        "a chamfer of %s takes a facet or an edge away, or leaves slivers of one: take at most %s",
        Value.given(amount), Value.atMost(Most.under(amount, mm -> goes(form, mm))));
  }

  /** Every corner cut off through the points at this distance along its edges. */
  private static Form corners(Form form, double distance) {
    Limits.length("the chamfer", distance);
    FormCheck.require(
        form.isClosed(), "corners can be chamfered on a closed form only: open it afterwards");
    double shortest = form.edges().stream().mapToDouble(form::length).min().orElseThrow();
    FormCheck.require(
        distance <= shortest / 2 + MEET.mm(),
        () ->
            Message.of(
                "a chamfer of corners can be at most half the shortest edge, %s, not %s",
                Value.atMost(shortest / 2), Value.given(distance)));
    List<Vec3> corners = new ArrayList<>();
    int[] nearFrom = new int[form.edges().size()];
    int[] nearTo = new int[form.edges().size()];
    int[][] edgeOf = Sides.edgeOfSide(form);
    for (int e = 0; e < nearFrom.length; e++) {
      FormEdge edge = form.edges().get(e);
      Vec3 from = form.corners().get(edge.from());
      Vec3 to = form.corners().get(edge.to());
      double length = from.distance(to);
      boolean meet = Math.abs(length - 2 * distance) <= 2 * MEET.mm();
      nearFrom[e] = corners.size();
      corners.add(from.toward(to, meet ? 0.5 : distance / length));
      nearTo[e] = meet ? nearFrom[e] : corners.size();
      if (!meet) {
        corners.add(to.toward(from, distance / length));
      }
    }
    List<Facet> facets = new ArrayList<>();
    for (int f = 0; f < form.facets().size(); f++) {
      List<Integer> loop = new ArrayList<>();
      for (int s = 0; s < form.facets().get(f).size(); s++) {
        int e = edgeOf[f][s];
        boolean forward = form.edges().get(e).left() == f && form.edges().get(e).leftSide() == s;
        loop.add(forward ? nearFrom[e] : nearTo[e]);
        if (nearFrom[e] != nearTo[e]) {
          loop.add(forward ? nearTo[e] : nearFrom[e]);
        }
      }
      facets.add(Carry.onto(form, f, loop, corners));
    }
    for (int c = 0; c < form.corners().size(); c++) {
      List<Integer> loop = new ArrayList<>();
      for (int e : Sides.edgesRound(form, edgeOf, c)) {
        loop.add(form.edges().get(e).from() == c ? nearFrom[e] : nearTo[e]);
      }
      String name = "corner " + (c + 1);
      double warp = Newell.warp(loop.stream().map(corners::get).toList());
      FormCheck.require(
          warp <= FormCheck.FLAT.mm(),
          "the cut at "
              + name
              + " would not be flat: more than three edges meet there at different slants; cut it"
              + " by a plane instead");
      facets.add(Facet.of(name, loop));
    }
    return Form.of(corners, FacetNames.apart(form, facets));
  }
}
