package facetwright.form.change;

import facetwright.form.Change;
import facetwright.form.Facet;
import facetwright.form.FacetNames;
import facetwright.form.Form;
import facetwright.form.FormCheck;
import facetwright.form.FormEdge;
import facetwright.form.Sides;
import facetwright.geom.Newell;
import facetwright.geom.Vec3;
import facetwright.message.Message;
import facetwright.message.Value;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Cuts a form by a plane and closes the cut with a facet. */
public final class PlaneCut {
  /**
   * Corners nearer to the plane lie on it: a part of the form's size, or mm where it is under 1 mm.
   */
  private static final double ON_PLANE = 1e-7;

  private final Form form;
  private final Vec3 up;
  private final double[] height;
  private final List<Vec3> corners;
  private final Map<Integer, Integer> cutOfEdge = new HashMap<>();

  private PlaneCut(Form form, Vec3 on, Vec3 normal) {
    this.form = form;
    up = normal;
    corners = new ArrayList<>(form.corners());
    height = new double[corners.size()];
    double slack = ON_PLANE * Math.max(1, Newell.size(corners));
    for (int c = 0; c < height.length; c++) {
      double h = corners.get(c).minus(on).dot(normal);
      height[c] = Math.abs(h) <= slack ? 0 : h;
    }
  }

  /**
   * Cuts along a plane and takes away what lies on the side its normal points to; the facet that
   * closes the cut is named "cut".
   *
   * @param on a point of the plane, in mm
   */
  public static Change under(Vec3 on, Vec3 normal) {
    return form -> under(form, on, normal);
  }

  private static Form under(Form form, Vec3 on, Vec3 normal) {
    FormCheck.require(normal.length() > 0, "the plane needs a direction that is not zero");
    return new PlaneCut(form, on, normal.unit()).cut();
  }

  /** By how much the plane misses the form, and between where it cuts it. */
  private Message missed() {
    double low = Arrays.stream(height).min().orElseThrow();
    double high = Arrays.stream(height).max().orElseThrow();
    boolean isPast = high <= 0;
    return Message.of(
        "the plane misses the form: move it %s away points, by more than %s and less than %s",
        isPast ? "against the way that" : "the way that",
        Value.atLeast(isPast ? -high : low),
        Value.atMost(isPast ? -low : high));
  }

  private Form cut() {
    boolean above = false;
    boolean below = false;
    for (double h : height) {
      above |= h > 0;
      below |= h < 0;
    }
    FormCheck.require(above && below, this::missed);
    int[][] edgeOf = Sides.edgeOfSide(form);
    List<Facet> facets = new ArrayList<>();
    for (int f = 0; f < form.facets().size(); f++) {
      List<Integer> loop = kept(f, edgeOf);
      if (loop.size() >= 3) {
        facets.add(
            loop.equals(form.facets().get(f).corners())
                ? form.facets().get(f)
                : Carry.onto(form, f, loop, corners));
      }
    }
    facets.addAll(caps(facets));
    return Form.of(corners, FacetNames.apart(form, facets));
  }

  private List<Integer> kept(int f, int[][] edgeOf) {
    Facet facet = form.facets().get(f);
    List<Integer> loop = new ArrayList<>();
    boolean below = false;
    int crossings = 0;
    for (int s = 0; s < facet.size(); s++) {
      int from = facet.corner(s);
      int to = facet.corner(s + 1);
      below |= height[from] < 0;
      if (height[from] <= 0) {
        loop.add(from);
      }
      if (height[from] * height[to] < 0) {
        crossings++;
        loop.add(crossing(edgeOf[f][s]));
      }
      if (height[from] == 0 && height[facet.corner(s - 1)] * height[to] < 0) {
        crossings++;
      }
    }
    FormCheck.require(
        crossings <= 2,
        "the plane crosses the hollow facet \""
            + facet.name()
            + "\" more than once: split the facet, or cut elsewhere");
    return below ? loop : List.of();
  }

  private int crossing(int edge) {
    return cutOfEdge.computeIfAbsent(
        edge,
        e -> {
          int from = form.edges().get(e).from();
          int to = form.edges().get(e).to();
          double part = height[from] / (height[from] - height[to]);
          corners.add(corners.get(from).toward(corners.get(to), part));
          return corners.size() - 1;
        });
  }

  private boolean isOnPlane(int corner) {
    return corner >= height.length || height[corner] == 0;
  }

  /** Closes the loops of sides in the plane that belong to one facet only. */
  private List<Facet> caps(List<Facet> facets) {
    Map<Integer, Integer> next = new HashMap<>();
    List<Integer> starts = new ArrayList<>();
    for (FormEdge e : FormCheck.looseEdges(facets)) {
      if (e.isRim() && isOnPlane(e.from()) && isOnPlane(e.to())) {
        FormCheck.require(
            next.put(e.to(), e.from()) == null,
            "the plane touches the form where two parts of the cut meet: move it a little");
        starts.add(e.to());
      }
    }
    List<Facet> caps = new ArrayList<>();
    for (int start : starts) {
      List<Integer> loop = new ArrayList<>();
      Integer at = start;
      while (at != null && next.containsKey(at)) {
        loop.add(at);
        at = next.remove(at);
      }
      if (loop.size() >= 3 && at != null && at == start) {
        FormCheck.require(
            Newell.normal(loop.stream().map(corners::get).toList()).dot(up) > 0,
            "the cut would be a ring round a hollow, and a facet can't be a ring: cut elsewhere");
        caps.add(Facet.of("cut", loop));
      }
    }
    return caps;
  }
}
