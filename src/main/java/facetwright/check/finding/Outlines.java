package facetwright.check.finding;

import facetwright.geom.AngleTolerance;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Peak;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** How the outline of an opening compares with that of what goes into it. */
public final class Outlines {
  /** Sides that turn less than this from each other are one. */
  private static final double STRAIGHT = Math.toRadians(1);

  /** Corners that differ by more than this are not made for each other. */
  private static final double ALIKE = Math.toRadians(8);

  private static final int HALVINGS = 60;

  private Outlines() {}

  /** The same without the corners that turn nowhere. */
  public static List<Vec2> plain(List<Vec2> corners) {
    List<Vec2> kept = new ArrayList<>();
    int n = corners.size();
    for (int i = 0; i < n; i++) {
      if (Math.abs(turn(corners, i)) >= STRAIGHT) {
        kept.add(corners.get(i));
      }
    }
    return kept;
  }

  private static double turn(List<Vec2> corners, int i) {
    int n = corners.size();
    Vec2 in = corners.get(i).minus(corners.get((i + n - 1) % n));
    Vec2 out = corners.get((i + 1) % n).minus(corners.get(i));
    return Math.atan2(in.cross(out), in.dot(out));
  }

  public static boolean isRectangle(Polygon2 outline) {
    return outline.size() == 4
        && outline.corners().stream()
            .mapToInt(outline.corners()::indexOf)
            .allMatch(i -> Math.abs(turn(outline.corners(), i) - Math.PI / 2) < STRAIGHT);
  }

  /** Whether it has equal sides and equal corners. */
  public static boolean isRegular(Polygon2 outline) {
    for (int i = 0; i < outline.size(); i++) {
      if (Math.abs(outline.side(i).length() - outline.side(0).length()) > LengthTolerance.FINE.mm()
          || Math.abs(turn(outline.corners(), i) - 2 * Math.PI / outline.size())
              > AngleTolerance.UNSEEN.radians()) {
        return false;
      }
    }
    return true;
  }

  /**
   * The room on the side where there is least, in mm, below 0 where the inner one stands over; as
   * it lies where that is most, its sides along those of the outer one. NaN where their corners
   * differ.
   */
  public static double room(Polygon2 outer, Polygon2 inner) {
    int n = outer.size();
    if (inner.size() != n) {
      return Double.NaN;
    }
    return IntStream.range(0, n)
        .boxed()
        .filter(shift -> isAlike(outer, inner, shift))
        .min(Comparator.comparingDouble(shift -> Math.rint(1e6 * unlike(outer, inner, shift))))
        .map(shift -> room(outer, inner, shift))
        .orElse(Double.NaN);
  }

  private static boolean isAlike(Polygon2 outer, Polygon2 inner, int shift) {
    for (int i = 0; i < outer.size(); i++) {
      double other = turn(inner.corners(), (i + shift) % outer.size());
      if (Math.abs(turn(outer.corners(), i) - other) > ALIKE) {
        return false;
      }
    }
    return true;
  }

  /** By how much the shares differ that their sides have in going round. */
  private static double unlike(Polygon2 outer, Polygon2 inner, int shift) {
    double round = length(outer);
    double other = length(inner);
    double most = 0;
    for (int i = 0; i < outer.size(); i++) {
      double share = inner.side((i + shift) % outer.size()).length() / other;
      most = Math.max(most, Math.abs(outer.side(i).length() / round - share));
    }
    return most;
  }

  private static double length(Polygon2 outline) {
    double sum = 0;
    for (int i = 0; i < outline.size(); i++) {
      sum += outline.side(i).length();
    }
    return sum;
  }

  /**
   * The least room is a concave function of where the inner one lies: its best is found by thirds.
   */
  private static double room(Polygon2 outer, Polygon2 inner, int shift) {
    Vec2 along = Vec2.ZERO;
    for (int i = 0; i < outer.size(); i++) {
      Vec2 from = inner.side((i + shift) % outer.size()).direction();
      Vec2 to = outer.side(i).direction();
      along = along.plus(new Vec2(from.dot(to), from.cross(to)));
    }
    Vec2 turn = along.unit();
    Vec2 middle = inner.centroid();
    List<Vec2> laid = new ArrayList<>();
    for (int i = 0; i < outer.size(); i++) {
      Vec2 corner = inner.corner((i + shift) % outer.size());
      laid.add(corner.minus(middle).turned(turn).plus(outer.centroid()));
    }
    double middling = least(outer, laid, 0, 0);
    double reach = most(outer, laid) - middling;
    if (reach < LengthTolerance.FINE.mm()) {
      return middling;
    }
    return Math.max(middling, Peak.within(reach, HALVINGS, (x, y) -> least(outer, laid, x, y)));
  }

  private static double least(Polygon2 outer, List<Vec2> laid, double x, double y) {
    Vec2 moved = new Vec2(x, y);
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < laid.size(); i++) {
      Segment2 side = outer.side(i);
      least = Math.min(least, off(side, laid.get(i).plus(moved)));
      least = Math.min(least, off(side, laid.get((i + 1) % laid.size()).plus(moved)));
    }
    return least;
  }

  private static double most(Polygon2 outer, List<Vec2> laid) {
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < laid.size(); i++) {
      most = Math.max(most, off(outer.side(i), laid.get(i)));
      most = Math.max(most, off(outer.side(i), laid.get((i + 1) % laid.size())));
    }
    return most;
  }

  /** How far inside of a side's line a place lies. */
  private static double off(Segment2 side, Vec2 place) {
    return side.direction().cross(place.minus(side.from()));
  }
}
