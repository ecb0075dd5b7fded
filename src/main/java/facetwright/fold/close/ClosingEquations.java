package facetwright.fold.close;

import facetwright.fold.pose.BaseCorners;
import facetwright.fold.pose.ScoreAngles;
import facetwright.fold.solve.Apart;
import facetwright.fold.solve.Combined;
import facetwright.fold.solve.Crease;
import facetwright.fold.solve.Equation;
import facetwright.fold.solve.InPlane;
import facetwright.geom.Polygon2;
import facetwright.geom.RoundOff;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.Score;
import facetwright.net.Stance;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What the corners of a closed form have to satisfy: each panel keeps three of its distances and
 * its other corners in place to those; known scores keep their angles; joins that are not welded
 * meet; and creases of unknown angle pull the way they are meant to go.
 */
public final class ClosingEquations {
  private final Net net;
  private final Unknowns unknowns;
  private final WeldedVertices welded;
  private final Map<Pair, List<Double>> lengths = new HashMap<>();
  private final List<Equation> rigid = new ArrayList<>();
  private final List<Crease> creases = new ArrayList<>();
  private final List<Integer> scoreOf = new ArrayList<>();

  private record Pair(int from, int to) {}

  public ClosingEquations(Net net, Unknowns unknowns, WeldedVertices welded) {
    this.net = net;
    this.unknowns = unknowns;
    this.welded = welded;
    Set<Equation> seen = new LinkedHashSet<>();
    for (int p = 0; p < net.panels().size(); p++) {
      if (unknowns.seeks(p)) {
        panel(p, seen);
      }
    }
    rigid.addAll(seen);
    for (int s = 0; s < net.scores().size(); s++) {
      crease(s);
    }
  }

  /** Adds what brings joins together. */
  public ClosingEquations joined(double caliper) {
    rigid.addAll(SeamEquations.of(net, welded));
    for (Join join : net.joins()) {
      if (join instanceof Join.Lap lap
          && unknowns.seeks(lap.under())
          && unknowns.seeks(lap.over())) {
        int under = lap.under();
        int over = lap.over();
        double inside = SoughtLaps.inside(net, welded, lap, caliper);
        int[] host = BaseCorners.of(net.panels().get(over).outline());
        for (int c : BaseCorners.of(net.panels().get(under).outline())) {
          InPlane laid =
              new InPlane(
                  welded.point(over, host[0]),
                  welded.point(over, host[1]),
                  welded.point(over, host[2]),
                  welded.point(under, c),
                  -inside,
                  false);
          if (Set.copyOf(laid.points()).size() == laid.points().size()) {
            rigid.add(laid);
          }
        }
      }
    }
    return this;
  }

  /**
   * Adds what brings the corners level on which it is to stand.
   *
   * @param isPull whether that only shows the way
   */
  ClosingEquations level(boolean isPull) {
    List<Integer> ring = ring(net, unknowns, welded);
    int n = ring.size();
    for (int i = 0; i < n && n > 3; i++) {
      if (i != 0 && i != n / 3 && i != 2 * n / 3) {
        rigid.add(
            new InPlane(ring.get(0), ring.get(n / 3), ring.get(2 * n / 3), ring.get(i), 0, isPull));
      }
    }
    return this;
  }

  /** The points of the stance; none where it lies in one panel or is not sought. */
  static List<Integer> ring(Net net, Unknowns unknowns, WeldedVertices welded) {
    List<Stance.Corner> corners = net.stance().ring();
    boolean one = corners.stream().map(Stance.Corner::panel).distinct().count() == 1;
    if (one || !corners.stream().allMatch(c -> unknowns.seeks(c.panel()))) {
      return List.of();
    }
    return corners.stream().map(c -> welded.point(c.panel(), c.corner())).distinct().toList();
  }

  private void panel(int p, Set<Equation> seen) {
    Polygon2 outline = net.panels().get(p).outline();
    int[] base = BaseCorners.of(outline);
    for (int i = 0; i < 3; i++) {
      int a = base[i];
      int b = base[(i + 1) % 3];
      int from = Math.min(welded.point(p, a), welded.point(p, b));
      int to = Math.max(welded.point(p, a), welded.point(p, b));
      double length = outline.corner(a).distance(outline.corner(b));
      // A side that two panels share counts once, whatever the last digits of its lengths.
      List<Double> known = lengths.computeIfAbsent(new Pair(from, to), _ -> new ArrayList<>());
      if (known.stream().noneMatch(d -> Math.abs(d - length) <= RoundOff.PART * length)) {
        known.add(length);
        seen.add(new Apart(from, to, length));
      }
    }
    Vec2 o = outline.corner(base[0]);
    Vec2 u = outline.corner(base[1]).minus(o);
    Vec2 v = outline.corner(base[2]).minus(o);
    double area = u.cross(v);
    for (int c = 0; c < outline.size(); c++) {
      if (c != base[0] && c != base[1] && c != base[2]) {
        Vec2 d = outline.corner(c).minus(o);
        double s = d.cross(v) / area;
        double t = u.cross(d) / area;
        seen.add(
            new Combined(
                List.of(
                    welded.point(p, base[0]),
                    welded.point(p, base[1]),
                    welded.point(p, base[2]),
                    welded.point(p, c)),
                List.of(1 - s - t, s, t, -1.0)));
      }
    }
  }

  private void crease(int s) {
    Score score = net.scores().get(s);
    if (!unknowns.has(score.a()) || !unknowns.has(score.b())) {
      return;
    }
    int a = score.a().panel();
    int b = score.b().panel();
    int from = welded.point(a, score.a().edge());
    int to = welded.point(a, score.a().edge() + 1);
    int wingA = wing(score.a());
    int wingB = wing(score.b());
    int left = welded.point(a, wingA);
    int right = welded.point(b, wingB);
    if (Set.of(from, to).contains(left) || Set.of(from, to).contains(right) || left == right) {
      return;
    }
    double reach = Math.min(height(score.a(), wingA), height(score.b(), wingB));
    creases.add(new Crease(from, to, left, right, 0, reach, false));
    scoreOf.add(s);
  }

  /** The corner farthest from a side, on the card's side of it. */
  private int wing(EdgeRef side) {
    Polygon2 outline = net.panels().get(side.panel()).outline();
    int best = -1;
    for (int c = 0; c < outline.size(); c++) {
      if (best < 0 || height(side, c) > height(side, best) * (1 + RoundOff.PART)) {
        best = c;
      }
    }
    return best;
  }

  private double height(EdgeRef side, int corner) {
    Segment2 line = net.segment(side);
    Vec2 c = net.panels().get(side.panel()).outline().corner(corner);
    return line.to().minus(line.from()).cross(c.minus(line.from())) / line.length();
  }

  /**
   * All equations, the creases folded by the given angles.
   *
   * @param hard angles that have to be met; the others pull
   */
  public List<Equation> folded(ScoreAngles angles, ScoreAngles hard) {
    List<Equation> all = new ArrayList<>(rigid);
    for (int i = 0; i < creases.size(); i++) {
      int s = scoreOf.get(i);
      boolean known = hard.isKnown(s);
      all.add(
          creases.get(i).folded(known ? hard.radians().get(s) : angles.foldBy(s)).asPull(!known));
    }
    return all;
  }

  /** The angles that the creases have where the points are; others as given. */
  ScoreAngles measured(ScoreAngles angles, double[] x) {
    ScoreAngles measured = angles;
    for (int i = 0; i < creases.size(); i++) {
      measured = measured.with(scoreOf.get(i), creases.get(i).angle(x));
    }
    return measured;
  }

  /** What keeps the panels rigid, and joins together where they were added. */
  public List<Equation> rigid() {
    return List.copyOf(rigid);
  }

  /**
   * All equations, the creases folded by angles that count, but little.
   *
   * @param weight over 0
   */
  public List<Equation> leaning(ScoreAngles angles, double weight) {
    List<Equation> all = new ArrayList<>(rigid);
    for (int i = 0; i < creases.size(); i++) {
      all.add(creases.get(i).folded(angles.foldBy(scoreOf.get(i))).counting(weight));
    }
    return all;
  }

  /** The creases, in the order of their scores. */
  List<Crease> creases() {
    return creases;
  }

  /** For each crease its score. */
  List<Integer> scores() {
    return scoreOf;
  }
}
