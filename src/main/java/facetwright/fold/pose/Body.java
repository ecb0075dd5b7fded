package facetwright.fold.pose;

import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion3;
import facetwright.geom.Vec3;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Measures the main body of a form.
 *
 * <p>The volume is that of the body bounded by facets and gussets, by the divergence theorem. Tabs
 * and whatever a lap puts under another panel do not bound it. Where the body is open, such as a
 * tray, each rim is closed by a cone to its middle: flat, where the rim is flat.
 */
public final class Body {
  private final Net net;
  private final List<Motion3> poses;
  private final List<Integer> panels;
  private final LengthTolerance tolerance;

  public Body(Net net, List<Motion3> poses, List<Integer> panels, LengthTolerance tolerance) {
    this.net = net;
    this.poses = poses;
    this.panels = panels;
    this.tolerance = tolerance;
  }

  public Measures measure() {
    List<Vec3> points = corners(net, poses, panels);
    Box2 box = Standing.seenFromAbove(points);
    double high = points.stream().mapToDouble(Vec3::z).max().orElse(0);
    double low = points.stream().mapToDouble(Vec3::z).min().orElse(0);
    Set<Integer> hidden = new HashSet<>();
    for (Join join : net.joins()) {
      if (join instanceof Join.Lap(int under, _, _, _)) {
        hidden.add(under);
      }
    }
    double area = 0;
    List<Integer> skin = new ArrayList<>();
    for (int p : panels) {
      PanelRole role = net.panels().get(p).role();
      if (role == PanelRole.TAB || hidden.contains(p)) {
        continue;
      }
      skin.add(p);
      if (role == PanelRole.FACET) {
        area += net.panels().get(p).cardArea();
      }
    }
    Vec3 middle = new Vec3(box.centre().x(), box.centre().y(), (low + high) / 2);
    return new Measures(box.width(), box.height(), high - low, volume(skin, middle), area);
  }

  public static List<Vec3> corners(Net net, List<Motion3> poses, List<Integer> panels) {
    List<Vec3> points = new ArrayList<>();
    for (int p : panels) {
      net.panels().get(p).outline().corners().forEach(c -> points.add(poses.get(p).apply(c)));
    }
    return points;
  }

  private record Side(int from, int to) {}

  private double volume(List<Integer> skin, Vec3 o) {
    double volume = 0;
    List<Vec3> welded = new ArrayList<>();
    Map<Side, Integer> free = new LinkedHashMap<>();
    for (int p : skin) {
      List<Vec3> ring = corners(net, poses, List.of(p));
      volume += Standing.normal(ring).dot(ring.getFirst().minus(o)) / 6;
      int[] numbers = ring.stream().mapToInt(c -> weld(welded, c)).toArray();
      for (int i = 0; i < numbers.length; i++) {
        Side side = new Side(numbers[i], numbers[(i + 1) % numbers.length]);
        Side back = new Side(side.to, side.from);
        if (free.containsKey(back)) {
          free.merge(back, -1, (a, b) -> a + b == 0 ? null : a + b);
        } else {
          free.merge(side, 1, Integer::sum);
        }
      }
    }
    return volume + caps(welded, free, o);
  }

  /** Every loop of free sides closed by a cone to its middle. */
  private static double caps(List<Vec3> welded, Map<Side, Integer> free, Vec3 o) {
    int[] loop = new int[welded.size()];
    Arrays.setAll(loop, i -> i);
    free.keySet().forEach(s -> loop[root(loop, s.from)] = root(loop, s.to));
    Map<Integer, Vec3> sum = new LinkedHashMap<>();
    Map<Integer, Integer> count = new LinkedHashMap<>();
    free.keySet()
        .forEach(
            s -> {
              int r = root(loop, s.from);
              sum.merge(r, welded.get(s.from), Vec3::plus);
              count.merge(r, 1, Integer::sum);
            });
    double volume = 0;
    for (Map.Entry<Side, Integer> side : free.entrySet()) {
      int r = root(loop, side.getKey().from);
      Vec3 apex = sum.get(r).times(1.0 / count.get(r)).minus(o);
      Vec3 a = welded.get(side.getKey().from).minus(o);
      Vec3 b = welded.get(side.getKey().to).minus(o);
      volume += side.getValue() * b.cross(a).dot(apex) / 6;
    }
    return volume;
  }

  private int weld(List<Vec3> welded, Vec3 p) {
    for (int i = 0; i < welded.size(); i++) {
      if (tolerance.same(welded.get(i), p)) {
        return i;
      }
    }
    welded.add(p);
    return welded.size() - 1;
  }

  private static int root(int[] loop, int i) {
    int r = i;
    while (loop[r] != r) {
      r = loop[r];
    }
    return r;
  }
}
