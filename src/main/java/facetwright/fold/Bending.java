package facetwright.fold;

import facetwright.fold.solve.Descent;
import facetwright.fold.solve.SolverSettings;
import facetwright.geom.Box2;
import facetwright.geom.Motion3;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec3;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.Net;
import java.util.ArrayList;
import java.util.List;

/**
 * How far panels have to bend for joins to meet that nearly do when folded by known angles. Corners
 * that meet become one point each; the points settle where the misses of all lengths and of all
 * angles are least in sum of squares.
 *
 * <p>What it does not tell: the least bend there is. Another way to share the misses may strain the
 * worst panel a little less.
 */
final class Bending {
  /** A miss beyond this part of the net's longer side is no matter of bending. */
  private static final double NEARLY = 0.01;

  private final Net net;
  private final Unknowns sought;
  private final Welded welded;
  private final double[] x;

  private Bending(Net net, Unknowns sought, Welded welded, double[] x) {
    this.net = net;
    this.sought = sought;
    this.welded = welded;
    this.x = x;
  }

  /** Whether a form misses by so little that bending may close it. */
  static boolean mayClose(Net net, FoldedForm form) {
    return form.gap() <= NEARLY * size(net);
  }

  /**
   * The form with its joins together.
   *
   * @param angles that the scores keep as far as they can
   * @param poses where the panels stand unbent
   */
  static Solved of(Net net, ScoreAngles angles, List<Motion3> poses, SolverSettings settings) {
    Unknowns all = Unknowns.all(net);
    Welded welded = Welded.of(net, all, true, settings.forgivenStrain());
    ClosingEquations equations = new ClosingEquations(net, all, welded).joined(settings.caliper());
    Descent.Rest rest =
        new Descent(welded.points(), equations.folded(angles, angles), size(net), settings)
            .from(welded.middles(poses));
    return new Bending(net, all, welded, rest.x()).solved(angles, rest, settings);
  }

  private static double size(Net net) {
    Box2 box = net.box();
    return Math.max(box.width(), box.height());
  }

  private Solved solved(ScoreAngles angles, Descent.Rest rest, SolverSettings settings) {
    List<Motion3> poses = new ArrayList<>();
    List<Double> strain = new ArrayList<>();
    for (int p = 0; p < net.panels().size(); p++) {
      boolean seeks = sought.seeks(p);
      Motion3 pose = seeks ? ClosingSolver.pose(welded, x, net, p) : Motion3.NONE;
      poses.add(pose);
      strain.add(seeks ? strain(p, pose) : 0);
    }
    List<JoinGap> gaps = gaps();
    double gap = gaps.stream().mapToDouble(JoinGap::mm).max().orElse(0);
    double most = strain.stream().mapToDouble(s -> s).max().orElse(0);
    double close = Folding.CLOSE_ENOUGH * size(net);
    Closure verdict =
        gap > close || most > settings.forgivenStrain() ? Closure.OPEN : Closure.CLOSES_WITH_STRAIN;
    return new Solved(angles, rest.iterations(), 1, rest.worst(), gaps, strain, poses, verdict);
  }

  private double strain(int panel, Motion3 pose) {
    Polygon2 outline = net.panels().get(panel).outline();
    double off = 0;
    for (int c = 0; c < outline.size(); c++) {
      off = Math.max(off, pose.apply(outline.corner(c)).distance(welded.place(x, panel, c)));
    }
    return off / ClosingEquations.size(outline);
  }

  private List<JoinGap> gaps() {
    List<JoinGap> gaps = new ArrayList<>();
    for (int j = 0; j < net.joins().size(); j++) {
      if (net.joins().get(j) instanceof Join.Seam(EdgeRef a, EdgeRef b, _, _)
          && sought.has(a)
          && sought.has(b)) {
        gaps.add(
            new JoinGap(
                j, Math.max(place(a, 0).distance(place(b, 1)), place(a, 1).distance(place(b, 0)))));
      }
    }
    return gaps;
  }

  private Vec3 place(EdgeRef side, int end) {
    return welded.place(x, side.panel(), side.edge() + end);
  }
}
