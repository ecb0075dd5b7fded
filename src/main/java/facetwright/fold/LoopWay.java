package facetwright.fold;

import facetwright.fold.solve.Descent;
import facetwright.fold.solve.SolverSettings;
import facetwright.geom.Box2;
import facetwright.geom.Motion3;
import facetwright.net.Net;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Part of the way for a net whose scores close loops: all of them at a part of their angles would
 * tear it. Panels stay rigid as far as they can while every crease is pulled to that part; joins
 * are released. Pulling ends only where the pull has found its rest, so that the way is the same
 * from wherever it is entered.
 */
final class LoopWay {
  /** So strong that the pull finds its rest, so weak that panels hardly bend under it. */
  private static final double PULL = 0.03;

  private static final int PULL_STEPS = 40;

  private final Net net;
  private final ScoreAngles angles;
  private final Welded welded;
  private final ClosingEquations equations;
  private final Descent descent;
  private final SolverSettings settings = SolverSettings.USUAL.pulling(PULL, PULL_STEPS);

  LoopWay(Net net, ScoreAngles angles) {
    this.net = net;
    this.angles = angles;
    Unknowns all =
        new Unknowns(
            net.panels().stream().map(_ -> true).toList(),
            IntStream.range(0, net.scores().size()).boxed().toList());
    this.welded = Welded.of(net, all, false, 0);
    this.equations = new ClosingEquations(net, all, welded);
    Box2 box = net.box();
    this.descent =
        new Descent(
            welded.points(),
            equations.folded(angles, none()),
            Math.max(box.width(), box.height()),
            settings);
  }

  private ScoreAngles none() {
    return new ScoreAngles(net.scores().stream().map(_ -> Double.NaN).toList());
  }

  /**
   * Where each panel is while the root of its piece stays in the flat net.
   *
   * @param t 0 to 1
   * @param from where the search begins
   */
  List<Motion3> at(double t, List<Motion3> from) {
    Descent there = descent.with(equations.folded(angles.times(t), none()), settings);
    double[] x = there.from(welded.middles(from)).x();
    List<Motion3> poses = new ArrayList<>();
    for (int p = 0; p < net.panels().size(); p++) {
      poses.add(ClosingSolver.pose(welded, x, net, p));
    }
    return poses;
  }
}
