package facetwright.fold.walk;

import facetwright.fold.pose.Body;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.Together;
import facetwright.geom.Motion3;
import facetwright.geom.RoundOff;
import facetwright.geom.Vec3;
import facetwright.net.Net;
import java.util.ArrayList;
import java.util.List;

/**
 * How the parts of a form come together: one after the other, each first to before its place, and
 * then straight in; then what is hinged opens. What they do as they come near is not looked at:
 * they may pass through others.
 */
final class Gathering {
  /** The part of its time that a part takes to come before its place. */
  private static final double BEFORE = 0.6;

  private Gathering() {}

  /**
   * Where each panel is, part of the way.
   *
   * @param t 0 all apart to 1 all together
   */
  static List<Motion3> at(Net net, FoldedForm form, double t) {
    Together together = form.together();
    if (t >= 1) {
      return together.poses();
    }
    List<Motion3> poses = new ArrayList<>(form.poses());
    List<Motion3> done = new ArrayList<>(form.poses());
    double stages = together.stages().size() + together.swings().size();
    for (int i = 0; i < together.stages().size(); i++) {
      Together.Stage stage = together.stages().get(i);
      double part = Math.clamp(t * stages - i, 0, 1);
      Vec3 middle = middle(Body.corners(net, done, stage.panels()));
      Motion3 motion = part(stage, part, middle);
      for (int p : stage.panels()) {
        poses.set(p, poses.get(p).then(motion));
        done.set(p, done.get(p).then(stage.motion()));
      }
    }
    Vec3 middle = middle(Body.corners(net, done, together.whole()));
    for (int i = 0; i < together.swings().size(); i++) {
      Together.Swing swing = together.swings().get(i);
      double part = Math.clamp(t * stages - together.stages().size() - i, 0, 1);
      for (int p : swing.panels()) {
        // About the hinge where it is now: the whole does not stand yet as it does in the end.
        Motion3 last = done.get(p).inverse().then(together.shut().get(p));
        Motion3 turn = last.then(swing.turned(part * swing.radians())).then(last.inverse());
        poses.set(p, poses.get(p).then(turn));
      }
    }
    for (int p = 0; p < poses.size(); p++) {
      // Bit by bit all is moved as the whole stands in the end.
      Motion3 last = done.get(p).inverse().then(together.shut().get(p));
      poses.set(p, poses.get(p).then(part(last, t, middle)));
    }
    return poses;
  }

  private static Motion3 part(Together.Stage stage, double part, Vec3 middle) {
    if (part <= 0) {
      return Motion3.NONE;
    }
    if (part >= 1) {
      return stage.motion();
    }
    double out = part < BEFORE ? 1 : (1 - part) / (1 - BEFORE);
    Motion3 before = stage.motion().then(shift(stage.from().times(out)));
    return part < BEFORE ? part(before, part / BEFORE, middle) : before;
  }

  /** Part of a motion: turned about its axis by part of its angle, its middle moved straight. */
  private static Motion3 part(Motion3 motion, double part, Vec3 middle) {
    double cos = (motion.ex().x() + motion.ey().y() + motion.ez().z() - 1) / 2;
    double angle = Math.acos(Math.clamp(cos, -1, 1));
    Vec3 goes = motion.apply(middle).minus(middle).times(part);
    if (angle < RoundOff.SOLVED) {
      return shift(goes);
    }
    Vec3 axis = axis(motion);
    return Motion3.about(middle, middle.plus(axis), part * angle).then(shift(goes));
  }

  private static Vec3 axis(Motion3 m) {
    Vec3 axis = new Vec3(m.ey().z() - m.ez().y(), m.ez().x() - m.ex().z(), m.ex().y() - m.ey().x());
    if (axis.length() > RoundOff.SOLVED) {
      return axis;
    }
    // Half a turn: what it leaves where it is, is the axis.
    Vec3 x = m.ex().plus(Vec3.X);
    Vec3 y = m.ey().plus(Vec3.Y);
    Vec3 z = m.ez().plus(Vec3.Z);
    Vec3 best = x.length() >= y.length() ? x : y;
    return best.length() >= z.length() ? best : z;
  }

  private static Vec3 middle(List<Vec3> corners) {
    Vec3 sum = Vec3.ZERO;
    for (Vec3 corner : corners) {
      sum = sum.plus(corner);
    }
    return corners.isEmpty() ? sum : sum.times(1.0 / corners.size());
  }

  private static Motion3 shift(Vec3 by) {
    return new Motion3(Vec3.X, Vec3.Y, Vec3.Z, by);
  }
}
