package facetwright.fold.close;

import facetwright.fold.pose.Closure;
import facetwright.fold.pose.ScoreAngles;
import facetwright.fold.pose.Standing;
import facetwright.fold.solve.LevenbergMarquardt;
import facetwright.fold.solve.SolverSettings;
import facetwright.fold.touch.Collision;
import facetwright.fold.touch.Collisions;
import facetwright.geom.AngleTolerance;
import facetwright.geom.Box2;
import facetwright.geom.Motion3;
import facetwright.geom.Vec3;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.Sense;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Finds fold angles that a net leaves open, so that its joins close: one point for every corner of
 * the made form, panels kept rigid, by damped least squares. Creases of unknown angle first pull
 * the way their sense says, which chooses the branch (a gusset in or out); at the end nothing
 * pulls.
 *
 * <p>A form counts as closed only where the ring it stands on goes round once and, where it is
 * asked to look, its panels are in nobody's way. Where no start leads to one, the rest that misses
 * least is the answer.
 *
 * <p>What it does not tell: whether there is another form that closes as well.
 */
public final class ClosingSolver {
  /** Scores nearer to flat, or to right over, have no side to be on. */
  private static final AngleTolerance FLAT = new AngleTolerance(1e-4);

  /** Panels that slant by less than 1° lie flat. */
  private static final double FLAT_COSINE = Math.cos(Math.toRadians(1));

  /** How far walls lean in at first where the form stands on a ring, in degrees. */
  private static final List<Double> LEANS = List.of(0.0, 20.0, 40.0, 60.0, -25.0);

  private final Net net;
  private final ScoreAngles given;
  private final SolverSettings settings;
  private final Unknowns unknowns;
  private final WeldedVertices welded;
  private final ClosingEquations equations;
  private final boolean looksForCollisions;
  private final double size;

  private ClosingSolver(
      Net net, ScoreAngles given, SolverSettings settings, boolean looksForCollisions) {
    this.net = net;
    this.looksForCollisions = looksForCollisions;
    this.given = given;
    this.settings = settings;
    this.unknowns = Unknowns.of(net, given);
    this.welded = WeldedVertices.of(net, unknowns, true, settings.card().forgivenStrain());
    this.equations =
        new ClosingEquations(net, unknowns, welded).joined(settings.card().caliper()).level(true);
    Box2 box = net.box();
    this.size = Math.max(box.width(), box.height());
  }

  /**
   * Solves for angles not yet known.
   *
   * @param given angles to keep
   */
  public static Solved solve(Net net, ScoreAngles given, SolverSettings settings) {
    return new ClosingSolver(net, given, settings, false).search(null);
  }

  /**
   * The same, but a form whose panels are in each other's way is none to stop at. That takes a look
   * at each that closes, so it is for nets that were found to close like that.
   */
  public static Solved solveClear(Net net, ScoreAngles given, SolverSettings settings) {
    return new ClosingSolver(net, given, settings, true).search(null);
  }

  /** The same, first from the angles of a net of as many scores: quick after a small change. */
  public static Solved solve(Net net, ScoreAngles given, SolverSettings settings, Solved former) {
    ScoreAngles first = former.suits(net) ? given.orElse(former.angles()) : null;
    return new ClosingSolver(net, given, settings, false).search(first);
  }

  /** The same, first from angles of as many scores where none is given. */
  public static Solved solve(
      Net net, ScoreAngles given, SolverSettings settings, ScoreAngles first) {
    return new ClosingSolver(net, given, settings, false).search(given.orElse(first));
  }

  private Solved search(ScoreAngles first) {
    // A seam may bring corners of a panel together, so that its score has no angle left.
    boolean isLost = equations.creases().size() < unknowns.scores().size();
    if (unknowns.isEmpty() || (isLost && !isApart())) {
      return nothing(0, 0);
    }
    StartAngles starts = new StartAngles(net, unknowns, welded, given, settings.starts().seed());
    RingStart ring = new RingStart(net, unknowns, welded);
    LevenbergMarquardt descent = null;
    Trial kept = null;
    int tried = 0;
    while (tried < settings.starts().most() && (kept == null || !kept.isGood(tried))) {
      int start = first == null ? tried : tried - 1;
      ScoreAngles guess = start < 0 ? first : guess(start, starts, ring);
      double[] points = points(start, guess, ring);
      var all =
          equations.folded(isRing(start, ring) ? equations.measured(guess, points) : guess, given);
      descent =
          descent == null
              ? new LevenbergMarquardt(all, points, size, settings)
              : descent.with(all, settings);
      tried++;
      Trial trial = trial(descent.from(points), starts);
      if (kept == null || trial.beats(kept)) {
        kept = trial;
      }
    }
    if (isLost) {
      return solved(kept.rest(), tried);
    }
    boolean moves = new Freedom(equations, given, descent, settings, size).moves(kept.rest());
    boolean isOther = moves || (kept.slant() > 0 && kept.isInItself());
    Optional<LevenbergMarquardt.Rest> taut = isOther ? taut(starts, ring) : Optional.empty();
    if (taut.isPresent()) {
      return solved(taut.get(), tried);
    }
    return moves && (kept.state().meets() || !isApart())
        ? nothing(kept.rest().iterations(), tried)
        : solved(kept.rest(), tried);
  }

  /** Whether some seam stays open however what is not known is folded: then it is known. */
  private boolean isApart() {
    double close = Closure.CLOSE_ENOUGH * size;
    return net.joins().stream()
        .anyMatch(
            j ->
                j instanceof Join.Seam s
                    && unknowns.has(s.a())
                    && unknowns.has(s.b())
                    && LeastGap.of(net, s.a(), s.b(), given, close) > 0);
  }

  /**
   * What becomes of a form that sways, or is in itself, when its ring is held level: where panels
   * lie flat all round, they are pulled out as far as they go. If something misses still, they are
   * too short, and if all meets, just long enough; it can't do both, lie level and move. Empty
   * where it is nothing of the kind.
   */
  private Optional<LevenbergMarquardt.Rest> taut(StartAngles starts, RingStart ring) {
    ClosingEquations level =
        new ClosingEquations(net, unknowns, welded).joined(settings.card().caliper()).level(false);
    for (int start = 0; ring.exists() && start < LEANS.size(); start++) {
      ScoreAngles guess = guess(start, starts, ring);
      double[] points = ring.points(guess, Math.toRadians(LEANS.get(start)));
      LevenbergMarquardt.Rest rest =
          new LevenbergMarquardt(
                  level.folded(level.measured(guess, points), given), points, size, settings)
              .from(points);
      Trial.State state = trial(rest, starts).state();
      boolean isPulledOut = state == Trial.State.OPEN || state == Trial.State.CLOSED;
      if (isPulledOut && isFlat(rest.x())) {
        return Optional.of(rest);
      }
    }
    return Optional.empty();
  }

  /** Whether a third of the panels along the ring lie in its plane. */
  private boolean isFlat(double[] x) {
    List<Integer> points = ClosingEquations.ring(net, unknowns, welded);
    Vec3 up = Standing.normal(Ring.at(points, x).corners()).unit();
    int along = 0;
    int flat = 0;
    for (int p = 0; p < net.panels().size(); p++) {
      int panel = p;
      if (unknowns.seeks(p)
          && IntStream.range(0, net.panels().get(p).outline().size())
                  .filter(c -> points.contains(welded.point(panel, c)))
                  .count()
              > 1) {
        along++;
        flat += Math.abs(Settled.pose(welded, x, net, p).ez().dot(up)) >= FLAT_COSINE ? 1 : 0;
      }
    }
    return 3 * flat >= along;
  }

  private Trial trial(LevenbergMarquardt.Rest rest, StartAngles starts) {
    double[] x = rest.x();
    Ring ring = Ring.at(ClosingEquations.ring(net, unknowns, welded), x);
    boolean meets =
        rest.worst() <= Closure.CLOSE_ENOUGH * size && SoughtLaps.lieOn(net, unknowns, welded, x);
    Trial.State state =
        !ring.turnsOnce()
            ? Trial.State.ASTRAY
            : !meets ? Trial.State.OPEN : isClear(x) ? Trial.State.CLOSED : Trial.State.IN_ITSELF;
    double slant = ring.slant();
    return new Trial(
        rest, state, against(starts, x), slant <= Closure.CLOSE_ENOUGH * size ? 0 : slant);
  }

  /** Whether no panels are in each other's way, as far as it looks. */
  private boolean isClear(double[] x) {
    if (!looksForCollisions) {
      return true;
    }
    List<Motion3> poses = new ArrayList<>();
    for (int p = 0; p < net.panels().size(); p++) {
      poses.add(unknowns.seeks(p) ? Settled.pose(welded, x, net, p) : Motion3.NONE);
    }
    return Collisions.among(net, poses, unknowns::seeks).stream().noneMatch(Collision::isInTheWay);
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
        : welded.middles(StartPoses.of(net, guess));
  }

  private int against(StartAngles starts, double[] x) {
    int against = 0;
    for (int i = 0; i < equations.creases().size(); i++) {
      int s = equations.scores().get(i);
      double angle = equations.creases().get(i).angle(x);
      boolean mountain = net.scores().get(s).sense() == Sense.MOUNTAIN;
      if (!given.isKnown(s)
          && !starts.isEitherWay(s)
          && Math.abs(angle) > FLAT.radians()
          && Math.abs(angle) < Math.PI - FLAT.radians()
          && angle > 0 != mountain) {
        against++;
      }
    }
    return against;
  }

  private Solved nothing(int iterations, int starts) {
    List<Double> strain = net.panels().stream().map(_ -> 0.0).toList();
    List<Motion3> poses = net.panels().stream().map(_ -> Motion3.NONE).toList();
    return new Solved(given, iterations, starts, 0, List.of(), strain, poses, Closure.NOT_SOLVED);
  }

  private Solved solved(LevenbergMarquardt.Rest rest, int starts) {
    ScoreAngles angles = given;
    for (int s : unknowns.scores()) {
      angles = angles.with(s, 0);
    }
    for (int i = 0; i < equations.creases().size(); i++) {
      int s = equations.scores().get(i);
      if (!given.isKnown(s)) {
        angles = angles.with(s, equations.creases().get(i).angle(rest.x()));
      }
    }
    return new Settled(net, unknowns, welded, rest).solved(angles, starts, settings, true);
  }
}
