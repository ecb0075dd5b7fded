package facetwright.fold.pose;

import facetwright.geom.Motion3;
import facetwright.geom.Vec3;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.net.Score;
import facetwright.net.Stance;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The vertices of the made form: corners of facets and gussets, welded where scores and seams bring
 * them together. Tabs are left out. It does not weld corners that only happen to meet in space.
 */
public final class Vertices {
  private final Net net;
  private final int[] first;
  private final int[] root;
  private final boolean[] scored;
  private final boolean[] met;

  private Vertices(Net net) {
    this.net = net;
    int panels = net.panels().size();
    first = new int[panels + 1];
    for (int p = 0; p < panels; p++) {
      first[p + 1] = first[p] + net.panels().get(p).outline().size();
    }
    root = IntStream.range(0, first[panels]).toArray();
    scored = new boolean[first[panels]];
    met = new boolean[first[panels]];
  }

  /**
   * One vertex.
   *
   * @param corners the corners that meet in it
   * @param place their middle in space, in mm
   * @param angleSum of the panels about it, in degrees
   * @param closed whether panels stand all round it; if not it lies on a rim
   * @param interior whether it lies inside the flat net, scored all round: there the angle sum is
   *     360°
   */
  public record Vertex(
      List<Stance.Corner> corners, Vec3 place, double angleSum, boolean closed, boolean interior)
      implements Serializable {
    public Vertex {
      corners = List.copyOf(corners);
    }
  }

  /** All vertices, in the order of their first corners. */
  public static List<Vertex> of(Net net, FoldedForm form) {
    return of(net, form.poses());
  }

  /** The same, its panels standing where these poses put them. */
  public static List<Vertex> of(Net net, List<Motion3> poses) {
    Vertices welding = new Vertices(net);
    for (Score s : net.scores()) {
      welding.weld(s.a(), s.b(), welding.scored);
    }
    for (Join join : net.joins()) {
      if (join instanceof Join.Seam(EdgeRef a, EdgeRef b, _, _, _)) {
        welding.weld(a, b, welding.met);
      }
    }
    return welding.gather(poses);
  }

  private void weld(EdgeRef a, EdgeRef b, boolean[] mark) {
    if (isTab(a.panel()) || isTab(b.panel())) {
      return;
    }
    mark[number(a.panel(), a.edge())] = true;
    mark[number(b.panel(), b.edge())] = true;
    union(number(a.panel(), a.edge()), number(b.panel(), b.edge() + 1));
    union(number(a.panel(), a.edge() + 1), number(b.panel(), b.edge()));
  }

  private List<Vertex> gather(List<Motion3> poses) {
    Map<Integer, List<Stance.Corner>> classes = new LinkedHashMap<>();
    for (int p = 0; p < net.panels().size(); p++) {
      for (int c = 0; !isTab(p) && c < net.panels().get(p).outline().size(); c++) {
        classes
            .computeIfAbsent(find(number(p, c)), _ -> new ArrayList<>())
            .add(new Stance.Corner(p, c));
      }
    }
    return classes.values().stream().map(c -> vertex(poses, c)).toList();
  }

  private Vertex vertex(List<Motion3> poses, List<Stance.Corner> corners) {
    Vec3 sum = Vec3.ZERO;
    double angles = 0;
    boolean closed = true;
    boolean interior = true;
    for (Stance.Corner c : corners) {
      var outline = net.panels().get(c.panel()).outline();
      sum = sum.plus(poses.get(c.panel()).apply(outline.corner(c.corner())));
      angles += Math.toDegrees(outline.angle(c.corner()));
      for (int side : new int[] {c.corner(), c.corner() - 1}) {
        int n = number(c.panel(), side);
        interior &= scored[n];
        closed &= scored[n] || met[n];
      }
    }
    return new Vertex(corners, sum.times(1.0 / corners.size()), angles, closed, interior);
  }

  private boolean isTab(int panel) {
    return net.panels().get(panel).role() == PanelRole.TAB;
  }

  private int number(int panel, int corner) {
    return first[panel] + Math.floorMod(corner, first[panel + 1] - first[panel]);
  }

  private int find(int corner) {
    int r = corner;
    while (root[r] != r) {
      r = root[r];
    }
    return r;
  }

  private void union(int a, int b) {
    int low = Math.min(find(a), find(b));
    root[Math.max(find(a), find(b))] = low;
  }
}
