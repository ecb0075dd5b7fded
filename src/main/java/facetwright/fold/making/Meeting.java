package facetwright.fold.making;

import facetwright.fold.pose.RigidFit;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion3;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.Score;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Brings panels that swing to meet each other and what holds fast, along scores and glued seams:
 * each corner goes to the middle of those it meets, each panel to where it is nearest to its
 * corners as a rigid one, again and again (the shape matching of M. Müller and others, Meshless
 * deformations based on shape matching, 2005; from memory). Where rigid panels can't meet, what is
 * left is shared out among them.
 */
final class Meeting {
  private static final int ROUNDS = 60;
  private static final LengthTolerance STILL = new LengthTolerance(0.1);

  private final Net net;
  private final Set<Integer> moving;
  private final Set<Integer> fast;
  private final Map<Corner, Corner> root = new LinkedHashMap<>();
  private final Map<Corner, List<Corner>> meeting = new LinkedHashMap<>();

  private record Corner(int panel, int index) {}

  /**
   * @param moving panels that are moved
   * @param fast those that stay
   * @param done what is glued
   */
  Meeting(Net net, Set<Integer> moving, Set<Integer> fast, List<Bond> done) {
    this.net = net;
    this.moving = new TreeSet<>(moving);
    this.fast = fast;
    for (Score s : net.scores()) {
      along(s.a(), s.b());
    }
    for (Bond bond : done) {
      if (bond instanceof Bond.Joined(int join) && net.joins().get(join) instanceof Join.Seam s) {
        along(s.a(), s.b());
      }
    }
    for (Corner c : List.copyOf(root.keySet())) {
      meeting.computeIfAbsent(find(c), _ -> new ArrayList<>()).add(c);
    }
  }

  /** Two sides that run against each other. */
  private void along(EdgeRef a, EdgeRef b) {
    boolean isOfUs =
        (moving.contains(a.panel()) || fast.contains(a.panel()))
            && (moving.contains(b.panel()) || fast.contains(b.panel()));
    if (isOfUs) {
      Segment2 one = net.segment(a);
      Segment2 other = net.segment(b);
      unite(corner(a.panel(), one.from()), corner(b.panel(), other.to()));
      unite(corner(a.panel(), one.to()), corner(b.panel(), other.from()));
    }
  }

  private Corner corner(int panel, Vec2 place) {
    List<Vec2> corners = net.panels().get(panel).outline().corners();
    int best = 0;
    for (int i = 1; i < corners.size(); i++) {
      if (corners.get(i).distance(place) < corners.get(best).distance(place)) {
        best = i;
      }
    }
    return new Corner(panel, best);
  }

  private void unite(Corner a, Corner b) {
    root.putIfAbsent(a, a);
    root.putIfAbsent(b, b);
    root.put(find(a), find(b));
  }

  private Corner find(Corner c) {
    Corner r = c;
    while (!root.get(r).equals(r)) {
      r = root.get(r);
    }
    return r;
  }

  /** Moves the poses of what moves. */
  void settle(List<Motion3> poses) {
    for (int round = 0; round < ROUNDS; round++) {
      Map<Corner, Vec3> goals = goals(poses);
      double far = 0;
      for (int p : moving) {
        RigidFit fit = new RigidFit();
        List<Vec2> corners = net.panels().get(p).outline().corners();
        for (int i = 0; i < corners.size(); i++) {
          Vec3 flat = new Vec3(corners.get(i).x(), corners.get(i).y(), 0);
          Vec3 now = poses.get(p).apply(flat);
          Vec3 goal = goals.getOrDefault(new Corner(p, i), now);
          far = Math.max(far, goal.distance(now));
          fit.pair(flat, goal);
        }
        poses.set(p, fit.motion());
      }
      if (far < STILL.mm()) {
        return;
      }
    }
  }

  private Map<Corner, Vec3> goals(List<Motion3> poses) {
    Map<Corner, Vec3> goals = new HashMap<>();
    for (List<Corner> together : meeting.values()) {
      List<Corner> held = together.stream().filter(c -> fast.contains(c.panel)).toList();
      List<Corner> of = held.isEmpty() ? together : held;
      Vec3 sum = Vec3.ZERO;
      for (Corner c : of) {
        sum =
            sum.plus(poses.get(c.panel).apply(net.panels().get(c.panel).outline().corner(c.index)));
      }
      Vec3 middle = sum.times(1.0 / of.size());
      together.forEach(c -> goals.put(c, middle));
    }
    return goals;
  }
}
