package facetwright.fold.pose;

import facetwright.geom.Motion3;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.Net;
import facetwright.net.fitting.Label;
import java.util.List;

/**
 * Which way is up on the panels of a made form: on a wall up along the wall, on what lies nearly
 * level to the back, so that it is read from the front.
 */
public final class Upright {
  /** A panel that climbs by less than this part of its length is read as one that lies level. */
  private static final double LEVEL = 0.15;

  private Upright() {}

  /** The net, its labels up as they are read on the made form. */
  public static Net labelled(Net net, FoldedForm form) {
    if (form.closure() == Closure.NOT_SOLVED || net.fittings().labels().isEmpty()) {
      return net;
    }
    List<Label> labels =
        net.fittings().labels().stream().map(l -> l.up(up(net, form, l.panel()))).toList();
    return net.with(net.fittings().with(labels));
  }

  /** From the direction of the panel's first side, in radians. */
  private static double up(Net net, FoldedForm form, int panel) {
    Motion3 pose = form.whole().get(panel);
    Vec2 climb = new Vec2(pose.ex().z(), pose.ey().z());
    Vec2 up = climb.length() > LEVEL ? climb : new Vec2(pose.ex().y(), pose.ey().y());
    return angle(up) - angle(first(net, panel).direction());
  }

  /** The direction in which a label is up in the flat net, in radians. */
  public static double inNet(Net net, Label label) {
    return Double.isNaN(label.up())
        ? Math.PI / 2
        : angle(first(net, label.panel()).direction()) + label.up();
  }

  private static Segment2 first(Net net, int panel) {
    return net.panels().get(panel).outline().side(0);
  }

  private static double angle(Vec2 v) {
    return Math.atan2(v.y(), v.x());
  }
}
