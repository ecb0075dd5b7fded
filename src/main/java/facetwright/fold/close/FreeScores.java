package facetwright.fold.close;

import facetwright.fold.pose.ScoreAngles;
import facetwright.fold.solve.Crease;
import facetwright.fold.solve.LevenbergMarquardt;
import facetwright.fold.solve.SolverSettings;
import facetwright.geom.Box2;
import facetwright.net.Net;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * The scores of open angle that nothing determines: those that can still be folded when all joins
 * are closed as well as one try closes them.
 *
 * <p>What it does not detect: a score that is held in this form and would be free in another.
 */
public final class FreeScores {
  private FreeScores() {}

  /**
   * Its scores, in order; all open ones where no single one of them stands out.
   *
   * @param given angles that are known
   */
  public static List<Integer> of(Net net, ScoreAngles given, SolverSettings settings) {
    List<Integer> open =
        IntStream.range(0, net.scores().size())
            .filter(s -> !given.isKnown(s) && !net.scores().get(s).isOfTab(net))
            .boxed()
            .toList();
    if (open.isEmpty()) {
      return IntStream.range(0, net.scores().size())
          .filter(s -> !given.isKnown(s))
          .boxed()
          .toList();
    }
    Unknowns unknowns = Unknowns.of(net, given);
    if (unknowns.isEmpty()) {
      return open;
    }
    Set<Integer> held = held(net, given, unknowns, settings);
    List<Integer> free = open.stream().filter(s -> !held.contains(s)).toList();
    return free.isEmpty() ? open : free;
  }

  private static Set<Integer> held(
      Net net, ScoreAngles given, Unknowns unknowns, SolverSettings settings) {
    WeldedVertices welded =
        WeldedVertices.of(net, unknowns, true, settings.card().forgivenStrain());
    ClosingEquations equations =
        new ClosingEquations(net, unknowns, welded).joined(settings.card().caliper());
    Box2 box = net.box();
    ScoreAngles guess =
        new StartAngles(net, unknowns, welded, given, settings.starts().seed()).guess(0);
    double[] begin = welded.middles(StartPoses.of(net, guess));
    LevenbergMarquardt descent =
        new LevenbergMarquardt(
            equations.folded(guess, given), begin, Math.max(box.width(), box.height()), settings);
    double[] x = descent.from(begin).x();
    List<double[]> motions = new ArrayList<>();
    for (Crease crease : equations.creases()) {
      motions.add(motion(crease, x));
    }
    List<Double> free = descent.free(x, motions);
    Set<Integer> held = new HashSet<>();
    for (int i = 0; i < motions.size(); i++) {
      if (free.get(i) <= settings.loose()) {
        held.add(equations.scores().get(i));
      }
    }
    return held;
  }

  /** How the angle of a crease changes with the coordinates of the points. */
  private static double[] motion(Crease crease, double[] x) {
    double[] motion = new double[x.length];
    double[] slope = new double[12];
    crease.at(x, new double[1], slope);
    for (int c = 0; c < slope.length; c++) {
      motion[3 * crease.points().get(c / 3) + c % 3] += slope[c];
    }
    return motion;
  }
}
