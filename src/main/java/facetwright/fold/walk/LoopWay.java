package facetwright.fold.walk;

import facetwright.fold.close.ClosingEquations;
import facetwright.fold.close.Settled;
import facetwright.fold.close.Unknowns;
import facetwright.fold.close.WeldedVertices;
import facetwright.fold.pose.BaseCorners;
import facetwright.fold.pose.Dihedrals;
import facetwright.fold.pose.FoldTree;
import facetwright.fold.pose.ScoreAngles;
import facetwright.fold.solve.LevenbergMarquardt;
import facetwright.fold.solve.SolverSettings;
import facetwright.geom.Box2;
import facetwright.geom.Motion3;
import facetwright.geom.Polygon2;
import facetwright.geom.RoundOff;
import facetwright.net.Net;
import facetwright.net.Score;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * The way of panels in loops of scores, which all scores at a part of their angles would tear: the
 * rigid shapes whose angles are nearest to that part, in the sense of least squares, each score
 * counting by the reach of its panels. Joins are released.
 *
 * <p>The shapes are sought from the finished one backward, each from where the last two point, so
 * that the way comes down the branch that the form lies on; flat is where all branches meet. Halves
 * are taken until the curve through the shapes foretells those between. Then nothing is sought any
 * more: the curve is the way, the same from wherever it is entered.
 *
 * <p>What it does not promise: where rigid panels can't go all the way, neighbouring shapes lie far
 * apart and the card strains between them, as {@link Shape#strain} tells.
 */
final class LoopWay {
  /** How much angles count against lengths at the end of the way, as part; less before. */
  private static final double LEAN = 0.03;

  private static final int FEWEST = 32;
  private static final int MOST = 128;

  /** How far the curve may miss a shape between, as part of the net's size. */
  private static final double FORETOLD = RoundOff.SOLVED;

  /** Damping of a search that begins at a shape next to the one sought: hardly any. */
  private static final double HELD = 1e-9;

  /** The same where angles count as well, as part of how much they count. */
  private static final double NEARBY = 1e-2;

  /** The step, as part of the size, at which that search stops: what is left is held after. */
  private static final double NEAR_STEP = 1e-8;

  private final Net net;
  private final Unknowns looped;
  private final WeldedVertices welded;
  private final ClosingEquations equations;
  private final LevenbergMarquardt leaning;
  private final LevenbergMarquardt holding;
  private final ScoreAngles made;
  private final double size;
  private final int[] base;
  private final Evenly curve;

  /**
   * Where panels are, part of the way.
   *
   * @param poses for each panel in a loop where it is, one of its loop held; {@link Motion3#NONE}
   *     for all others
   * @param strain how far corners stand from a rigid panel, as part of its size, at most
   */
  record Shape(List<Motion3> poses, double strain) {}

  /**
   * @param angles where not known, those of the form count
   * @param form where each panel is when made
   */
  LoopWay(Net net, FoldTree tree, ScoreAngles angles, List<Motion3> form) {
    this.net = net;
    this.looped = LoopPanels.of(net);
    this.welded = WeldedVertices.of(net, looped, false, 0);
    this.equations = new ClosingEquations(net, looped, welded);
    Box2 box = net.box();
    this.size = Math.max(box.width(), box.height());
    double[] middles = welded.middles(form);
    this.holding =
        new LevenbergMarquardt(
            equations.rigid(),
            middles,
            size,
            SolverSettings.USUAL.nearby(HELD, SolverSettings.USUAL.steps().stepTolerance(), 20));
    this.made = all(angles, form);
    this.leaning =
        new LevenbergMarquardt(equations.leaning(made, LEAN), middles, size, SolverSettings.USUAL);
    this.base = bases(tree);
    this.curve = finer(new Evenly(coarse(form, tree.flat())));
  }

  private ScoreAngles all(ScoreAngles angles, List<Motion3> form) {
    ScoreAngles all = angles;
    for (int s : looped.scores()) {
      if (!angles.isKnown(s)) {
        Score score = net.scores().get(s);
        all =
            all.with(
                s,
                Dihedrals.turn(
                    form.get(score.a().panel()),
                    net.segment(score.a()),
                    form.get(score.b().panel())));
      }
    }
    return all;
  }

  /** For each panel in a loop the one that the tree comes to first of those it hangs together. */
  private int[] bases(FoldTree tree) {
    int[] of = new int[net.panels().size()];
    Arrays.setAll(of, p -> p);
    for (FoldTree.Branch step : tree.steps()) {
      if (isLooped(step)) {
        of[step.child()] = of[step.parent()];
      }
    }
    return of;
  }

  /** Whether both panels of a step are in loops. */
  boolean isLooped(FoldTree.Branch step) {
    return looped.seeks(step.parent()) && looped.seeks(step.child());
  }

  private List<double[]> coarse(List<Motion3> form, List<Motion3> flat) {
    List<double[]> back = new ArrayList<>();
    back.add(shape(1, welded.middles(form)));
    for (int k = FEWEST - 1; k > 0; k--) {
      double[] start = back.getLast().clone();
      if (back.size() > 1) {
        double[] before = back.get(back.size() - 2);
        Arrays.setAll(start, c -> 2 * start[c] - before[c]);
      }
      back.add(shape((double) k / FEWEST, start));
    }
    back.add(welded.middles(flat));
    Collections.reverse(back);
    return back;
  }

  private Evenly finer(Evenly coarse) {
    List<double[]> points = new ArrayList<>();
    double off = 0;
    for (int k = 0; k < coarse.steps(); k++) {
      double t = (k + 0.5) / coarse.steps();
      double[] foretold = coarse.at(t);
      double[] found = shape(t, foretold);
      for (int c = 0; c < found.length; c++) {
        off = Math.max(off, Math.abs(found[c] - foretold[c]));
      }
      points.add(coarse.points().get(k));
      points.add(found);
    }
    points.add(coarse.points().getLast());
    Evenly fine = new Evenly(points);
    return off <= FORETOLD * size || fine.steps() >= MOST ? fine : finer(fine);
  }

  /** The rigid shape with angles near to a part of the made ones. */
  private double[] shape(double t, double[] start) {
    double lean = LEAN * t;
    SolverSettings settings = SolverSettings.USUAL.nearby(NEARBY * lean * lean, NEAR_STEP, 15);
    LevenbergMarquardt there = leaning.with(equations.leaning(made.times(t), lean), settings);
    return held(holding.from(there.from(start).x()).x());
  }

  /** The same shape, the first panel of each loop where it lies in the net. */
  private double[] held(double[] x) {
    double[] y = new double[x.length];
    Motion3[] back = new Motion3[base.length];
    for (int p = 0; p < base.length; p++) {
      if (!looped.seeks(p)) {
        continue;
      }
      if (back[base[p]] == null) {
        back[base[p]] = Settled.pose(welded, x, net, base[p]).inverse();
      }
      for (int c = 0; c < net.panels().get(p).outline().size(); c++) {
        var at = back[base[p]].apply(welded.place(x, p, c));
        int i = 3 * welded.point(p, c);
        y[i] = at.x();
        y[i + 1] = at.y();
        y[i + 2] = at.z();
      }
    }
    return y;
  }

  /** Where the panels in loops are at t, 0 to 1. */
  Shape at(double t) {
    double[] x = curve.at(t);
    double strain = 0;
    List<Motion3> poses = new ArrayList<>();
    for (int p = 0; p < base.length; p++) {
      Motion3 pose = Motion3.NONE;
      if (looped.seeks(p)) {
        pose = Settled.pose(welded, x, net, p);
        strain = Math.max(strain, strain(x, p, pose));
      }
      poses.add(pose);
    }
    return new Shape(poses, strain);
  }

  private double strain(double[] x, int panel, Motion3 pose) {
    Polygon2 outline = net.panels().get(panel).outline();
    double off = 0;
    for (int c = 0; c < outline.size(); c++) {
      off = Math.max(off, pose.apply(outline.corner(c)).distance(welded.place(x, panel, c)));
    }
    return off / BaseCorners.size(outline);
  }
}
