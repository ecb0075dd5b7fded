package facetwright.fold.close;

import facetwright.fold.pose.FoldTree;
import facetwright.fold.pose.ScoreAngles;
import facetwright.geom.CyclicPolygon;
import facetwright.geom.Motion3;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.EdgeRef;
import facetwright.net.Net;
import facetwright.net.Score;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Where the solver may begin with a form that stands on a ring of corners, such as the waist of a
 * wrap: the ring level, its corners on one circle; every panel at the ring leaning by half of what
 * the score there is folded; and what lies farther out carried along by its scores. What is alike
 * all round the ring begins alike.
 */
final class RingStart {
  private final Net net;
  private final WeldedVertices welded;
  private final List<Integer> ring;
  private final List<Double> sides = new ArrayList<>();
  private final Map<Ends, EdgeRef> sideAt = new HashMap<>();
  private final Map<EdgeRef, Integer> scoreAt = new HashMap<>();

  private record Ends(int from, int to) {}

  RingStart(Net net, Unknowns unknowns, WeldedVertices welded) {
    this.net = net;
    this.welded = welded;
    this.ring = ClosingEquations.ring(net, unknowns, welded);
    for (int p = 0; p < net.panels().size(); p++) {
      for (int e = 0; unknowns.seeks(p) && e < net.panels().get(p).outline().size(); e++) {
        sideAt.put(new Ends(welded.point(p, e), welded.point(p, e + 1)), new EdgeRef(p, e));
      }
    }
    for (int s = 0; s < net.scores().size(); s++) {
      Score score = net.scores().get(s);
      if (unknowns.has(score.a()) && unknowns.has(score.b())) {
        scoreAt.put(score.a(), s);
        scoreAt.put(score.b(), s);
      }
    }
    for (int i = 0; i < ring.size(); i++) {
      Ends up = way(i);
      EdgeRef side = sideAt.getOrDefault(up, sideAt.get(new Ends(up.to, up.from)));
      if (side != null) {
        sides.add(net.segment(side).length());
      }
    }
  }

  private Ends way(int i) {
    return new Ends(ring.get(i), ring.get((i + 1) % ring.size()));
  }

  /** Whether the net has a ring to begin with: panels at each side of it, which can lie level. */
  boolean exists() {
    return ring.size() >= 3 && sides.size() == ring.size() && CyclicPolygon.exists(sides);
  }

  /** Scores that lie on the ring. */
  List<Integer> scores() {
    List<Integer> found = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      Integer s = scoreAt.get(sideAt.get(way(i)));
      if (s != null) {
        found.add(s);
      }
    }
    return found;
  }

  /**
   * Coordinates of all points.
   *
   * @param guess how far each score is folded
   * @param lean by which panels lean in that are no score's at the ring, in radians
   */
  double[] points(ScoreAngles guess, double lean) {
    Growth growth = new Growth();
    double[] turns = CyclicPolygon.turns(sides);
    Vec3 at = Vec3.ZERO;
    double heading = 0;
    for (int i = 0; i < ring.size(); i++) {
      Vec3 along = new Vec3(Math.cos(heading), Math.sin(heading), 0);
      Vec3 out = along.cross(Vec3.Z);
      Ends up = way(i);
      EdgeRef above = sideAt.get(up);
      EdgeRef below = sideAt.get(new Ends(up.to, up.from));
      Vec3 end = at.plus(along.times(sides.get(i)));
      Integer score = above == null ? null : scoreAt.get(above);
      double tilt = score == null ? lean : guess.foldBy(score) / 2;
      Vec3 normalUp = out.times(Math.cos(tilt)).plus(Vec3.Z.times(Math.sin(tilt)));
      Vec3 normalDown = out.times(Math.cos(tilt)).minus(Vec3.Z.times(Math.sin(tilt)));
      if (above != null) {
        growth.hang(above, at, along, normalUp);
      }
      if (below != null) {
        growth.hang(below, end, along.times(-1), normalDown);
      }
      at = end;
      heading += Math.toRadians(turns[i]);
    }
    growth.spread(guess);
    return growth.x;
  }

  /** Panels placed one ring of them after the other; a point stays where the first ones put it. */
  private final class Growth {
    private final double[] x = new double[3 * welded.points()];
    private final int[] votes = new int[welded.points()];
    private final boolean[] fixed = new boolean[welded.points()];
    private final Motion3[] poses = new Motion3[net.panels().size()];
    private List<Integer> front = new ArrayList<>();

    void hang(EdgeRef side, Vec3 from, Vec3 along, Vec3 normal) {
      Segment2 line = net.segment(side);
      Vec2 direction = line.to().minus(line.from());
      vote(
          side.panel(),
          Motion3.carrying(flat(line.from()), flat(direction), Vec3.Z, from, along, normal));
    }

    private void vote(int panel, Motion3 pose) {
      if (!front.contains(panel)) {
        front.add(panel);
      }
      poses[panel] = pose;
      var outline = net.panels().get(panel).outline();
      for (int c = 0; c < outline.size(); c++) {
        int i = welded.point(panel, c);
        if (!fixed[i]) {
          Vec3 p = pose.apply(outline.corner(c));
          x[3 * i] += p.x();
          x[3 * i + 1] += p.y();
          x[3 * i + 2] += p.z();
          votes[i]++;
        }
      }
    }

    private void settle() {
      for (int i = 0; i < fixed.length; i++) {
        if (!fixed[i] && votes[i] > 0) {
          fixed[i] = true;
          for (int c = 0; c < 3; c++) {
            x[3 * i + c] /= votes[i];
          }
        }
      }
    }

    void spread(ScoreAngles guess) {
      boolean[] placed = new boolean[poses.length];
      while (!front.isEmpty()) {
        settle();
        List<Integer> done = front;
        for (int p : done) {
          placed[p] = true;
          poses[p] = Settled.pose(welded, x, net, p);
        }
        front = new ArrayList<>();
        for (int s : scoreAt.values().stream().distinct().sorted().toList()) {
          Score score = net.scores().get(s);
          int a = score.a().panel();
          int b = score.b().panel();
          if (placed[a] && !placed[b]) {
            vote(b, FoldTree.turn(net, s, a, guess.foldBy(s)).then(poses[a]));
          } else if (placed[b] && !placed[a]) {
            vote(a, FoldTree.turn(net, s, b, guess.foldBy(s)).then(poses[b]));
          }
        }
      }
    }
  }

  private static Vec3 flat(Vec2 p) {
    return new Vec3(p.x(), p.y(), 0);
  }
}
