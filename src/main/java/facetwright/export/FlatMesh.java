package facetwright.export;

import facetwright.fold.pose.Senses;
import facetwright.geom.Vec2;
import facetwright.net.EdgeRef;
import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.Panel;
import facetwright.net.Score;
import facetwright.net.Sense;
import facetwright.net.Slit;
import facetwright.pace.Pace;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A net as vertices, edges and faces. Corners are one vertex only where a score joins their panels,
 * so that the same vertices serve flat and folded; the two sides of a slit stay apart. Openings are
 * loops of cut edges whose vertices belong to their panel.
 */
final class FlatMesh {
  private final List<Vertex> vertices = new ArrayList<>();
  private final Map<Long, Edge> edges = new LinkedHashMap<>();
  private final List<int[]> faces = new ArrayList<>();

  /**
   * @param at place in the laid net
   * @param panel a panel that carries it
   */
  record Vertex(Vec2 at, int panel) {}

  /**
   * @param assignment "B", "M", "V", "F" or "C" as in the FOLD specification
   * @param angle fold angle in degrees, positive for valley; null where it is not known
   */
  record Edge(int from, int to, String assignment, Double angle) {}

  /**
   * @param folds for each score how far it is folded in the form, in degrees, mountain positive;
   *     empty where there is none, so that the net's own angles count
   */
  FlatMesh(Net net, List<Double> folds) {
    int[] first = new int[net.panels().size() + 1];
    for (int p = 0; p < net.panels().size(); p++) {
      first[p + 1] = first[p] + net.panels().get(p).outline().size();
    }
    int[] root = weld(net, first);
    int[] number = new int[root.length];
    for (int p = 0; p < net.panels().size(); p++) {
      Panel panel = net.panels().get(p);
      int[] face = new int[panel.outline().size()];
      for (int c = 0; c < face.length; c++) {
        int corner = first[p] + c;
        if (root[corner] == corner) {
          number[corner] = vertices.size();
          vertices.add(new Vertex(panel.outline().corner(c), p));
        }
        face[c] = number[root[corner]];
      }
      faces.add(face);
    }
    sides(net, folds);
    for (int p = 0; p < net.panels().size(); p++) {
      for (Opening opening : net.panels().get(p).openings()) {
        loop(opening, p);
      }
    }
  }

  List<Vertex> vertices() {
    return vertices;
  }

  List<Edge> edges() {
    return List.copyOf(edges.values());
  }

  /** Vertex numbers round each panel, counter-clockwise seen on the outside. */
  List<int[]> faces() {
    return faces;
  }

  /** The number of the edge along a side. */
  int edge(EdgeRef side) {
    return new ArrayList<>(edges.keySet()).indexOf(key(start(side), end(side)));
  }

  /** For each corner, the lowest corner that is the same vertex. */
  private static int[] weld(Net net, int[] first) {
    int[] parent = new int[first[net.panels().size()]];
    Arrays.setAll(parent, i -> i);
    for (Score s : net.scores()) {
      int sizeA = net.panels().get(s.a().panel()).outline().size();
      int sizeB = net.panels().get(s.b().panel()).outline().size();
      int a = first[s.a().panel()];
      int b = first[s.b().panel()];
      union(parent, a + s.a().edge(), b + (s.b().edge() + 1) % sizeB);
      union(parent, a + (s.a().edge() + 1) % sizeA, b + s.b().edge());
    }
    int[] root = new int[parent.length];
    Arrays.setAll(root, i -> root(parent, i));
    return root;
  }

  private static void union(int[] parent, int a, int b) {
    int ra = root(parent, a);
    int rb = root(parent, b);
    parent[Math.max(ra, rb)] = Math.min(ra, rb);
  }

  private static int root(int[] parent, int i) {
    int r = i;
    while (parent[r] != r) {
      r = parent[r];
    }
    return r;
  }

  private void sides(Net net, List<Double> folds) {
    Map<EdgeRef, Crease> scored = new LinkedHashMap<>();
    for (int s = 0; s < net.scores().size(); s++) {
      Score score = net.scores().get(s);
      Crease crease = folds.isEmpty() ? crease(score) : crease(folds.get(s), score.sense());
      scored.put(score.a(), crease);
      scored.put(score.b(), crease);
    }
    List<EdgeRef> slit = new ArrayList<>();
    for (Slit s : net.slits()) {
      slit.add(s.a());
      slit.add(s.b());
    }
    for (int p = 0; p < faces.size(); p++) {
      for (int e = 0; e < faces.get(p).length; e++) {
        Pace.step();
        EdgeRef side = new EdgeRef(p, e);
        Edge edge = edge(start(side), end(side), scored.get(side), slit.contains(side));
        // Two free sides between the same two vertices are one cut.
        edges.merge(
            key(edge.from, edge.to),
            edge,
            (old, same) -> scored.containsKey(side) ? old : new Edge(old.from, old.to, "C", 0.0));
      }
    }
  }

  /**
   * @param assignment "M", "V" or "F"
   * @param angle in degrees, positive for valley; null where it is not known
   */
  private record Crease(String assignment, Double angle) {
    static final Crease FLAT = new Crease("F", 0.0);

    static Crease of(double degrees, Sense way) {
      return new Crease(letter(way), way == Sense.VALLEY ? degrees : -degrees);
    }

    static String letter(Sense way) {
      return way == Sense.VALLEY ? "V" : "M";
    }
  }

  private static Edge edge(int from, int to, Crease crease, boolean slit) {
    return crease == null
        ? new Edge(from, to, slit ? "C" : "B", 0.0)
        : new Edge(from, to, crease.assignment, crease.angle);
  }

  /** As the net has it. */
  private static Crease crease(Score score) {
    return switch (score.angle()) {
      case FoldAngle.Known(double degrees, _) ->
          degrees == 0 ? Crease.FLAT : Crease.of(degrees, score.sense());
      case FoldAngle.ToSolve _ -> new Crease(Crease.letter(score.sense()), null);
    };
  }

  /** As the form has it; only a score folded right over takes its sense from the net. */
  private static Crease crease(double fold, Sense sense) {
    return Senses.of(fold)
        .map(way -> Crease.of(Math.abs(fold), way))
        .orElseGet(() -> Math.abs(fold) < 90 ? Crease.FLAT : Crease.of(180, sense));
  }

  private void loop(Opening opening, int panel) {
    int start = vertices.size();
    int size = opening.outline().size();
    opening.outline().corners().forEach(c -> vertices.add(new Vertex(c, panel)));
    Pace.step(size);
    for (int i = 0; i < size; i++) {
      int from = start + i;
      int to = start + (i + 1) % size;
      edges.put(key(from, to), new Edge(from, to, "C", 0.0));
    }
  }

  private int start(EdgeRef side) {
    return faces.get(side.panel())[side.edge()];
  }

  private int end(EdgeRef side) {
    int[] face = faces.get(side.panel());
    return face[(side.edge() + 1) % face.length];
  }

  private static long key(int a, int b) {
    return ((long) Math.min(a, b) << 32) | Math.max(a, b);
  }
}
