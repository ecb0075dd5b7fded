package facetwright.fold;

import facetwright.geom.Motion3;
import java.util.ArrayList;
import java.util.List;

/**
 * The way of a net from flat to made. The root panel of every piece stays where it is in the
 * finished form, so that nothing jumps: at 0 each piece lies flat in the plane of its root, at 1
 * the form is made. On the way the joins are released.
 */
public final class FoldPath {
  private final FoldTree tree;
  private final ScoreAngles angles;
  private final List<Motion3> rootPoses;
  private final FoldedForm form;

  /**
   * @param rootPoses for each panel, where the root of its piece stands in the form
   */
  FoldPath(FoldTree tree, ScoreAngles angles, List<Motion3> rootPoses, FoldedForm form) {
    this.tree = tree;
    this.angles = angles;
    this.rootPoses = List.copyOf(rootPoses);
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
    List<Motion3> local = tree.fold(angles.times(t));
    List<Motion3> poses = new ArrayList<>();
    for (int p = 0; p < local.size(); p++) {
      poses.add(local.get(p).then(rootPoses.get(p)));
    }
    return List.copyOf(poses);
  }
}
