package facetwright.fold.pose;

import facetwright.geom.Motion3;
import facetwright.geom.Vec3;
import facetwright.net.Net;
import java.util.List;

/**
 * A card that is scored and slit, so that strips between the slits stand out of it where it folds.
 * It has no inside that is shut off: one looks at its outside, the face that lies up when it is
 * scored, and it stands so that this is seen from the front and above.
 */
public final class PopOut {
  /** From a little left of the front, and above. */
  private static final Vec3 VIEWER = new Vec3(0.4, -0.8, 0.4);

  /** A view that is not better by this part is none. */
  private static final double FEW = 1e-6;

  private static final Motion3 ROUND =
      new Motion3(Vec3.X.times(-1), Vec3.Y.times(-1), Vec3.Z, Vec3.ZERO);

  private static final Motion3 OVER =
      new Motion3(Vec3.X, Vec3.Y.times(-1), Vec3.Z.times(-1), Vec3.ZERO);

  private PopOut() {}

  /** Whether nothing is joined, and strips between slits stand out where it folds. */
  public static boolean is(Net net) {
    return net.joins().isEmpty() && net.slits().size() > 1 && net.scores().size() > 1;
  }

  /**
   * Turned round, or over, or both, so that most of the outside is seen.
   *
   * @param poses where each panel is
   * @param stands the motion that stands them as the net says
   * @param points all corners, before that motion
   */
  static Motion3 facing(Net net, List<Motion3> poses, Motion3 stands, List<Vec3> points) {
    double top = points.stream().mapToDouble(p -> stands.apply(p).z()).max().orElse(0);
    Motion3 over = OVER.then(Standing.shift(new Vec3(0, 0, top)));
    Motion3 best = stands;
    for (Motion3 turned : List.of(ROUND, over, over.then(ROUND))) {
      Motion3 tried = stands.then(turned);
      if (seen(net, poses, tried) > seen(net, poses, best) * (1 + FEW)) {
        best = tried;
      }
    }
    return best;
  }

  /** The outside as it is seen less the inside as it is seen, in mm² and more than nothing. */
  private static double seen(Net net, List<Motion3> poses, Motion3 stands) {
    double all = 0;
    double sum = 0;
    for (int p = 0; p < poses.size(); p++) {
      double area = net.panels().get(p).cardArea();
      all += area;
      sum += area * poses.get(p).then(stands).ez().dot(VIEWER);
    }
    return all + sum;
  }
}
