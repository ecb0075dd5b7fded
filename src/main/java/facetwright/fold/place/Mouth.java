package facetwright.fold.place;

import facetwright.fold.pose.Standing;
import facetwright.fold.touch.Collision;
import facetwright.geom.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An opening of a part that something may go into.
 *
 * @param ring its corners, in order
 * @param out the direction out of the part, of length 1
 * @param at how far along that direction it lies: its outermost place, in mm
 */
record Mouth(List<Vec3> ring, Vec3 out, double at) {
  /** Walls square to a direction to within this stand along it. */
  private static final double SQUARE = Math.sin(Math.toRadians(2));

  /** A ring less wide than this part of its length round has no inside to speak of. */
  private static final double THIN = 0.001;

  Mouth {
    ring = List.copyOf(ring);
  }

  /** The opening that a ring of free sides goes round; none where it has no inside. */
  static Optional<Mouth> of(List<FreeSides.Side> sides) {
    List<Vec3> ring = plain(sides);
    if (ring.size() < 3) {
      return Optional.empty();
    }
    // Sides run counter-clockwise round their panels seen from without, and so round the opening
    // seen from within.
    Vec3 normal = Standing.normal(ring).times(-1);
    double round = 0;
    for (int i = 0; i < ring.size(); i++) {
      round += ring.get(i).distance(ring.get((i + 1) % ring.size()));
    }
    if (normal.length() < THIN * round * round) {
      return Optional.empty();
    }
    Vec3 out = alongWalls(sides, normal.unit());
    double at = ring.stream().mapToDouble(c -> c.dot(out)).max().orElseThrow();
    return Optional.of(new Mouth(ring, out, at));
  }

  /** The corners without ways there and back, as down a corner whose two walls nothing joins. */
  private static List<Vec3> plain(List<FreeSides.Side> sides) {
    List<Vec3> ring = new ArrayList<>(sides.stream().map(FreeSides.Side::from).toList());
    for (int i = 0; i < ring.size() && ring.size() >= 3; i++) {
      int n = ring.size();
      if (ring.get((i + n - 1) % n).distance(ring.get((i + 1) % n)) <= Collision.HELD) {
        ring.remove(Math.max(i, (i + 1) % n));
        ring.remove(Math.min(i, (i + 1) % n));
        i = -1;
      }
    }
    return ring;
  }

  /** The direction of all walls round it, where they share one, whatever is cut into their rim. */
  private static Vec3 alongWalls(List<FreeSides.Side> sides, Vec3 normal) {
    List<Vec3> faces = new ArrayList<>(sides.stream().map(FreeSides.Side::outside).toList());
    Vec3 first = faces.getFirst();
    Vec3 best = Vec3.ZERO;
    for (Vec3 face : faces) {
      Vec3 along = first.cross(face);
      best = along.length() > best.length() ? along : best;
    }
    if (best.length() < SQUARE) {
      return normal;
    }
    Vec3 along = best.dot(normal) < 0 ? best.times(-1).unit() : best.unit();
    boolean isShared =
        along.dot(normal) > 0.5 && faces.stream().allMatch(f -> Math.abs(f.dot(along)) < SQUARE);
    return isShared ? along : normal;
  }
}
