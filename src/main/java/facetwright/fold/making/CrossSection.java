package facetwright.fold.making;

import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A body cut by a plane, seen square to it: what lies within it and what lies in a pocket outside,
 * as between the points of a star. Forms that are open at a side have places that lie neither way;
 * these count as within.
 */
final class CrossSection {
  /** So many ways are looked along from a place. */
  private static final int WAYS = 16;

  /** Off the directions that panels like, as a part of the angle between two ways. */
  private static final double OFF = 0.37;

  private static final List<Vec2> LOOKS =
      IntStream.range(0, WAYS)
          .mapToObj(i -> Vec2.polar(1, (i + OFF) * 2 * Math.PI / WAYS))
          .toList();

  /**
   * From within a closed form every way crosses its walls outward once more than inward, from
   * without as often.
   */
  private static final int LEAST_OUT = WAYS / 4;

  private final List<Cut> walls = new ArrayList<>();

  /**
   * A panel that is cut.
   *
   * @param corners of it
   * @param out the direction that its outside faces
   */
  record Wall(List<Vec3> corners, Vec3 out) {}

  private record Cut(double fromX, double fromY, double toX, double toY, Vec2 out) {
    static Cut of(Vec2 from, Vec2 to, Vec2 out) {
      return new Cut(from.x(), from.y(), to.x(), to.y(), out);
    }

    /** Whether it is met on the way from a place along a direction. */
    boolean isMet(Vec2 place, Vec2 way) {
      double startX = fromX - place.x();
      double startY = fromY - place.y();
      double a = way.x() * startY - way.y() * startX;
      double b = way.x() * (toY - place.y()) - way.y() * (toX - place.x());
      if (a > 0 == b > 0) {
        return false;
      }
      double part = a / (a - b);
      double x = fromX + (toX - fromX) * part - place.x();
      double y = fromY + (toY - fromY) * part - place.y();
      return x * way.x() + y * way.y() > 0;
    }
  }

  /**
   * @param panels what is cut
   * @param view square to the plane
   * @param at how far along the direction the plane lies, in mm
   */
  CrossSection(List<Wall> panels, View view, Vec3 direction, double at) {
    for (Wall panel : panels) {
      List<Vec2> crossed = new ArrayList<>();
      Vec3 from = panel.corners.getLast();
      for (Vec3 to : panel.corners) {
        double a = from.dot(direction) - at;
        double b = to.dot(direction) - at;
        if (a > 0 != b > 0) {
          crossed.add(view.seen(from.toward(to, a / (a - b))));
        }
        from = to;
      }
      crossed.sort(Comparator.comparingDouble(Vec2::x).thenComparingDouble(Vec2::y));
      for (int i = 0; i + 1 < crossed.size(); i += 2) {
        walls.add(Cut.of(crossed.get(i), crossed.get(i + 1), view.seen(panel.out)));
      }
    }
  }

  /** Whether a place is not outside; all are where the plane cuts nothing. */
  boolean holds(Vec2 place) {
    if (walls.isEmpty()) {
      return true;
    }
    int leading = 0;
    for (Vec2 way : LOOKS) {
      double outward = 0;
      for (Cut wall : walls) {
        if (wall.isMet(place, way)) {
          outward += Math.signum(way.dot(wall.out));
        }
      }
      leading += outward > 0 ? 1 : 0;
    }
    return leading >= LEAST_OUT;
  }
}
