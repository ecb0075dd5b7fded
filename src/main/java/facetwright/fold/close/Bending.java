package facetwright.fold.close;

import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.ScoreAngles;
import facetwright.fold.solve.LevenbergMarquardt;
import facetwright.fold.solve.SolverSettings;
import facetwright.geom.Box2;
import facetwright.geom.Motion3;
import facetwright.net.Net;
import java.util.List;

/**
 * How far panels have to bend for joins to meet that nearly do when folded by known angles. Corners
 * that meet become one point each; the points settle where the misses of all lengths and of all
 * angles are least in sum of squares.
 *
 * <p>What it does not tell: the least bend there is. Another way to share the misses may strain the
 * worst panel a little less.
 */
public final class Bending {
  /** A miss beyond this part of the net's longer side is no matter of bending. */
  private static final double NEARLY = 0.01;

  private Bending() {}

  /** Whether a form misses by so little that bending may close it. */
  public static boolean mayClose(Net net, FoldedForm form) {
    return form.gap() <= NEARLY * size(net);
  }

  /**
   * The form with its joins together.
   *
   * @param angles that the scores keep as far as they can
   * @param poses where the panels stand unbent
   */
  public static Solved of(
      Net net, ScoreAngles angles, List<Motion3> poses, SolverSettings settings) {
    Unknowns all = Unknowns.all(net);
    WeldedVertices welded = WeldedVertices.of(net, all, true, settings.card().forgivenStrain());
    ClosingEquations equations =
        new ClosingEquations(net, all, welded).joined(settings.card().caliper());
    double[] middles = welded.middles(poses);
    LevenbergMarquardt.Rest rest =
        new LevenbergMarquardt(equations.folded(angles, angles), middles, size(net), settings)
            .from(middles);
    return new Settled(net, all, welded, rest).solved(angles, 1, settings, false);
  }

  private static double size(Net net) {
    Box2 box = net.box();
    return Math.max(box.width(), box.height());
  }
}
