package facetwright.check.fit;

import facetwright.check.finding.Mm;
import facetwright.check.finding.Subject;
import facetwright.geom.Vec3;
import facetwright.net.Join;
import facetwright.net.PanelRole;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A body with square corners, open at some of its six sides or closed: a tray, a sleeve, the case
 * of a drawer. Panels that lie inside it make it none.
 *
 * @param size along its three directions, in mm
 * @param walls for each direction whether there is card at its one end and at its other
 * @param axes its directions
 * @param lows where it begins along each of them, in mm
 */
record Block(List<Double> size, List<List<Boolean>> walls, List<Vec3> axes, List<Double> lows) {
  private static final double SQUARE = Math.sin(Math.toRadians(2));

  static Optional<Block> of(Subject subject, List<Integer> body) {
    Set<Integer> hidden = new HashSet<>();
    for (Join join : subject.net().joins()) {
      if (join instanceof Join.Lap lap) {
        hidden.add(lap.under());
      }
    }
    List<Integer> facets =
        body.stream()
            .filter(p -> subject.panel(p).role() != PanelRole.TAB && !hidden.contains(p))
            .toList();
    Optional<List<Vec3>> axes = axes(subject, facets);
    if (axes.isEmpty()) {
      return Optional.empty();
    }
    List<Double> size = new ArrayList<>();
    List<List<Boolean>> walls = new ArrayList<>();
    List<Double> lows = new ArrayList<>();
    for (Vec3 axis : axes.get()) {
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (int p : facets) {
        for (Vec3 corner : subject.folded().corners(subject.net(), p)) {
          low = Math.min(low, corner.dot(axis));
          high = Math.max(high, corner.dot(axis));
        }
      }
      boolean atLow = false;
      boolean atHigh = false;
      for (int p : facets) {
        if (Math.abs(subject.folded().poses().get(p).ez().dot(axis)) > SQUARE) {
          for (Vec3 corner : subject.folded().corners(subject.net(), p)) {
            boolean isLow = corner.dot(axis) - low <= Mm.HAIR;
            if (!isLow && high - corner.dot(axis) > Mm.HAIR) {
              return Optional.empty();
            }
            atLow |= isLow;
            atHigh |= !isLow;
          }
        }
      }
      size.add(high - low);
      lows.add(low);
      walls.add(List.of(atLow, atHigh));
    }
    return Optional.of(
        new Block(List.copyOf(size), List.copyOf(walls), axes.get(), List.copyOf(lows)));
  }

  /** Three directions square to each other that all facets face; empty where there are none. */
  private static Optional<List<Vec3>> axes(Subject subject, List<Integer> facets) {
    if (facets.isEmpty()) {
      return Optional.empty();
    }
    Vec3 one = subject.folded().poses().get(facets.getFirst()).ez();
    List<Vec3> others =
        facets.stream()
            .map(p -> subject.folded().poses().get(p).ez())
            .filter(n -> Math.abs(n.dot(one)) < SQUARE)
            .toList();
    if (others.isEmpty()) {
      return Optional.empty();
    }
    Vec3 three = one.cross(others.getFirst()).unit();
    List<Vec3> axes = List.of(one, three.cross(one), three);
    boolean allFace =
        facets.stream()
            .map(p -> subject.folded().poses().get(p).ez())
            .allMatch(n -> axes.stream().filter(a -> Math.abs(n.dot(a)) > SQUARE).count() == 1);
    return allFace ? Optional.of(axes) : Optional.empty();
  }

  /** The corner where all its directions begin. */
  Vec3 origin() {
    Vec3 origin = Vec3.ZERO;
    for (int d = 0; d < 3; d++) {
      origin = origin.plus(axes.get(d).times(lows.get(d)));
    }
    return origin;
  }

  /** How many of its two ends along a direction have card. */
  int walls(int direction) {
    return (int) walls.get(direction).stream().filter(w -> w).count();
  }

  /** Whether it has walls all round a direction and at most one across it. */
  boolean isOpen(int direction) {
    return walls(direction) < 2 && walls((direction + 1) % 3) + walls((direction + 2) % 3) == 4;
  }
}
