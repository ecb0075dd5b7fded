package facetwright.fold.close;

import facetwright.fold.pose.ScoreAngles;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.EdgeRef;
import facetwright.net.Net;
import facetwright.net.Score;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * How near two sides of a net come to each other at best, over all folds of the scores between
 * them: a bound from below that no folding beats, whatever else the net asks for.
 *
 * <p>The panels between the two sides, along the fewest scores of open angle, are a chain of rigid
 * panels on hinges. A point that stands r from a hinge moves by no more than r·δ when that hinge
 * turns by δ; so the gap at one choice of angles bounds the gap at all near it from below, and
 * halving the ranges of the angles where that bound is least, over and over, brings it up to the
 * least gap there is (branch and bound with a Lipschitz constant; S. Piyavskii 1972, B. Shubert
 * 1972, from memory).
 *
 * <p>What it does not tell: anything of sides on different pieces, and of chains of more than
 * {@value #MOST_HINGES} open scores. There, and where it would take too many halvings, it says 0.
 */
public final class LeastGap {
  private static final int MOST_HINGES = 5;

  /** So many halvings are made. */
  private static final int MOST_HALVINGS = 20_000;

  /** A bound this near to a gap that was found is near enough, as a part of it. */
  private static final double NEAR = 1e-3;

  private final Net net;
  private final ScoreAngles given;
  private final List<Arm> arms = new ArrayList<>();
  private int hinges;

  /**
   * A score that turns a part of the chain.
   *
   * @param at a point on it
   * @param along its direction, the staying panel to the left
   * @param angle by which it turns where that is given
   * @param open its number among the open ones, −1 where its angle is given
   */
  private record Hinge(Vec3 at, Vec3 along, double angle, int open) {
    Vec3 turn(Vec3 p, double by) {
      Vec3 v = p.minus(at);
      double c = Math.cos(by);
      return at.plus(v.times(c))
          .plus(along.cross(v).times(Math.sin(by)))
          .plus(along.times(along.dot(v) * (1 - c)));
    }

    Vec3 foot(Vec3 p) {
      return at.plus(along.times(along.dot(p.minus(at))));
    }
  }

  /**
   * The two ends of a side, and what turns them on the way to the panel in the middle.
   *
   * @param reaches for each end and each open hinge the farthest the end comes from it, in mm; 0
   *     for hinges of the other arm
   */
  @SuppressWarnings("ArrayRecordComponent") // Read alone, and never told apart.
  private record Arm(List<Vec3> ends, List<Hinge> way, double[][] reaches) {
    Vec3 end(int end, double[] angles) {
      Vec3 p = ends.get(end);
      for (Hinge h : way) {
        p = h.turn(p, h.open < 0 ? h.angle : angles[h.open]);
      }
      return p;
    }
  }

  /** Ranges of the open angles: middles and half widths, and the least gap there can be. */
  @SuppressWarnings("ArrayRecordComponent") // Read alone, and never told apart.
  private record Box(double[] middle, double[] half, double least) {}

  private LeastGap(Net net, ScoreAngles given) {
    this.net = net;
    this.given = given;
  }

  /**
   * The bound, in mm, for start meeting end and end meeting start; 0 where they come together, and
   * where nothing is known.
   *
   * @param given angles that are kept
   * @param meets a gap of as much is none, in mm
   */
  public static double of(Net net, EdgeRef a, EdgeRef b, ScoreAngles given, double meets) {
    LeastGap chain = new LeastGap(net, given);
    return chain.reaches(a, b) ? chain.bound(meets) : 0;
  }

  /**
   * No less than the least gap there is, from the bound on it, where that took no more halvings.
   */
  public static double enough(double bound) {
    return bound / (1 - NEAR);
  }

  /** The same over all folds of all scores. */
  public static double of(Net net, EdgeRef a, EdgeRef b, double meets) {
    ScoreAngles open = new ScoreAngles(Collections.nCopies(net.scores().size(), Double.NaN));
    return of(net, a, b, open, meets);
  }

  /** Finds the chain; false where there is none, or one of too many hinges. */
  private boolean reaches(EdgeRef a, EdgeRef b) {
    int[] by = new int[net.panels().size()];
    int[] cost = new int[by.length];
    Arrays.fill(by, -1);
    Arrays.fill(cost, Integer.MAX_VALUE);
    cost[a.panel()] = 0;
    ArrayDeque<Integer> open = new ArrayDeque<>(List.of(a.panel()));
    while (!open.isEmpty()) {
      int panel = open.remove();
      for (int s = 0; s < net.scores().size(); s++) {
        Score score = net.scores().get(s);
        if (score.a().panel() != panel && score.b().panel() != panel) {
          continue;
        }
        int next = score.across(panel);
        int more = cost[panel] + (given.isKnown(s) ? 0 : 1);
        if (more < cost[next]) {
          cost[next] = more;
          by[next] = s;
          open.add(next);
        }
      }
    }
    if (cost[b.panel()] > MOST_HINGES) {
      return false;
    }
    List<Integer> scores = new ArrayList<>();
    for (int p = b.panel(); p != a.panel(); p = net.scores().get(by[p]).across(p)) {
      scores.addFirst(by[p]);
    }
    hinges = cost[b.panel()];
    int half = 0;
    for (int passed = 0; half < scores.size() && passed < (hinges + 1) / 2; half++) {
      passed += given.isKnown(scores.get(half)) ? 0 : 1;
    }
    List<Integer> back = new ArrayList<>(scores.subList(half, scores.size()));
    Collections.reverse(back);
    arms.add(arm(a, scores.subList(0, half), 0));
    arms.add(arm(b, back, (int) scores.subList(0, half).stream().filter(this::isOpen).count()));
    return true;
  }

  private boolean isOpen(int score) {
    return !given.isKnown(score);
  }

  private Arm arm(EdgeRef side, List<Integer> scores, int firstOpen) {
    List<Hinge> way = new ArrayList<>();
    int panel = side.panel();
    int number = firstOpen;
    for (int s : scores) {
      panel = net.scores().get(s).across(panel);
      Score score = net.scores().get(s);
      Segment2 line = net.segment(score.a().panel() == panel ? score.a() : score.b());
      way.add(
          new Hinge(
              flat(line.from()),
              flat(line.direction()),
              given.foldBy(s),
              isOpen(s) ? number++ : -1));
    }
    Segment2 line = net.segment(side);
    List<Vec3> ends = List.of(flat(line.from()), flat(line.to()));
    double[][] reaches = new double[2][hinges];
    for (int end = 0; end < 2; end++) {
      // The end stays in a ball; an open hinge carries the ball's middle round the hinge.
      Vec3 middle = ends.get(end);
      double radius = 0;
      for (Hinge h : way) {
        if (h.open < 0) {
          middle = h.turn(middle, h.angle);
        } else {
          Vec3 foot = h.foot(middle);
          radius += foot.distance(middle);
          reaches[end][h.open] = radius;
          middle = foot;
        }
      }
    }
    return new Arm(ends, way, reaches);
  }

  private static Vec3 flat(Vec2 p) {
    return new Vec3(p.x(), p.y(), 0);
  }

  private double bound(double meets) {
    double[] all = new double[hinges];
    Arrays.fill(all, Math.PI);
    double[] flat = new double[hinges];
    double found = gap(flat, flat);
    PriorityQueue<Box> open = new PriorityQueue<>(Comparator.comparingDouble(Box::least));
    open.add(new Box(flat, all, hinges == 0 ? found : 0));
    for (int halvings = 0; halvings < MOST_HALVINGS; halvings++) {
      if (found <= meets) {
        return 0;
      }
      if (open.peek().least >= found * (1 - NEAR)) {
        break;
      }
      Box box = open.remove();
      int widest = widest(box);
      for (int sign = -1; sign <= 1; sign += 2) {
        double[] middle = box.middle.clone();
        double[] half = box.half.clone();
        half[widest] /= 2;
        middle[widest] += sign * half[widest];
        found = Math.min(found, gap(middle, flat));
        open.add(new Box(middle, half, Math.max(box.least, gap(middle, half))));
      }
    }
    double least = open.peek().least;
    return least > meets ? least : 0;
  }

  /** The gap at these angles, less what turning each by as much as told may take off. */
  private double gap(double[] angles, double[] turned) {
    double worst = 0;
    for (int end = 0; end < 2; end++) {
      double gap = arms.get(0).end(end, angles).distance(arms.get(1).end(1 - end, angles));
      for (int h = 0; h < hinges; h++) {
        gap -= turned[h] * reach(end, h);
      }
      worst = Math.max(worst, gap);
    }
    return worst;
  }

  private double reach(int end, int hinge) {
    return arms.get(0).reaches[end][hinge] + arms.get(1).reaches[1 - end][hinge];
  }

  /** The hinge whose range moves the ends most. */
  private int widest(Box box) {
    int widest = 0;
    double most = -1;
    for (int h = 0; h < hinges; h++) {
      double moves = box.half[h] * Math.max(reach(0, h), reach(1, h));
      if (moves > most) {
        most = moves;
        widest = h;
      }
    }
    return widest;
  }
}
