package facetwright.fold;

import facetwright.fold.close.ClosingEquations;
import facetwright.fold.close.Unknowns;
import facetwright.fold.close.WeldedVertices;
import facetwright.fold.pose.ScoreAngles;
import facetwright.fold.solve.Equation;
import facetwright.fold.solve.LevenbergMarquardt;
import facetwright.fold.solve.SolverSettings;
import facetwright.geom.Vec3;
import facetwright.net.Net;
import java.util.List;

/**
 * What the closing solver has to bring to zero for a net, and where it begins: its own equations,
 * without what only shows the way.
 *
 * @param points how many points
 * @param start their coordinates to begin with
 * @param size of the net, in mm
 */
public record Problem(int points, List<Equation> equations, List<Double> start, double size) {

  /**
   * A sheet of parallelograms of which one angle is told, beginning as the same sheet folded less
   * and with every corner out of place, by up to so much in mm, the same every time.
   */
  public static Problem of(Miura sheet, double less, double out) {
    Net net = sheet.net(s -> s == 0);
    ScoreAngles given = ScoreAngles.nominal(net);
    Unknowns unknowns = Unknowns.of(net, given);
    WeldedVertices welded = WeldedVertices.of(net, unknowns, true, 0);
    List<Equation> equations =
        new ClosingEquations(net, unknowns, welded)
            .joined(0).folded(given, given).stream().filter(e -> !e.isPull()).toList();
    Miura begin =
        new Miura(
            sheet.a(),
            sheet.b(),
            sheet.gamma(),
            sheet.theta() - less,
            sheet.columns(),
            sheet.rows());
    Double[] x = new Double[3 * welded.points()];
    for (int j = 0; j < sheet.rows(); j++) {
      for (int i = 0; i < sheet.columns(); i++) {
        for (int c = 0; c < 4; c++) {
          Vec3 at = begin.folded(i + (c == 1 || c == 2 ? 1 : 0), j + (c > 1 ? 1 : 0));
          int p = welded.point(sheet.panel(i, j), c);
          x[3 * p] = at.x() + out * Math.sin(7 * p);
          x[3 * p + 1] = at.y() + out * Math.sin(7 * p + 2);
          x[3 * p + 2] = at.z() + out * Math.sin(7 * p + 4);
        }
      }
    }
    return new Problem(
        welded.points(), equations, List.of(x), Math.max(net.box().width(), net.box().height()));
  }

  public LevenbergMarquardt descent(SolverSettings settings) {
    return new LevenbergMarquardt(equations, begin(), size, settings);
  }

  public double[] begin() {
    return start.stream().mapToDouble(d -> d).toArray();
  }

  public int rows() {
    return equations.stream().mapToInt(Equation::rows).sum();
  }
}
