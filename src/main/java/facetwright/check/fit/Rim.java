package facetwright.check.fit;

import facetwright.check.finding.Mm;
import facetwright.check.finding.Outlines;
import facetwright.check.finding.Subject;
import facetwright.fold.place.FreeSides;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.PanelRole;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The open rim of a body as a lid or a box has it: one flat ring of free sides, or as a sleeve has
 * it, one at either end. Tabs, and what a lap hides, do not bound it.
 *
 * @param outline in its plane, seen from within the body
 * @param depth how far the body reaches from it, in mm
 * @param isTube whether it is open at the other end, too
 * @param isSquare whether the walls at it stand square to it
 * @param isWidest whether nothing of the body stands out past it, seen from above
 * @param lining what is glued to the walls at it
 */
record Rim(
    Polygon2 outline,
    double depth,
    boolean isTube,
    boolean isSquare,
    boolean isWidest,
    Lining lining) {
  private static final double SQUARE = Math.sin(Math.toRadians(5));

  /** The rim of this body; empty where it has none, several, or one of another kind. */
  static Optional<Rim> of(Subject subject, List<Integer> body) {
    List<FreeSides.Side> sides = FreeSides.of(subject.net(), subject.folded().poses(), body);
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
    if (sum.length() < Mm.HAIR * Mm.HAIR) {
      return Optional.empty();
    }
    Vec3 up = sum.unit();
    Vec3 x = ring.getFirst().along();
    Vec3 y = up.cross(x);
    boolean isSquare = true;
    List<Vec2> corners = new ArrayList<>();
    for (FreeSides.Side side : ring) {
      if (Math.abs(side.from().minus(start).dot(up)) > Mm.HAIR) {
        return Optional.empty();
      }
      isSquare &= Math.abs(side.outside().dot(up)) <= SQUARE;
      corners.add(flat(side.from().minus(start), x, y));
    }
    List<Vec2> plain = Outlines.plain(corners);
    if (plain.size() < 3) {
      return Optional.empty();
    }
    Polygon2 outline = Polygon2.ofEitherSense(plain);
    double depth = 0;
    boolean isWidest = true;
    for (int p : body) {
      boolean counts = subject.panel(p).role() != PanelRole.TAB;
      for (Vec3 corner : subject.folded().corners(subject.net(), p)) {
        depth = Math.max(depth, Math.abs(corner.minus(start).dot(up)));
        Vec2 at = flat(corner.minus(start), x, y);
        isWidest &= !counts || outline.contains(at) || isNear(outline, at);
      }
    }
    Lining lining = Lining.of(subject, body, outline, start, x, y);
    return Optional.of(new Rim(outline, depth, rings.size() == 2, isSquare, isWidest, lining));
  }

  private static Vec2 flat(Vec3 from, Vec3 x, Vec3 y) {
    return new Vec2(from.dot(x), from.dot(y));
  }

  private static boolean isNear(Polygon2 outline, Vec2 place) {
    for (int i = 0; i < outline.size(); i++) {
      if (outline.side(i).distance(place) <= Mm.HAIR) {
        return true;
      }
    }
    return false;
  }
}
