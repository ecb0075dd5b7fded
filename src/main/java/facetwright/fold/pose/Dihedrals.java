package facetwright.fold.pose;

import facetwright.geom.Motion3;
import facetwright.geom.Segment2;
import facetwright.geom.Vec3;
import facetwright.net.EdgeRef;
import facetwright.net.Net;
import java.util.List;

/**
 * The dihedral angle at each score and seam, measured inside the form: 180° where the card is flat,
 * less over a mountain, more over a valley.
 */
public final class Dihedrals {
  private Dihedrals() {}

  /** For each score its dihedral angle in degrees, 0 to 360. */
  public static List<Double> atScores(Net net, FoldedForm form) {
    return net.scores().stream().map(s -> between(net, form, s.a(), s.b())).toList();
  }

  /**
   * The dihedral angle between two panels along a side of the first, in degrees, 0 to 360; {@code
   * b} is a side that meets it.
   */
  public static double between(Net net, FoldedForm form, EdgeRef a, EdgeRef b) {
    return 180
        - Math.toDegrees(
            turn(form.poses().get(a.panel()), net.segment(a), form.poses().get(b.panel())));
  }

  /** The fold angle in radians, mountain positive, from one pose over its side to the other. */
  public static double turn(Motion3 pose, Segment2 side, Motion3 other) {
    Vec3 axis = pose.apply(side.to()).minus(pose.apply(side.from())).unit();
    return Math.atan2(pose.ez().cross(other.ez()).dot(axis), pose.ez().dot(other.ez()));
  }
}
