package facetwright.fold.walk;

import facetwright.fold.pose.RigidFit;
import facetwright.geom.Motion3;
import facetwright.geom.Polygon2;
import facetwright.geom.RoundOff;
import facetwright.geom.Vec3;
import facetwright.net.Net;
import java.util.ArrayList;
import java.util.List;

/**
 * The last part of the way, where joins meet: what released joins leave out. Where card has to give
 * for the joins to meet, or where angles do not agree, the form stands a little elsewhere than
 * scores alone would take it; the panels come to there over this part, smoothly, each rigid.
 */
final class Arrival {
  private static final double FROM = 0.875;

  /** Nearer than this, as part of the net's size, nothing is left out. */
  private static final double NONE = RoundOff.PART;

  private final Net net;

  /** For each panel how far its corners have to go, seen from the panel; empty where nowhere. */
  private final List<List<Vec3>> off = new ArrayList<>();

  /**
   * @param released where scores alone take each panel
   * @param form where it has to come
   */
  Arrival(Net net, List<Motion3> released, List<Motion3> form) {
    this.net = net;
    double size = Math.max(net.box().width(), net.box().height());
    double most = 0;
    for (int p = 0; p < form.size(); p++) {
      Motion3 seen = form.get(p).then(released.get(p).inverse());
      List<Vec3> corners = new ArrayList<>();
      for (var c : net.panels().get(p).outline().corners()) {
        Vec3 way = seen.apply(c).minus(new Vec3(c.x(), c.y(), 0));
        most = Math.max(most, way.length());
        corners.add(way);
      }
      off.add(corners);
    }
    if (most <= NONE * size) {
      off.clear();
    }
  }

  /** How much of it is done at t: 0 to 1. */
  double part(double t) {
    double u = off.isEmpty() ? 0 : Math.max(0, (t - FROM) / (1 - FROM));
    return u * u * (3 - 2 * u);
  }

  /** Where panels are at t, when scores alone would take them to these poses. */
  List<Motion3> at(double t, List<Motion3> poses) {
    double part = part(t);
    if (part == 0) {
      return poses;
    }
    List<Motion3> come = new ArrayList<>();
    for (int p = 0; p < poses.size(); p++) {
      Polygon2 outline = net.panels().get(p).outline();
      RigidFit fit = new RigidFit();
      for (int c = 0; c < outline.size(); c++) {
        Vec3 corner = new Vec3(outline.corner(c).x(), outline.corner(c).y(), 0);
        fit.pair(corner, poses.get(p).apply(corner.plus(off.get(p).get(c).times(part))));
      }
      come.add(fit.motion());
    }
    return come;
  }
}
