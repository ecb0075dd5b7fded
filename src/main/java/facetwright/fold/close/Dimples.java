package facetwright.fold.close;

import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.EdgeRef;
import facetwright.net.Net;
import facetwright.net.Score;
import facetwright.net.Sense;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Where three triangles close round a corner, such as a gusset: a tetrahedron without its base, so
 * that its own fold angles are known from its lengths. Seen from outside it stands for its base; it
 * adds its slope to the folds at its outer sides, or takes it off where it is sunk outward.
 */
final class Dimples {
  private final Net net;
  private final WeldedVertices welded;
  private final Map<Side, Integer> scoreAt = new HashMap<>();
  private final Map<Integer, Double> inner = new LinkedHashMap<>();
  private final Map<Integer, Double> outer = new LinkedHashMap<>();
  private final Map<EdgeRef, Double> reach = new HashMap<>();
  private double area;

  private record Side(int low, int high) {
    static Side of(int p, int q) {
      return new Side(Math.min(p, q), Math.max(p, q));
    }
  }

  Dimples(Net net, Unknowns unknowns, WeldedVertices welded) {
    this.net = net;
    this.welded = welded;
    for (int s = 0; s < net.scores().size(); s++) {
      EdgeRef a = net.scores().get(s).a();
      if (unknowns.has(a) && unknowns.has(net.scores().get(s).b())) {
        scoreAt.put(side(a), s);
      }
    }
    List<List<Integer>> round = new ArrayList<>();
    for (int i = 0; i < welded.points(); i++) {
      round.add(new ArrayList<>());
    }
    for (int p = 0; p < net.panels().size(); p++) {
      for (int c = 0; unknowns.seeks(p) && c < outline(p).size(); c++) {
        round.get(welded.point(p, c)).add(p);
      }
    }
    for (int i = 0; i < round.size(); i++) {
      List<Integer> panels = round.get(i);
      if (panels.size() == 3 && panels.stream().allMatch(p -> outline(p).size() == 3)) {
        corner(i, panels);
      }
    }
  }

  private Polygon2 outline(int panel) {
    return net.panels().get(panel).outline();
  }

  private Side side(EdgeRef ref) {
    return Side.of(
        welded.point(ref.panel(), ref.edge()), welded.point(ref.panel(), ref.edge() + 1));
  }

  private void corner(int tip, List<Integer> panels) {
    Map<Side, Double> lengths = new LinkedHashMap<>();
    int[] ends =
        panels.stream().flatMapToInt(p -> Arrays.stream(others(p, tip))).distinct().toArray();
    for (int p : panels) {
      for (int c = 0; c < 3; c++) {
        lengths.put(side(new EdgeRef(p, c)), outline(p).side(c).length());
      }
    }
    if (ends.length != 3 || lengths.size() != 6) {
      return;
    }
    int a = ends[0];
    int b = ends[1];
    int c = ends[2];
    Integer one = scoreAt.get(Side.of(tip, a));
    Integer two = scoreAt.get(Side.of(tip, b));
    Integer three = scoreAt.get(Side.of(tip, c));
    Sense sense = null;
    for (Integer s : Arrays.asList(one, two, three)) {
      if (s != null) {
        Sense its = net.scores().get(s).sense();
        if (sense != null && its != sense) {
          return;
        }
        sense = its;
      }
    }
    if (sense == null || !turnsBack(sense, List.of(Side.of(a, b), Side.of(b, c), Side.of(c, a)))) {
      return;
    }
    place(sense, tip, new int[] {a, b, c}, lengths);
    double base = heron(lengths, a, b, c);
    for (int p : panels) {
      for (int side = 0; side < 3; side++) {
        if (welded.point(p, side) != tip && welded.point(p, side + 1) != tip) {
          reach.put(new EdgeRef(p, side), 2 * base / outline(p).side(side).length() / 3);
        }
      }
    }
  }

  private int[] others(int panel, int tip) {
    return IntStream.range(0, 3).map(c -> welded.point(panel, c)).filter(i -> i != tip).toArray();
  }

  /** Whether some score round it is folded the other way. */
  private boolean turnsBack(Sense sense, List<Side> rim) {
    return rim.stream()
        .map(scoreAt::get)
        .anyMatch(s -> s != null && net.scores().get(s).sense() != sense);
  }

  private void place(Sense sense, int tip, int[] ends, Map<Side, Double> lengths) {
    double sign = sense == Sense.MOUNTAIN ? 1 : -1;
    for (int i = 0; i < 3; i++) {
      int p = ends[i];
      int q = ends[(i + 1) % 3];
      int r = ends[(i + 2) % 3];
      Integer rim = scoreAt.get(Side.of(p, q));
      if (rim != null) {
        outer.merge(rim, -sign * dihedral(lengths, p, q, tip, r), Double::sum);
      }
      Integer ray = scoreAt.get(Side.of(tip, p));
      if (ray != null) {
        inner.put(ray, sign * (Math.PI - dihedral(lengths, tip, p, q, r)));
      }
      area -= heron(lengths, tip, p, q);
    }
    area += heron(lengths, ends[0], ends[1], ends[2]);
  }

  private static double length(Map<Side, Double> lengths, int p, int q) {
    return lengths.get(Side.of(p, q));
  }

  private static double angle(Map<Side, Double> lengths, int at, int p, int q) {
    double a = length(lengths, at, p);
    double b = length(lengths, at, q);
    double c = length(lengths, p, q);
    return Math.acos(Math.clamp((a * a + b * b - c * c) / (2 * a * b), -1, 1));
  }

  private static double heron(Map<Side, Double> lengths, int p, int q, int r) {
    return length(lengths, p, q) * length(lengths, p, r) * Math.sin(angle(lengths, p, q, r)) / 2;
  }

  /**
   * The angle at a side of a tetrahedron, by the spherical law of cosines (I. Todhunter, Spherical
   * Trigonometry, 1886, art. 37).
   */
  private static double dihedral(Map<Side, Double> lengths, int p, int q, int r, int s) {
    double a = angle(lengths, p, q, r);
    double b = angle(lengths, p, q, s);
    double opposite = angle(lengths, p, r, s);
    return Math.acos(
        Math.clamp(
            (Math.cos(opposite) - Math.cos(a) * Math.cos(b)) / (Math.sin(a) * Math.sin(b)), -1, 1));
  }

  /** What the bases have more area than what stands on them, in mm²; negative. */
  double area() {
    return area;
  }

  /** How far the middle of what lies behind a side is from it, a dimple taken by its base. */
  double reach(EdgeRef ref) {
    if (reach.containsKey(ref)) {
      return reach.get(ref);
    }
    Segment2 line = net.segment(ref);
    Vec2 middle = outline(ref.panel()).centroid();
    return Math.abs(line.to().minus(line.from()).cross(middle.minus(line.from()))) / line.length();
  }

  /** Whether a score lies inside a dimple. */
  boolean hides(int score) {
    return inner.containsKey(score);
  }

  /** Whether a dimple has to do with a score's angle, whatever its sense. */
  boolean bends(int score) {
    return outer.containsKey(score);
  }

  /** The angle of a score by its dimples. */
  double angle(Score score, int number, double base) {
    if (inner.containsKey(number)) {
      return inner.get(number);
    }
    if (outer.containsKey(number)) {
      return base + outer.get(number);
    }
    return score.sense() == Sense.MOUNTAIN ? base : -base;
  }
}
