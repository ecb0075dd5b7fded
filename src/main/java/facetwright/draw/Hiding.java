package facetwright.draw;

import facetwright.geom.Motion3;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.Net;
import facetwright.pace.Pace;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * Which panels of a folded form hide which, from wherever it is looked at: the space is divided
 * again and again by the plane of a panel, and panels that such a plane goes through are divided
 * with it (H. Fuchs, Z. Kedem and B. Naylor, On visible surface generation by a priori tree
 * structures, SIGGRAPH 1980; from memory).
 */
final class Hiding {
  /** What shows less of itself, in mm², is left over by cutting one outline by another. */
  private static final double LEAST_AREA = 1e-9;

  /** Panels nearer than this to a plane lie in it, in mm. */
  private static final double FLAT = 0.02;

  private static final int CANDIDATES = 6;

  private final Net net;
  private final List<Motion3> poses;
  private final Stacked stacked;
  private final double reach;
  private final Node root;
  private int shards;

  /**
   * A panel, or a part of one where it had to be divided.
   *
   * @param isPane whether it is what shows in a window of the panel, behind which something is
   */
  record Shard(int number, int panel, boolean isPane, Polygon region) {
    @Override
    public boolean equals(Object other) {
      return other instanceof Shard s && s.number == number;
    }

    @Override
    public int hashCode() {
      return number;
    }
  }

  private record Plane(Vec3 normal, double offset) {
    double at(Vec3 p) {
      return normal.dot(p) - offset;
    }
  }

  /**
   * @param here what lies in the plane, from the lowest to the highest along its normal
   */
  private record Node(Plane plane, List<Shard> here, Node behind, Node before) {}

  private Hiding(Net net, List<Motion3> poses) {
    this.net = net;
    this.poses = List.copyOf(poses);
    this.reach = 4 * (net.box().width() + net.box().height());
    Pace.doing("finding what hides what of " + net.panels().size() + " panels");
    List<Shard> all = new ArrayList<>();
    for (int p = 0; p < net.panels().size(); p++) {
      all.add(new Shard(shards++, p, false, net.panels().get(p).region()));
      for (Polygon2 pane : net.panels().get(p).panes()) {
        all.add(new Shard(shards++, p, true, Planar.polygon(pane)));
      }
    }
    this.stacked = new Stacked(net, this.poses);
    this.root = node(all);
  }

  /**
   * The panels where the poses put them.
   *
   * @param poses for each panel, from its place in the net
   */
  static Hiding of(Net net, List<Motion3> poses) {
    return new Hiding(net, poses);
  }

  private Plane plane(int panel) {
    Motion3 pose = poses.get(panel);
    Vec3 point = pose.apply(net.panels().get(panel).outline().corner(0));
    return new Plane(pose.ez(), pose.ez().dot(point));
  }

  private Node node(List<Shard> shards) {
    if (shards.isEmpty()) {
      return null;
    }
    Pace.step(shards.size());
    Plane plane = plane(best(shards).panel());
    List<Shard> here = new ArrayList<>();
    List<Shard> behind = new ArrayList<>();
    List<Shard> before = new ArrayList<>();
    for (Shard shard : shards) {
      double low = 0;
      double high = 0;
      for (Coordinate c : shard.region.getExteriorRing().getCoordinates()) {
        double off = plane.at(poses.get(shard.panel).apply(new Vec2(c.x, c.y)));
        low = Math.min(low, off);
        high = Math.max(high, off);
      }
      if (high <= FLAT && low >= -FLAT) {
        here.add(shard);
      } else if (high <= FLAT) {
        behind.add(shard);
      } else if (low >= -FLAT) {
        before.add(shard);
      } else {
        divide(shard, plane, behind, before);
      }
    }
    if (here.isEmpty()) {
      // Its own plane always holds it; where rounding says otherwise it still must end.
      here.add(shards.getFirst());
      behind.remove(shards.getFirst());
      before.remove(shards.getFirst());
    }
    if (here.size() > 1) {
      List<Integer> order = stacked.order(here.stream().map(Shard::panel).toList(), plane.normal);
      here.sort(Comparator.comparingInt(s -> order.indexOf(s.panel)));
    }
    return new Node(plane, here, node(behind), node(before));
  }

  /** Of a few shards the one whose plane goes through the fewest others. */
  private Shard best(List<Shard> shards) {
    Shard best = shards.getFirst();
    int least = Integer.MAX_VALUE;
    int step = Math.max(1, shards.size() / CANDIDATES);
    for (int i = 0; i < shards.size() && least > 0; i += step) {
      Plane plane = plane(shards.get(i).panel);
      int cut = 0;
      for (Shard s : shards) {
        boolean over = false;
        boolean below = false;
        for (Coordinate c : s.region.getExteriorRing().getCoordinates()) {
          double off = plane.at(poses.get(s.panel).apply(new Vec2(c.x, c.y)));
          over |= off > FLAT;
          below |= off < -FLAT;
        }
        cut += over && below ? 1 : 0;
      }
      if (cut < least) {
        least = cut;
        best = shards.get(i);
      }
    }
    return best;
  }

  private void divide(Shard shard, Plane plane, List<Shard> behind, List<Shard> before) {
    Motion3 pose = poses.get(shard.panel);
    // In the plane of the net the distance from the dividing plane is linear.
    double a = plane.normal.dot(pose.ex());
    double b = plane.normal.dot(pose.ey());
    double c = plane.at(pose.origin());
    double steep = Math.hypot(a, b);
    Vec2 normal = new Vec2(a / steep, b / steep);
    Coordinate middle = shard.region.getCentroid().getCoordinate();
    Vec2 from = new Vec2(middle.x, middle.y);
    Vec2 foot = from.minus(normal.times((a * from.x() + b * from.y() + c) / steep));
    add(shard, half(foot, normal), before);
    add(shard, half(foot, normal.times(-1)), behind);
  }

  private Polygon half(Vec2 foot, Vec2 normal) {
    Vec2 along = normal.left().times(reach);
    Vec2 deep = normal.times(reach);
    Coordinate[] ring = {
      Planar.coordinate(foot.plus(along)),
      Planar.coordinate(foot.minus(along)),
      Planar.coordinate(foot.minus(along).plus(deep)),
      Planar.coordinate(foot.plus(along).plus(deep)),
      Planar.coordinate(foot.plus(along))
    };
    return Planar.factory().createPolygon(ring);
  }

  private void add(Shard shard, Polygon half, List<Shard> to) {
    Pace.step(10L + shard.region.getNumPoints());
    Geometry part = shard.region.intersection(half);
    for (int i = 0; i < part.getNumGeometries(); i++) {
      if (part.getGeometryN(i) instanceof Polygon p && p.getArea() > LEAST_AREA) {
        to.add(new Shard(shards++, shard.panel, shard.isPane, p));
      }
    }
  }

  /** From the farthest to the nearest, seen against a direction toward the viewer. */
  List<Shard> seenFrom(Vec3 toward) {
    List<Shard> order = new ArrayList<>();
    walk(root, toward, order);
    return order;
  }

  private void walk(Node node, Vec3 toward, List<Shard> order) {
    if (node == null) {
      return;
    }
    boolean inFront = node.plane.normal.dot(toward) > 0;
    walk(inFront ? node.behind : node.before, toward, order);
    order.addAll(inFront ? node.here : node.here.reversed());
    walk(inFront ? node.before : node.behind, toward, order);
  }
}
