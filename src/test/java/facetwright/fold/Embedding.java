package facetwright.fold;

import facetwright.fold.pose.FoldedForm;
import facetwright.geom.Motion3;
import facetwright.geom.Planar;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;

/**
 * Whether a made form is embedded, reckoned apart from the program's own way: its facets cut into
 * triangles, every one tried against every other, and the winding number of the whole about a place
 * just inside of each facet. Tabs, what a lap puts under another panel, and places where card is
 * folded flat on itself are left out.
 */
public final class Embedding {
  /** Card that meets within this is one place, in mm. */
  private static final double NEAR = 0.02;

  private final Net net;
  private final FoldedForm form;
  private final List<Integer> skin = new ArrayList<>();
  private final Map<Integer, List<Triangle>> triangles = new HashMap<>();
  private final Map<Integer, List<Triangle>> cut = new HashMap<>();

  private record Triangle(Vec3 a, Vec3 b, Vec3 c) {
    private Vec3 normal() {
      return b.minus(a).cross(c.minus(a)).unit();
    }

    private List<Vec3> corners() {
      return List.of(a, b, c);
    }

    /** Its middle, and places near the middles of its sides. */
    private List<Vec3> places() {
      return List.of(
          a.plus(b).plus(c).times(1.0 / 3),
          a.plus(b).times(0.46).plus(c.times(0.08)),
          b.plus(c).times(0.46).plus(a.times(0.08)),
          c.plus(a).times(0.46).plus(b.times(0.08)));
    }

    /** How far inside it a place of its plane lies, in mm; negative outside. */
    private double inside(Vec3 p) {
      Vec3 n = normal();
      double least = Double.POSITIVE_INFINITY;
      for (int i = 0; i < 3; i++) {
        Vec3 from = corners().get(i);
        Vec3 along = corners().get((i + 1) % 3).minus(from).unit();
        least = Math.min(least, n.cross(along).dot(p.minus(from)));
      }
      return least;
    }

    /** Whether a side of it goes through the inside of the other. */
    private boolean pierces(Triangle other) {
      Vec3 n = other.normal();
      for (int i = 0; i < 3; i++) {
        Vec3 from = corners().get(i);
        Vec3 to = corners().get((i + 1) % 3);
        double low = n.dot(from.minus(other.a));
        double high = n.dot(to.minus(other.a));
        if (low * high < 0
            && Math.min(Math.abs(low), Math.abs(high)) > NEAR
            && other.inside(from.toward(to, low / (low - high))) > NEAR) {
          return true;
        }
      }
      return false;
    }

    /** The solid angle it is seen under (A. van Oosterom and J. Strackee 1983; from memory). */
    private double seenFrom(Vec3 p) {
      Vec3 x = a.minus(p);
      Vec3 y = b.minus(p);
      Vec3 z = c.minus(p);
      double below =
          x.length() * y.length() * z.length()
              + x.dot(y) * z.length()
              + x.dot(z) * y.length()
              + y.dot(z) * x.length();
      return 2 * Math.atan2(x.dot(y.cross(z)), below);
    }
  }

  public Embedding(Net net, FoldedForm form) {
    this.net = net;
    this.form = form;
    Set<Integer> hidden = new HashSet<>();
    net.joins().forEach(j -> hidden.add(j instanceof Join.Lap l ? l.under() : -1));
    for (int p = 0; p < net.panels().size(); p++) {
      if (net.panels().get(p).role() != PanelRole.TAB) {
        cut.put(p, cut(p));
        if (!hidden.contains(p)) {
          skin.add(p);
          triangles.put(p, cut.get(p));
        }
      }
    }
  }

  private List<Triangle> cut(int panel) {
    Motion3 pose = form.poses().get(panel);
    List<Triangle> cut = new ArrayList<>();
    Geometry all =
        new PolygonTriangulator(Planar.polygon(net.panels().get(panel).outline())).getResult();
    for (int i = 0; i < all.getNumGeometries(); i++) {
      Coordinate[] c = all.getGeometryN(i).getCoordinates();
      Vec2[] p = {new Vec2(c[0].x, c[0].y), new Vec2(c[1].x, c[1].y), new Vec2(c[2].x, c[2].y)};
      boolean left = p[1].minus(p[0]).cross(p[2].minus(p[0])) > 0;
      cut.add(
          new Triangle(pose.apply(p[0]), pose.apply(p[left ? 1 : 2]), pose.apply(p[left ? 2 : 1])));
    }
    return cut;
  }

  /** The pairs of panels of which one goes through the other, by name. */
  public List<String> through() {
    List<String> found = new ArrayList<>();
    for (int i = 0; i < skin.size(); i++) {
      for (int j = i + 1; j < skin.size(); j++) {
        if (meet(skin.get(i), skin.get(j))) {
          found.add(name(skin.get(i)) + " | " + name(skin.get(j)));
        }
      }
    }
    return found;
  }

  private String name(int panel) {
    return net.panels().get(panel).name();
  }

  private boolean meet(int a, int b) {
    for (Triangle one : triangles.get(a)) {
      for (Triangle two : triangles.get(b)) {
        if (one.pierces(two) || two.pierces(one)) {
          return true;
        }
      }
    }
    return false;
  }

  /**
   * The panels about whose inner side the form does not wind once, or about whose outer side it
   * winds at all, by name. A rim is closed by a cone to its middle.
   */
  public List<String> notOnce() {
    List<Triangle> all = new ArrayList<>();
    triangles.values().forEach(all::addAll);
    all.addAll(caps());
    List<String> found = new ArrayList<>();
    for (int p : skin) {
      for (Triangle t : triangles.get(p)) {
        for (Vec3 at : t.places()) {
          if (isDoubled(p, at, t.normal())) {
            continue;
          }
          double in = winding(all, at.minus(t.normal().times(NEAR)));
          double out = winding(all, at.plus(t.normal().times(NEAR)));
          if (Math.abs(in - 1) > 0.01 || Math.abs(out) > 0.01) {
            found.add(String.format("%s: %.2f inside, %.2f outside", name(p), in, out));
          }
        }
      }
    }
    return found;
  }

  /** Whether another panel, facing away, lies right on it there: just inside is outside again. */
  private boolean isDoubled(int panel, Vec3 at, Vec3 normal) {
    return cut.keySet().stream()
        .filter(other -> other != panel)
        .flatMap(other -> cut.get(other).stream())
        .anyMatch(
            t ->
                t.normal().dot(normal) < NEAR / 100 - 1
                    && Math.abs(normal.dot(t.a.minus(at))) <= NEAR
                    && t.inside(at) > -NEAR);
  }

  private static double winding(List<Triangle> all, Vec3 p) {
    return all.stream().mapToDouble(t -> t.seenFrom(p)).sum() / (4 * Math.PI);
  }

  private List<Triangle> caps() {
    List<Vec3> places = new ArrayList<>();
    Map<List<Integer>, Integer> free = new HashMap<>();
    for (int p : skin) {
      List<Integer> ring = form.corners(net, p).stream().map(c -> weld(places, c)).toList();
      for (int i = 0; i < ring.size(); i++) {
        int from = ring.get(i);
        int to = ring.get((i + 1) % ring.size());
        if (free.getOrDefault(List.of(to, from), 0) > 0) {
          free.merge(List.of(to, from), -1, Integer::sum);
        } else {
          free.merge(List.of(from, to), 1, Integer::sum);
        }
      }
    }
    free.values().removeIf(n -> n == 0);
    List<Triangle> caps = new ArrayList<>();
    while (!free.isEmpty()) {
      List<List<Integer>> loop = new ArrayList<>();
      List<Integer> side = free.keySet().iterator().next();
      while (side != null) {
        loop.add(side);
        free.computeIfPresent(side, (_, times) -> times == 1 ? null : times - 1);
        int end = side.getLast();
        side = free.keySet().stream().filter(s -> s.getFirst() == end).findFirst().orElse(null);
      }
      Vec3 middle =
          loop.stream()
              .map(s -> places.get(s.getFirst()))
              .reduce(Vec3.ZERO, Vec3::plus)
              .times(1.0 / loop.size());
      loop.forEach(
          s -> caps.add(new Triangle(places.get(s.getLast()), places.get(s.getFirst()), middle)));
    }
    return caps;
  }

  private static int weld(List<Vec3> places, Vec3 p) {
    for (int i = 0; i < places.size(); i++) {
      if (places.get(i).distance(p) <= NEAR) {
        return i;
      }
    }
    places.add(p);
    return places.size() - 1;
  }
}
