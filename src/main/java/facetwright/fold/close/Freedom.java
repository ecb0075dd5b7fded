package facetwright.fold.close;

import facetwright.fold.pose.Closure;
import facetwright.fold.pose.ScoreAngles;
import facetwright.fold.solve.Crease;
import facetwright.fold.solve.LevenbergMarquardt;
import facetwright.fold.solve.SolverSettings;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Whether a form can still be moved, its joins meeting as well as before. The changes of all open
 * angles are mixed by chance; what of them the equations leave free is a motion. A form that lies
 * flat is often free to begin to move and yet can't, for the misses grow with the square of the
 * way: so it is pushed a little that way and let go. What is held comes back.
 */
final class Freedom {
  private static final int PROBES = 3;

  /** How far it is pushed, as part of the net's size. */
  private static final double PUSH = 0.02;

  /** Held is what comes back by more than half of the push. */
  private static final double BACK = 0.5;

  /** As much more counts as no more, as part of a miss. */
  private static final double MORE = 1e-3;

  private final ClosingEquations equations;
  private final ScoreAngles given;
  private final LevenbergMarquardt descent;
  private final SolverSettings settings;
  private final double size;

  /**
   * @param descent of these equations
   * @param size of the net, in mm
   */
  Freedom(
      ClosingEquations equations,
      ScoreAngles given,
      LevenbergMarquardt descent,
      SolverSettings settings,
      double size) {
    this.equations = equations;
    this.given = given;
    this.descent = descent;
    this.settings = settings;
    this.size = size;
  }

  /** Whether anything moves where the points are, and misses no more for it. */
  boolean moves(LevenbergMarquardt.Rest rest) {
    double[] x = rest.x();
    double miss = Math.max(rest.worst(), Closure.CLOSE_ENOUGH * size) * (1 + MORE);
    SplittableRandom chance = new SplittableRandom(settings.starts().seed());
    for (int probe = 0; probe < PROBES; probe++) {
      double[] motion = mixed(x, chance);
      if (descent.free(x, motion) > settings.loose() && stays(x, descent.loose(x, motion), miss)) {
        return true;
      }
    }
    return false;
  }

  private double[] mixed(double[] x, SplittableRandom chance) {
    double[] motion = new double[x.length];
    double[] miss = new double[1];
    double[] slope = new double[12];
    for (Crease crease : open()) {
      crease.at(x, miss, slope);
      double factor = chance.nextDouble(-1, 1);
      for (int c = 0; c < 12; c++) {
        motion[3 * crease.points().get(c / 3) + c % 3] += factor * slope[c];
      }
    }
    return motion;
  }

  private List<Crease> open() {
    List<Crease> open = new ArrayList<>();
    for (int i = 0; i < equations.creases().size(); i++) {
      if (!given.isKnown(equations.scores().get(i))) {
        open.add(equations.creases().get(i));
      }
    }
    return open;
  }

  /** Whether points pushed along a free motion stay away, and miss by no more. */
  private boolean stays(double[] x, double[] motion, double miss) {
    double most = 0;
    for (double c : motion) {
      most = Math.max(most, Math.abs(c));
    }
    double[] pushed = x.clone();
    for (int i = 0; i < x.length; i++) {
      pushed[i] += PUSH * size / most * motion[i];
    }
    SolverSettings letGo = settings.withoutPull();
    LevenbergMarquardt.Rest rest = descent.with(equations.folded(given, given), letGo).from(pushed);
    return rest.worst() <= miss && turned(x, rest.x()) > BACK * turned(x, pushed);
  }

  /** The largest change of an open angle, in radians. */
  private double turned(double[] from, double[] to) {
    return open().stream()
        .mapToDouble(c -> Math.abs(Math.IEEEremainder(c.angle(to) - c.angle(from), 2 * Math.PI)))
        .max()
        .orElse(0);
  }
}
