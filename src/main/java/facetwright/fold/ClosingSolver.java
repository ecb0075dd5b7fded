package facetwright.fold;

import facetwright.fold.solve.Crease;
import facetwright.fold.solve.Descent;
import facetwright.fold.solve.SolverSettings;
import facetwright.geom.Box2;
import facetwright.geom.Motion3;
import facetwright.geom.Vec3;
import facetwright.net.Net;
import facetwright.net.Sense;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Finds fold angles that a net leaves open, so that its joins close: one point for every corner of
 * the made form, panels kept rigid, by damped least squares. Creases of unknown angle first pull
 * the way their sense says, which chooses the branch (a gusset in or out); at the end nothing
 * pulls.
 *
 * <p>What it does not tell: whether panels pass through each other, and whether there is another
 * form that closes as well.
 */
public final class ClosingSolver {
  /** Scores nearer to flat than this have no side to be on, in radians. */
  private static final double FLAT = 1e-4;

  private static final int PROBES = 3;

  /** How far walls lean in at first where the form stands on a ring, in degrees. */
  private static final List<Double> LEANS = List.of(0.0, 20.0, 40.0, 60.0, -25.0);

  private static final int LEVEL_STARTS = 6;

  /** So many iterations from a start tell that it was no good one. */
  private static final int WANDERED = 15;

  private final Net net;
  private final ScoreAngles given;
  private final SolverSettings settings;
  private final Unknowns unknowns;
  private final Welded welded;
  private final ClosingEquations equations;
  private final double size;

  private ClosingSolver(Net net, ScoreAngles given, Unknowns unknowns, SolverSettings settings) {
    this.net = net;
    this.given = given;
    this.settings = settings;
    this.unknowns = unknowns;
    this.welded = Welded.of(net, unknowns, true, settings.card().forgivenStrain());
    this.equations =
        new ClosingEquations(net, unknowns, welded).joined(settings.card().caliper()).level();
    Box2 box = net.box();
    this.size = Math.max(box.width(), box.height());
  }

  /** Solves for the angles that the net itself leaves open. */
  public static Solved solve(Net net) {
    return solve(net, ScoreAngles.nominal(net), SolverSettings.USUAL);
  }

  /**
   * Solves for angles not yet known.
   *
   * @param given angles to keep
   */
  public static Solved solve(Net net, ScoreAngles given, SolverSettings settings) {
    return new ClosingSolver(net, given, Unknowns.of(net, given), settings).search(null);
  }

  /** The same, first from the angles of a net of as many scores: quick after a small change. */
  public static Solved solve(Net net, ScoreAngles given, SolverSettings settings, Solved former) {
    ScoreAngles first = former.suits(net) ? given.orElse(former.angles()) : null;
    return new ClosingSolver(net, given, Unknowns.of(net, given), settings).search(first);
  }

  private Solved search(ScoreAngles first) {
    if (unknowns.isEmpty() || equations.creases().isEmpty()) {
      return nothing(0, 0);
    }
    StartAngles starts = new StartAngles(net, unknowns, welded, given, settings.starts().seed());
    RingStart ring = new RingStart(net, unknowns, welded);
    Descent descent = null;
    Descent.Rest best = null;
    Trial kept = null;
    int tried = 0;
    while (tried < settings.starts().most() && (kept == null || !kept.isGood(tried))) {
      int start = first == null ? tried : tried - 1;
      ScoreAngles guess = start < 0 ? first : guess(start, starts, ring);
      double[] points = points(start, guess, ring);
      var all =
          equations.folded(isRing(start, ring) ? equations.measured(guess, points) : guess, given);
      descent =
          descent == null ? new Descent(all, points, size, settings) : descent.with(all, settings);
      Descent.Rest rest = descent.from(points);
      tried++;
      Trial trial =
          new Trial(
              rest.worst() <= Folding.CLOSE_ENOUGH * size
                  && Laps.lieOn(net, unknowns, welded, rest.x()),
              against(starts, rest.x()),
              slant(rest.x()),
              rest.iterations());
      if (kept == null || trial.beats(kept, rest.worst(), best.worst())) {
        best = rest;
        kept = trial;
      }
    }
    if (!isDetermined(descent, best.x())) {
      return nothing(best.iterations(), tried);
    }
    return solved(best, tried);
  }

  private static boolean isRing(int start, RingStart ring) {
    return ring.exists() && start >= 0 && start < LEANS.size();
  }

  private static ScoreAngles guess(int start, StartAngles starts, RingStart ring) {
    if (isRing(start, ring)) {
      return starts.guess(ring.scores(), 2 * Math.toRadians(LEANS.get(start)));
    }
    return starts.guess(ring.exists() ? start - LEANS.size() : start);
  }

  private double[] points(int start, ScoreAngles guess, RingStart ring) {
    return isRing(start, ring)
        ? ring.points(guess, Math.toRadians(LEANS.get(start)))
        : welded.middles(Folding.startPoses(net, guess));
  }

  /**
   * What came of a start: whether it closed, how many scores went against their sense, and how far
   * the corners it is to stand on are from level. A form that does not stand level may be what
   * there is; for a level one a few more starts are made, as where the search wandered far and may
   * have come to rest in a form not meant.
   */
  private record Trial(boolean closed, int against, double slant, int iterations) {
    boolean isGood(int tried) {
      boolean straight = slant == 0 && iterations <= WANDERED;
      return closed && against == 0 && (straight || tried >= LEVEL_STARTS);
    }

    boolean beats(Trial other, double miss, double otherMiss) {
      if (closed != other.closed) {
        return closed;
      }
      if (!closed) {
        return miss < otherMiss;
      }
      if (against != other.against) {
        return against < other.against;
      }
      return slant == other.slant ? iterations < other.iterations : slant < other.slant;
    }
  }

  /** How far the corners it stands on are from level, in mm; 0 where it is next to nothing. */
  private double slant(double[] x) {
    List<Integer> ring = ClosingEquations.ring(net, unknowns, welded);
    if (ring.size() <= 3) {
      return 0;
    }
    List<Vec3> corners =
        ring.stream().map(i -> new Vec3(x[3 * i], x[3 * i + 1], x[3 * i + 2])).toList();
    Vec3 normal = Standing.normal(corners);
    if (normal.length() == 0) {
      return size;
    }
    Vec3 up = normal.unit();
    double low = corners.stream().mapToDouble(up::dot).min().orElse(0);
    double high = corners.stream().mapToDouble(up::dot).max().orElse(0);
    return high - low <= Folding.CLOSE_ENOUGH * size ? 0 : high - low;
  }

  private int against(StartAngles starts, double[] x) {
    int against = 0;
    for (int i = 0; i < equations.creases().size(); i++) {
      int s = equations.scores().get(i);
      double angle = equations.creases().get(i).angle(x);
      boolean mountain = net.scores().get(s).sense() == Sense.MOUNTAIN;
      if (!given.isKnown(s)
          && !starts.isEitherWay(s)
          && Math.abs(angle) > FLAT
          && angle > 0 != mountain) {
        against++;
      }
    }
    return against;
  }

  /** Mixes the changes of all open angles by chance and asks whether the equations hold them. */
  private boolean isDetermined(Descent descent, double[] x) {
    if (equations.creases().size() < unknowns.scores().size()) {
      return false;
    }
    SplittableRandom chance = new SplittableRandom(settings.starts().seed());
    for (int probe = 0; probe < PROBES; probe++) {
      double[] motion = new double[x.length];
      double[] miss = new double[1];
      double[] slope = new double[12];
      for (int i = 0; i < equations.creases().size(); i++) {
        Crease crease = equations.creases().get(i);
        if (given.isKnown(equations.scores().get(i))) {
          continue;
        }
        crease.at(x, miss, slope);
        double factor = chance.nextDouble(-1, 1);
        for (int c = 0; c < 12; c++) {
          motion[3 * crease.points().get(c / 3) + c % 3] += factor * slope[c];
        }
      }
      if (descent.free(x, motion) > settings.loose()) {
        return false;
      }
    }
    return true;
  }

  private Solved nothing(int iterations, int starts) {
    List<Double> strain = net.panels().stream().map(_ -> 0.0).toList();
    List<Motion3> poses = net.panels().stream().map(_ -> Motion3.NONE).toList();
    return new Solved(given, iterations, starts, 0, List.of(), strain, poses, Closure.NOT_SOLVED);
  }

  private Solved solved(Descent.Rest rest, int starts) {
    ScoreAngles angles = given;
    for (int i = 0; i < equations.creases().size(); i++) {
      int s = equations.scores().get(i);
      if (!given.isKnown(s)) {
        angles = angles.with(s, equations.creases().get(i).angle(rest.x()));
      }
    }
    return new Settled(net, unknowns, welded, rest).solved(angles, starts, settings, true);
  }
}
