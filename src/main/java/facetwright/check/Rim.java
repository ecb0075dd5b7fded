package facetwright.check;

import facetwright.geom.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The open rim of a body as a lid or a box has it: one flat ring of free sides with walls square to
 * it, or as a sleeve has it, one at either end. Tabs, and what a lap hides, do not bound it.
 *
 * @param lengths of its sides, in mm, in order
 * @param turns between each side and the next, in radians
 * @param depth how far the body reaches from it, in mm
 * @param isTube whether it is open at the other end, too
 */
record Rim(List<Double> lengths, List<Double> turns, double depth, boolean isTube) {
  /** A side whose turns cancel so far is as long wherever it is set, and tells nothing. */
  private static final double TELLS = 0.05;

  /** Sides that turn less than this from each other are one, and walls as square count as such. */
  private static final double STRAIGHT = Math.toRadians(1);

  private static final double SQUARE = Math.sin(Math.toRadians(5));

  /** The rim of this body; empty where it has none, several, or one of another kind. */
  static Optional<Rim> of(Subject subject, List<Integer> body) {
    List<FreeSides.Side> sides = FreeSides.of(subject, body);
    List<List<FreeSides.Side>> rings = FreeSides.rings(sides);
    int inRings = rings.stream().mapToInt(List::size).sum();
    if (rings.isEmpty() || rings.size() > 2 || inRings != sides.size() || sides.size() < 3) {
      return Optional.empty();
    }
    List<FreeSides.Side> ring = rings.getFirst();
    Vec3 start = ring.getFirst().from();
    Vec3 sum = Vec3.ZERO;
    for (FreeSides.Side side : ring) {
      sum = sum.plus(side.from().minus(start).cross(side.to().minus(start)));
    }
    if (sum.length() == 0) {
      return Optional.empty();
    }
    Vec3 up = sum.unit();
    List<Double> lengths = new ArrayList<>();
    List<Double> turns = new ArrayList<>();
    int first = 0;
    while (first < ring.size() && Math.abs(turn(ring, first - 1, up)) < STRAIGHT) {
      first++;
    }
    for (int i = 0; i < ring.size(); i++) {
      FreeSides.Side side = ring.get((first + i) % ring.size());
      double turn = turn(ring, first + i, up);
      if (Math.abs(side.from().minus(start).dot(up)) > Mm.HAIR
          || Math.abs(side.outside().dot(up)) > SQUARE) {
        return Optional.empty();
      }
      double length = side.from().distance(side.to());
      boolean goesOn = i > 0 && Math.abs(turn(ring, first + i - 1, up)) < STRAIGHT;
      if (goesOn) {
        lengths.set(lengths.size() - 1, lengths.getLast() + length);
        turns.set(turns.size() - 1, turn);
      } else {
        lengths.add(length);
        turns.add(turn);
      }
    }
    double depth = 0;
    for (int p : body) {
      for (Vec3 corner : subject.folded().corners(subject.net(), p)) {
        depth = Math.max(depth, Math.abs(corner.minus(start).dot(up)));
      }
    }
    return lengths.size() < 3
        ? Optional.empty()
        : Optional.of(new Rim(lengths, turns, depth, rings.size() == 2));
  }

  /** From a side of the ring to the next, in radians. */
  private static double turn(List<FreeSides.Side> ring, int side, Vec3 up) {
    Vec3 in = ring.get(Math.floorMod(side, ring.size())).along();
    Vec3 out = ring.get(Math.floorMod(side + 1, ring.size())).along();
    return Math.atan2(in.cross(out).dot(up), in.dot(out));
  }

  /** How much wider this rim is than another laid into it, side by side. */
  record Room(double least, double most) {
    double farthest() {
      return Math.max(Math.abs(least), Math.abs(most));
    }
  }

  /**
   * How much wider this rim is on each side than the other, turned over onto it, in the turn where
   * they agree best; empty where their corners differ.
   */
  Optional<Room> over(Rim box) {
    int n = lengths.size();
    if (box.lengths.size() != n) {
      return Optional.empty();
    }
    Room best = null;
    for (int shift = 0; shift < n; shift++) {
      Room room = room(box, shift);
      if (room != null && (best == null || room.farthest() < best.farthest() - 1e-9)) {
        best = room;
      }
    }
    return Optional.ofNullable(best);
  }

  /**
   * A side set outward by d grows by d·(tan(α/2) + tan(β/2)), where α and β are the turns at its
   * ends. Laid face to face the one ring runs against the other.
   */
  private Room room(Rim box, int shift) {
    int n = lengths.size();
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < n; i++) {
      int j = Math.floorMod(shift - i, n);
      double before = turns.get(Math.floorMod(i - 1, n));
      double after = turns.get(i);
      if (Math.abs(after - box.turns.get(Math.floorMod(j - 1, n))) > STRAIGHT) {
        return null;
      }
      double grows = Math.tan(before / 2) + Math.tan(after / 2);
      double more = lengths.get(i) - box.lengths.get(j);
      if (Math.abs(grows) < TELLS) {
        continue;
      }
      double d = more / grows;
      least = Math.min(least, d);
      most = Math.max(most, d);
    }
    return least <= most ? new Room(least, most) : null;
  }

  /** Whether it is a rectangle. */
  boolean isRectangle() {
    return lengths.size() == 4
        && turns.stream().allMatch(t -> Math.abs(t - Math.PI / 2) < STRAIGHT);
  }
}
