package facetwright.fold.walk;

import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldTree;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.Gaps;
import facetwright.fold.pose.RootPanels;
import facetwright.fold.pose.ScoreAngles;
import facetwright.geom.Motion3;
import facetwright.net.FoldAngle;
import facetwright.net.Net;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The way of a net from flat to made, smooth and without jumps. The root panel of every piece stays
 * where it is in the finished form: at 0 each piece lies flat in the plane of its root, at 1 the
 * form is made. On the way the joins are released.
 *
 * <p>Every score folds to the same part of its angle, by the exact product of turns. Where scores
 * close loops that this would tear, the panels stay rigid as far as they can and the angles are as
 * near to that part as that allows. A form that stands only with strain, or torn, is come to over
 * the last eighth of the way.
 *
 * <p>Safe for use by several threads; loops are solved once, when a state is first asked for.
 */
public final class FoldPath {
  /** Where on the way all parts are made and stand apart, when they come together afterwards. */
  public static final double APART = 0.75;

  /** Even parts at which to see whether the product of turns tears. */
  private static final int LOOKS = 16;

  /** How far from 180° a score is that is folded right over, card on card, in radians. */
  private static final double NEARLY_OVER = Math.toRadians(10);

  private final Net net;
  private final double tolerance;
  private final FoldTree tree;
  private final ScoreAngles angles;
  private final FoldedForm form;
  private Solution solution;

  /** What has to be found once. */
  private record Solution(Optional<LoopWay> loops, Arrival arrival) {}

  /**
   * The net part of the way.
   *
   * @param t 0 flat to 1 made
   * @param poses for each panel the motion from its place in the flat net
   * @param strain by how much a panel has to bend: how far a corner stands from where the rigid
   *     panel would have it, as part of the panel's size, at most; 0 where nothing bends
   * @param tear how far the two sides of a score miss each other, in mm, at most
   */
  public record State(double t, List<Motion3> poses, double strain, double tear) {
    public State {
      poses = List.copyOf(poses);
    }
  }

  /**
   * @param tolerance by which scores may miss before a loop has to be solved, in mm
   */
  public FoldPath(Net net, double tolerance, FoldTree tree, ScoreAngles angles, FoldedForm form) {
    this.net = net;
    this.tolerance = tolerance;
    this.tree = tree;
    this.angles = angles;
    this.form = form;
  }

  /**
   * The way to a form that was found before, without seeking it again: by the angles that it has,
   * where the net does not give them. A form does not tell the way where it is not solved, or where
   * a score is folded right over to a side that the net does not say.
   *
   * @param form the folded form of the net
   */
  public static Optional<FoldPath> to(Net net, FoldedForm form) {
    ScoreAngles angles = ScoreAngles.nominal(net).orElse(ScoreAngles.of(net, form));
    boolean isTold =
        form.closure() != Closure.NOT_SOLVED
            && IntStream.range(0, net.scores().size())
                .noneMatch(
                    s ->
                        net.scores().get(s).angle() instanceof FoldAngle.ToSolve
                            && Math.abs(angles.foldBy(s)) > Math.PI - NEARLY_OVER);
    if (!isTold) {
      return Optional.empty();
    }
    FoldTree tree = FoldTree.of(net, RootPanels.of(net, net.pieceOfPanel()), angles);
    return Optional.of(new FoldPath(net, Closure.within(net).mm(), tree, angles, form));
  }

  /** The end of the way. */
  public FoldedForm form() {
    return form;
  }

  /** The angles it is folded by, those found from tabs among them. */
  public ScoreAngles angles() {
    return angles;
  }

  /**
   * Where each panel is, part of the way.
   *
   * @param t 0 flat to 1 made: every score is folded to t times its angle, or as near to that as
   *     rigid panels allow. Where parts go to each other, all are made and stand apart at {@link
   *     #APART}, come together from there, and are together at 1
   * @throws IllegalArgumentException outside 0 to 1
   */
  public List<Motion3> at(double t) {
    if (!form.together().isSome()) {
      return state(t).poses();
    }
    return t <= APART
        ? state(t / APART).poses()
        : Gathering.at(net, form, Math.min(1, (t - APART) / (1 - APART)));
  }

  /**
   * Where each panel is part of the way, and what the card suffers there.
   *
   * @throws IllegalArgumentException outside 0 to 1
   */
  State state(double t) {
    if (!(t >= 0 && t <= 1)) {
      throw new IllegalArgumentException("folding runs from 0 to 1, not to " + t);
    }
    if (t == 1) {
      return new State(t, form.poses(), form.strain(), tear(form.poses()));
    }
    Solution found = solution();
    Optional<LoopWay.Shape> shape = found.loops.map(loops -> loops.at(t));
    double strain = shape.map(LoopWay.Shape::strain).orElse(0.0);
    List<Motion3> poses = found.arrival.at(t, placed(t, found.loops, shape));
    return new State(
        t, poses, Math.max(strain, found.arrival.part(t) * form.strain()), tear(poses));
  }

  private synchronized Solution solution() {
    if (solution == null) {
      Optional<LoopWay> loops =
          tearsOnTheWay()
              ? Optional.of(new LoopWay(net, tree, angles, form.poses()))
              : Optional.empty();
      List<Motion3> released = placed(1, loops, loops.map(way -> way.at(1)));
      solution = new Solution(loops, new Arrival(net, released, form.poses()));
    }
    return solution;
  }

  private boolean tearsOnTheWay() {
    if (form.closure() == Closure.NOT_SOLVED || tree.loops().isEmpty()) {
      return false;
    }
    for (int i = 1; i <= LOOKS; i++) {
      ScoreAngles part = angles.times((double) i / LOOKS);
      if (Gaps.tears(net, tree.fold(part), tree.loops(), part).stream()
          .anyMatch(tear -> tear.mm() > tolerance)) {
        return true;
      }
    }
    return false;
  }

  /** Each panel carried along from the root of its piece, which is where the form has it. */
  private List<Motion3> placed(double t, Optional<LoopWay> loops, Optional<LoopWay.Shape> shape) {
    List<Motion3> poses = new ArrayList<>(form.poses());
    for (FoldTree.Branch step : tree.steps()) {
      Motion3 turn;
      if (loops.isPresent() && loops.get().isLooped(step)) {
        List<Motion3> looped = shape.orElseThrow().poses();
        turn = looped.get(step.child()).then(looped.get(step.parent()).inverse());
      } else {
        turn = FoldTree.turn(net, step.score(), step.parent(), t * angles.foldBy(step.score()));
      }
      poses.set(step.child(), turn.then(poses.get(step.parent())));
    }
    return poses;
  }

  private double tear(List<Motion3> poses) {
    return net.scores().stream()
        .mapToDouble(s -> Gaps.seam(net, poses, s.a(), s.b()))
        .max()
        .orElse(0);
  }
}
