package facetwright.check.closing;

import facetwright.check.finding.Subject;
import facetwright.fold.pose.Laps;
import facetwright.geom.AngleTolerance;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.EdgeRef;
import facetwright.net.FoldAngle;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.Score;
import facetwright.net.Sense;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Walls that lead from a panel round to one that lies under it, all scored to each other by
 * parallel sides: seen along these a chain of bars in a plane.
 *
 * @param lap what has to lie on each other
 * @param scores from the panel over to that under, in turn
 * @param walls the panels between, in turn
 * @param lengths how wide each of them is, in mm
 * @param over how far the panel over reaches from its score, in mm
 * @param under how far that under does
 */
record LapChain(
    Join.Lap lap,
    List<Score> scores,
    List<Integer> walls,
    List<Double> lengths,
    double over,
    double under) {
  private static final AngleTolerance PARALLEL = AngleTolerance.UNSEEN;

  LapChain {
    scores = List.copyOf(scores);
    walls = List.copyOf(walls);
    lengths = List.copyOf(lengths);
  }

  /** All of a net's, of one wall or more between. */
  static List<LapChain> all(Subject subject) {
    Map<EdgeRef, Score> at = new HashMap<>();
    for (Score s : subject.net().scores()) {
      at.put(s.a(), s);
      at.put(s.b(), s);
    }
    List<LapChain> found = new ArrayList<>();
    for (Join join : subject.net().joins()) {
      if (join instanceof Join.Lap lap) {
        for (int e = 0; e < subject.panel(lap.over()).outline().size(); e++) {
          from(subject.net(), lap, new EdgeRef(lap.over(), e), at).ifPresent(found::add);
        }
      }
    }
    return found;
  }

  private static Optional<LapChain> from(
      Net net, Join.Lap lap, EdgeRef first, Map<EdgeRef, Score> at) {
    List<Score> scores = new ArrayList<>();
    List<Integer> walls = new ArrayList<>();
    List<Double> lengths = new ArrayList<>();
    Set<Integer> seen = new HashSet<>();
    EdgeRef side = first;
    while (at.containsKey(side) && seen.add(side.panel())) {
      Score score = at.get(side);
      scores.add(score);
      EdgeRef next = score.a().equals(side) ? score.b() : score.a();
      if (next.panel() == lap.under()) {
        return walls.isEmpty()
            ? Optional.empty()
            : Optional.of(
                new LapChain(lap, scores, walls, lengths, reach(net, first), reach(net, next)));
      }
      EdgeRef far = new EdgeRef(next.panel(), (next.edge() + 2) % 4);
      if (net.panels().get(next.panel()).outline().size() != 4 || !areParallel(net, next, far)) {
        return Optional.empty();
      }
      walls.add(next.panel());
      lengths.add(reach(net, next));
      side = far;
    }
    return Optional.empty();
  }

  private static boolean areParallel(Net net, EdgeRef one, EdgeRef other) {
    return Math.abs(net.segment(one).direction().cross(net.segment(other).direction()))
        <= PARALLEL.radians();
  }

  /** How far a panel reaches from one of its sides. */
  private static double reach(Net net, EdgeRef side) {
    Segment2 foot = net.segment(side);
    Polygon2 outline = net.panels().get(side.panel()).outline();
    double most = 0;
    for (Vec2 corner : outline.corners()) {
      most = Math.max(most, Math.abs(foot.direction().cross(corner.minus(foot.from()))));
    }
    return most;
  }

  /** The folds in turn, in degrees, a mountain over 0; not a number where one is left open. */
  List<Double> folds() {
    return scores.stream()
        .map(
            s ->
                !(s.angle() instanceof FoldAngle.Known(double d, _))
                    ? Double.NaN
                    : s.sense() == Sense.VALLEY ? -d : d)
        .toList();
  }

  /** How far off the plane of the panel over the one under begins, by these folds, in mm. */
  double off(List<Double> folds) {
    return end(folds, lengths, walls.size()).y();
  }

  /** Where a number of walls lead by these folds, from the score of the panel over on. */
  static Vec2 end(List<Double> folds, List<Double> lengths, int walls) {
    Vec2 at = Vec2.ZERO;
    double turned = 0;
    for (int i = 0; i < walls; i++) {
      turned += Math.toRadians(folds.get(i));
      at = at.plus(new Vec2(Math.cos(turned), Math.sin(turned)).times(lengths.get(i)));
    }
    return at;
  }

  /** Whether a panel that begins so far along lies on the one over, and not beside it. */
  boolean lands(double x) {
    return Math.min(0, x + under) - Math.max(-over, x) >= Laps.HOLD;
  }

  /**
   * By which the last two folds bring the panel under to lie flat where it should, the others as
   * they are, in degrees; empty where none do.
   *
   * @param folds the others, and two more
   */
  Optional<List<Double>> lastFolds(List<Double> folds) {
    int last = walls.size() - 1;
    double sign = folds.stream().mapToDouble(f -> f).sum() < 0 ? -1 : 1;
    Vec2 from = end(folds, lengths, last);
    double sine = -from.y() / lengths.get(last);
    if (Math.abs(sine) > 1) {
      return Optional.empty();
    }
    double turned = folds.subList(0, last).stream().mapToDouble(f -> f).sum();
    double way = Math.toDegrees(Math.asin(sine));
    for (double to : new double[] {180 - way, 360 + way, way, -way - 180, way - 360}) {
      double x = from.x() + lengths.get(last) * Math.cos(Math.toRadians(to));
      double one = sign * (to - turned);
      double two = sign * (sign * 360 - to);
      if (one >= 0 && one <= 180 && two >= 0 && two <= 180 && lands(x)) {
        return Optional.of(List.of(one, two));
      }
    }
    return Optional.empty();
  }

  /**
   * How wide a wall has to be for the panel under to lie in the plane of the one over by these
   * folds, in mm; empty where no width does it.
   */
  OptionalDouble width(List<Double> folds, int wall) {
    double turned = folds.subList(0, wall + 1).stream().mapToDouble(f -> f).sum();
    double sine = Math.sin(Math.toRadians(turned));
    double wide = lengths.get(wall) - off(folds) / sine;
    if (Math.abs(sine) < 0.1 || !(wide >= 1)) {
      return OptionalDouble.empty();
    }
    List<Double> changed = new ArrayList<>(lengths);
    changed.set(wall, wide);
    return lands(end(folds, changed, walls.size()).x())
        ? OptionalDouble.of(wide)
        : OptionalDouble.empty();
  }

  /** Which wall is wider than what it would have to be led back by, by how much, in mm. */
  double surplus(int wall) {
    double all = lengths.stream().mapToDouble(l -> l).sum();
    return 2 * lengths.get(wall) - all - (over + under - Laps.HOLD);
  }
}
