package facetwright.fold;

import facetwright.geom.Motion3;
import facetwright.net.Net;
import java.util.ArrayList;
import java.util.List;

/**
 * The way of a net from flat to made. The root panel of every piece stays where it is in the
 * finished form, so that nothing jumps: at 0 each piece lies flat in the plane of its root, at 1
 * the form is made. On the way the joins are released. Where scores close loops that a part of
 * every angle would tear, the panels stay rigid as far as they can and the angles are only near
 * that part.
 */
public final class FoldPath {
  private final Net net;
  private final List<Integer> roots;
  private final double tolerance;
  private final FoldTree tree;
  private final ScoreAngles angles;
  private final FoldedForm form;

  /**
   * @param roots for each panel the root of its piece
   * @param tolerance by which scores may miss before a loop has to be solved, in mm
   */
  FoldPath(
      Net net,
      List<Integer> roots,
      double tolerance,
      FoldTree tree,
      ScoreAngles angles,
      FoldedForm form) {
    this.net = net;
    this.roots = List.copyOf(roots);
    this.tolerance = tolerance;
    this.tree = tree;
    this.angles = angles;
    this.form = form;
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
   * @param t 0 flat to 1 made: every score is folded to t times its angle
   * @throws IllegalArgumentException outside 0 to 1
   */
  public List<Motion3> at(double t) {
    if (!(t >= 0 && t <= 1)) {
      throw new IllegalArgumentException("folding runs from 0 to 1, not to " + t);
    }
    if (t == 1) {
      return form.poses();
    }
    List<Motion3> local = local(t);
    List<Motion3> poses = new ArrayList<>();
    for (int p = 0; p < local.size(); p++) {
      Motion3 root = local.get(roots.get(p)).inverse();
      poses.add(local.get(p).then(root).then(form.poses().get(roots.get(p))));
    }
    return List.copyOf(poses);
  }

  private List<Motion3> local(double t) {
    ScoreAngles part = angles.times(t);
    List<Motion3> local = tree.fold(part);
    boolean torn =
        form.closure() != Closure.NOT_SOLVED
            && Gaps.tears(net, local, tree.loops(), part).stream()
                .anyMatch(tear -> tear.mm() > tolerance);
    return torn ? new LoopWay(net, angles).at(t, local) : local;
  }
}
