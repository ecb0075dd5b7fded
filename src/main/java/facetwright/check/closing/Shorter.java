package facetwright.check.closing;

import facetwright.check.finding.Mm;
import facetwright.check.finding.Subject;
import facetwright.check.finding.TabShape;
import facetwright.fold.touch.Collision;
import facetwright.geom.Motion3;
import facetwright.geom.Planar;
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
import java.util.OptionalInt;

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
      int tab = isTab(subject, c.a()) ? c.a() : c.b();
      return bevel(subject, tab).stream()
          .mapToObj(
              d -> Message.of("Bevel the ends of %s by %s.", subject.name(tab), Value.angle(d)))
          .findFirst();
    }
    int panel = Double.isNaN(b) || a <= b ? c.a() : c.b();
    return Optional.of(
        Message.of(
            "Make %s at least %s %s%s.",
            subject.name(panel),
            Value.atLeast(panel == c.a() ? a : b),
            ofTab ? "shallower" : "shorter",
            TabShape.orBevel(bevel(subject, panel))));
  }

  /**
   * The bevel by which a tab goes through nothing; empty where none helps, and of what is no tab.
   */
  private static OptionalInt bevel(Subject subject, int tab) {
    Motion3 flat = subject.folded().poses().get(tab).inverse();
    List<Collision> through =
        subject.folded().obstacles(subject.net()).stream()
            .filter(o -> o.a() == tab || o.b() == tab)
            .toList();
    if (!isTab(subject, tab)
        || held(subject, tab).size() != 1
        || through.stream().anyMatch(o -> o.kind() != Collision.Kind.PASSING)) {
      return OptionalInt.empty();
    }
    List<Segment2> met =
        through.stream()
            .map(o -> line(subject, o).stream().map(flat::apply).toList())
            .map(l -> new Segment2(flat(l.getFirst()), flat(l.getLast())))
            .toList();
    return TabShape.bevel(
        subject.net().segment(held(subject, tab).getFirst()),
        subject.panel(tab).outline(),
        shape -> met.stream().noneMatch(m -> Planar.sharedLength(m, shape) > Mm.LEAST));
  }

  private static Vec2 flat(Vec3 at) {
    return new Vec2(at.x(), at.y());
  }

  /** The ends of the line along which two pass through each other. */
  private static List<Vec3> line(Subject subject, Collision c) {
    List<Motion3> poses = subject.folded().poses();
    Vec3 half = poses.get(c.a()).ez().cross(poses.get(c.b()).ez()).unit().times(c.length() / 2);
    return List.of(c.place().plus(half), c.place().minus(half));
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
    Motion3 flat = subject.folded().poses().get(panel).inverse();
    double nearest = depth;
    for (Vec3 end : line(subject, c)) {
      nearest = Math.min(nearest, flat(flat.apply(end)).minus(foot.from()).dot(up));
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
