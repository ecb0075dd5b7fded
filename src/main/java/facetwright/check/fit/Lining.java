package facetwright.check.fit;

import facetwright.check.finding.Mm;
import facetwright.check.finding.Subject;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.Join;
import facetwright.net.PanelRole;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Which walls round an outline bear a second layer of card, a tab or what a lap holds, and on which
 * of their faces.
 *
 * <p>What it does not detect: third layers, and how far along or down a wall a layer reaches.
 *
 * @param inside for each side of the outline whether a layer lies within it
 * @param outside for each side whether one lies without
 */
record Lining(List<Boolean> inside, List<Boolean> outside) {
  private static final double ALONG = Math.cos(Math.toRadians(5));

  Lining {
    inside = List.copyOf(inside);
    outside = List.copyOf(outside);
  }

  /** Of walls that bear nothing. */
  static Lining none(int sides) {
    List<Boolean> bare = Collections.nCopies(sides, false);
    return new Lining(bare, bare);
  }

  /** Of walls that all bear a layer within. */
  static Lining throughout(int sides) {
    return new Lining(Collections.nCopies(sides, true), Collections.nCopies(sides, false));
  }

  /**
   * A layer glued to a panel.
   *
   * @param at a place of the panel it is glued to
   * @param toward the direction in which it lies on that panel
   */
  private record Layer(Vec3 at, Vec3 toward) {}

  /** All layers glued in a body. */
  private static List<Layer> layers(Subject subject, List<Integer> body) {
    Set<Integer> own = new HashSet<>(body);
    List<Layer> layers = new ArrayList<>();
    for (Join join : subject.net().joins()) {
      int host =
          switch (join) {
            case Join.Seam s -> s.tab() == Join.Seam.NO_TAB ? -1 : s.b().panel();
            case Join.Lap l -> l.over();
          };
      if (own.contains(host)
          && subject.panel(host).role() == PanelRole.FACET
          && subject.panel(host).outline().size() > 0) {
        var pose = subject.folded().poses().get(host);
        Vec3 at = pose.apply(subject.panel(host).outline().corners().getFirst());
        layers.add(new Layer(at, pose.ez().times(-1)));
      }
    }
    return layers;
  }

  /** What the walls of a body bear that stand on the sides of an outline. */
  static Lining of(
      Subject subject, List<Integer> body, Polygon2 outline, Vec3 origin, Vec3 x, Vec3 y) {
    List<Layer> layers = layers(subject, body);
    List<Boolean> inside = new ArrayList<>();
    List<Boolean> outside = new ArrayList<>();
    for (int i = 0; i < outline.size(); i++) {
      Vec2 from = outline.corner(i);
      Vec2 left = outline.side(i).direction().left();
      Vec3 inward = x.times(left.x()).plus(y.times(left.y()));
      Vec3 on = origin.plus(x.times(from.x())).plus(y.times(from.y()));
      List<Layer> here =
          layers.stream()
              .filter(l -> Math.abs(l.toward().dot(inward)) > ALONG)
              .filter(l -> Math.abs(l.at().minus(on).dot(inward)) <= Mm.HAIR)
              .toList();
      inside.add(here.stream().anyMatch(l -> l.toward().dot(inward) > 0));
      outside.add(here.stream().anyMatch(l -> l.toward().dot(inward) < 0));
    }
    return new Lining(inside, outside);
  }

  /** How many of the two walls that side of a rectangle runs between bear a layer within. */
  int acrossInside(int side) {
    return across(inside, side);
  }

  /** How many of the two walls that side of a rectangle runs between bear a layer without. */
  int acrossOutside(int side) {
    return across(outside, side);
  }

  private static int across(List<Boolean> bears, int side) {
    return (bears.get((side + 1) % 4) ? 1 : 0) + (bears.get((side + 3) % 4) ? 1 : 0);
  }

  boolean isInside() {
    return inside.contains(true);
  }

  boolean isOutside() {
    return outside.contains(true);
  }

  /** What its layers leave of an opening. */
  Polygon2 narrowed(Polygon2 outline, double caliper) {
    return setOff(outline, inside, -caliper);
  }

  /** What its layers leave of an opening made so many times as large. */
  Polygon2 narrowed(Polygon2 outline, double times, double caliper) {
    return narrowed(
        Polygon2.ofEitherSense(outline.corners().stream().map(c -> c.times(times)).toList()),
        caliper);
  }

  /** What they make of a body seen from without. */
  Polygon2 widened(Polygon2 outline, double caliper) {
    return setOff(outline, outside, caliper);
  }

  /** The outline with its sides that bear a layer set off outward. */
  private static Polygon2 setOff(Polygon2 outline, List<Boolean> bears, double by) {
    if (!bears.contains(true)) {
      return outline;
    }
    int n = outline.size();
    return Polygon2.ofEitherSense(
        IntStream.range(0, n)
            .mapToObj(
                i -> {
                  Vec2 in = outline.side((i + n - 1) % n).direction();
                  Vec2 out = outline.side(i).direction();
                  double before = bears.get((i + n - 1) % n) ? by : 0;
                  double after = bears.get(i) ? by : 0;
                  // The place that is so far to the right of both sides' lines.
                  double turn = in.cross(out);
                  Vec2 moved = in.times(after).minus(out.times(before)).times(1 / turn);
                  return outline.corner(i).plus(moved);
                })
            .toList());
  }
}
