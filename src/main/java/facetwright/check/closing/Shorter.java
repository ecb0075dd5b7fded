package facetwright.check.closing;

import facetwright.check.finding.Mm;
import facetwright.check.finding.Subject;
import facetwright.fold.touch.Collision;
import facetwright.geom.Motion3;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.PanelRole;
import facetwright.net.Score;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * By how much a flap has to be shorter, so that it ends before what it goes through: a panel that
 * hangs on one score, nothing else held to it. So short, no part of it comes as far from its score
 * as the nearest place where it goes through the other.
 */
final class Shorter {
  private Shorter() {}

  /**
   * Of two that pass through each other the one with less to take off, the tab where one is; empty
   * where nothing can be taken off.
   */
  static Optional<Message> words(Subject subject, Collision c) {
    boolean ofTab = c.isOfTab(subject.net());
    double a = ofTab && !isTab(subject, c.a()) ? Double.NaN : excess(subject, c.a(), c);
    double b = ofTab && !isTab(subject, c.b()) ? Double.NaN : excess(subject, c.b(), c);
    if (Double.isNaN(a) && Double.isNaN(b)) {
      return Optional.empty();
    }
    int panel = Double.isNaN(b) || a <= b ? c.a() : c.b();
    String shorter = ofTab ? " shallower." : " shorter.";
    return Optional.of(
        Message.of(
            "Make %s at least %s%s",
            subject.name(panel), Value.atLeast(panel == c.a() ? a : b), shorter));
  }

  private static boolean isTab(Subject subject, int panel) {
    return subject.panel(panel).role() == PanelRole.TAB;
  }

  /** What a panel has too much, in mm from its score; not a number where it can't be shorter. */
  private static double excess(Subject subject, int panel, Collision c) {
    List<EdgeRef> held = held(subject, panel);
    if (held.size() != 1) {
      return Double.NaN;
    }
    Segment2 foot = subject.net().segment(held.getFirst());
    Vec2 up = foot.direction().left();
    double depth = 0;
    for (Vec2 corner : subject.panel(panel).outline().corners()) {
      depth = Math.max(depth, corner.minus(foot.from()).dot(up));
    }
    List<Motion3> poses = subject.folded().poses();
    Vec3 line = poses.get(c.a()).ez().cross(poses.get(c.b()).ez()).unit().times(c.length() / 2);
    Motion3 flat = poses.get(panel).inverse();
    double nearest = depth;
    for (Vec3 end : new Vec3[] {c.place().plus(line), c.place().minus(line)}) {
      Vec3 at = flat.apply(end);
      nearest = Math.min(nearest, new Vec2(at.x(), at.y()).minus(foot.from()).dot(up));
    }
    return nearest > Mm.HAIR ? depth - nearest : Double.NaN;
  }

  /** The sides of a panel that are scored or joined. */
  private static List<EdgeRef> held(Subject subject, int panel) {
    List<EdgeRef> held = new ArrayList<>();
    for (Score s : subject.net().scores()) {
      held.add(s.a());
      held.add(s.b());
    }
    for (Join join : subject.net().joins()) {
      switch (join) {
        case Join.Seam s -> {
          held.add(s.a());
          held.add(s.b());
        }
        case Join.Lap l -> {
          // What lies under or over another can't be shorter and stay where it is.
          held.add(new EdgeRef(l.under(), 0));
          held.add(new EdgeRef(l.over(), 1));
        }
      }
    }
    held.removeIf(e -> e.panel() != panel);
    return held;
  }
}
