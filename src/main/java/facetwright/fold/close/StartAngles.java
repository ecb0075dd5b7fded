package facetwright.fold.close;

import facetwright.fold.pose.ScoreAngles;
import facetwright.geom.AngleTolerance;
import facetwright.geom.Vec2;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.net.Score;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Angles to begin with where they are not known. The first guess folds every open mountain by what
 * a ball of the same area turns from the middle of the one panel to that of the other, valleys by
 * as much the other way; {@link Dimples} have angles of their own. Later guesses take it in parts
 * and multiples, then vary each score by chance from a seed.
 */
final class StartAngles {
  private static final double LEAST = Math.toRadians(5);
  private static final double MOST = Math.toRadians(170);

  /** A lap's score, short of where its panels would lie in each other. */
  private static final double RIGHT_OVER = Math.toRadians(175);

  private static final List<Double> PARTS = List.of(1.0, 1.0, 1.0, 1.4, 1.0, 1.5);
  private static final List<Double> EVEN = List.of(0.0, 1.0, 2.0, 1.5, -0.5, 0.5);

  private final Net net;
  private final Unknowns unknowns;
  private final ScoreAngles given;
  private final long seed;
  private final Dimples dimples;
  private final Set<Integer> laps;
  private final double radius;

  StartAngles(Net net, Unknowns unknowns, WeldedVertices welded, ScoreAngles given, long seed) {
    this.net = net;
    this.dimples = new Dimples(net, unknowns, welded);
    this.unknowns = unknowns;
    this.given = given;
    this.seed = seed;
    this.laps = laps(net);
    this.radius = radius();
  }

  private double radius() {
    double area = dimples.area();
    for (int p = 0; p < net.panels().size(); p++) {
      if (unknowns.seeks(p) && net.panels().get(p).role() != PanelRole.TAB) {
        area += net.panels().get(p).outline().area();
      }
    }
    return Math.sqrt(area / (4 * Math.PI));
  }

  /** From the middle of the one panel to that of the other, in mm. */
  private double across(int score) {
    Score s = net.scores().get(score);
    return dimples.reach(s.a()) + dimples.reach(s.b());
  }

  /** The mean of {@link #across}, by length, over all open scores that stand for themselves. */
  private double usualAcross() {
    double sum = 0;
    double length = 0;
    for (int s : unknowns.scores()) {
      if (!dimples.hides(s)) {
        double its = net.segment(net.scores().get(s).a()).length();
        sum += its * across(s);
        length += its;
      }
    }
    return length == 0 ? radius : sum / length;
  }

  /** Whether a score's sense tells nothing, for it depends on the form. */
  boolean isEitherWay(int score) {
    return dimples.bends(score);
  }

  /** The first guess, but the given scores folded by an angle of their own, in radians. */
  ScoreAngles guess(List<Integer> scores, double angle) {
    ScoreAngles angles = guess(0);
    for (int s : scores) {
      if (!given.isKnown(s)) {
        angles = angles.with(s, dimples.angle(net.scores().get(s), s, angle));
      }
    }
    return angles;
  }

  /** The guess of this number, from 0. */
  ScoreAngles guess(int number) {
    SplittableRandom chance = new SplittableRandom(seed + number);
    ScoreAngles angles = given;
    double even = number < EVEN.size() ? EVEN.get(number) : chance.nextInt(3) / 2.0;
    double usual = usualAcross();
    for (int s : unknowns.scores()) {
      Score score = net.scores().get(s);
      double part = number < PARTS.size() ? PARTS.get(number) : 0.2 + 2.3 * chance.nextDouble();
      double angle =
          Math.clamp(part * usual * Math.pow(across(s) / usual, even) / radius, LEAST, MOST);
      angles = angles.with(s, laps.contains(s) ? RIGHT_OVER : dimples.angle(score, s, angle));
    }
    return angles;
  }

  /**
   * Scores between a panel and the one it is to lie under: they fold right over, inward. So do both
   * where one panel is between, scored to each by parallel sides: no other angles bring them
   * together.
   */
  private static Set<Integer> laps(Net net) {
    Set<Integer> laps = new HashSet<>();
    for (Join join : net.joins()) {
      if (join instanceof Join.Lap(int under, int over, _, _)) {
        for (int s : scores(net, under)) {
          int next = net.scores().get(s).across(under);
          if (next == over) {
            laps.add(s);
            continue;
          }
          for (int t : scores(net, next)) {
            if (net.scores().get(t).across(next) == over && areParallel(net, s, t)) {
              laps.add(s);
              laps.add(t);
            }
          }
        }
      }
    }
    return laps;
  }

  private static List<Integer> scores(Net net, int panel) {
    return IntStream.range(0, net.scores().size())
        .filter(s -> net.scores().get(s).isOf(panel))
        .boxed()
        .toList();
  }

  private static boolean areParallel(Net net, int one, int other) {
    Vec2 along = net.segment(net.scores().get(one).a()).direction();
    return Math.abs(along.cross(net.segment(net.scores().get(other).a()).direction()))
        <= AngleTolerance.UNSEEN.radians();
  }
}
