package facetwright.check.finding;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.RoundOff;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.message.Message;
import facetwright.message.Value;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * How a tab can be shaped on its foot: how far its ends are beveled and how deep it is.
 *
 * @param bevel degrees its ends are cut back from square
 * @param depth in mm
 */
public record TabShape(int bevel, double depth) {
  /** A tab's end is at least this part of its foot in what is proposed. */
  private static final double LEAST_END = 0.1;

  /** Steeper bevels are not to be had everywhere, in degrees. */
  private static final int STEEPEST = 75;

  /** A gentler bevel is proposed where it leaves so much of the most area that one leaves. */
  private static final double ENOUGH = 0.9;

  private static final int HALVINGS = 30;

  /** Whole degrees are told down from the least, or at it but for what the search leaves over. */
  private static final double ROUNDED = RoundOff.SOLVED;

  /** A tab reaches past an outline by less in what is proposed. */
  private static final LengthTolerance WITHIN = LengthTolerance.UNSEEN;

  /**
   * What leaves a tab nearly as much area as can be, of all that pass; empty where none does.
   *
   * @param foot from one end to the other, the tab on its left
   * @param now the tab as it is
   * @param passes whether a tab of this outline will do; what is shallower then will, too
   */
  static Optional<TabShape> of(Segment2 foot, Polygon2 now, Predicate<Polygon2> passes) {
    double depth = depth(foot, now);
    double[] deepest = new double[STEEPEST + 1];
    double most = 0;
    int first = Math.min(STEEPEST, bevel(foot, now));
    for (int bevel = first; bevel <= STEEPEST; bevel++) {
      deepest[bevel] = deepest(foot, bevel, depth, passes);
      most = Math.max(most, area(foot, bevel, deepest[bevel]));
    }
    for (int bevel = first; bevel <= STEEPEST; bevel++) {
      if (deepest[bevel] >= 0.01 && area(foot, bevel, deepest[bevel]) >= ENOUGH * most) {
        return Optional.of(new TabShape(bevel, deepest[bevel]));
      }
    }
    return Optional.empty();
  }

  /** The words for a tab that stays within a region, such as the panel it is glued under. */
  public static Message within(Value tab, Segment2 foot, Polygon2 now, Polygon2 region) {
    return words(tab, foot, now, shape -> past(shape, region) <= WITHIN.mm()).plus(".");
  }

  /** The words for a tab, or several alike, that pass; without a full stop. */
  public static Message words(Value tabs, Segment2 foot, Polygon2 now, Predicate<Polygon2> passes) {
    return words(tabs, foot, now, passes, "put it elsewhere");
  }

  /**
   * The same.
   *
   * @param elsewhere what helps where there is no room
   */
  public static Message words(
      Value tabs, Segment2 foot, Polygon2 now, Predicate<Polygon2> passes, String elsewhere) {
    Optional<TabShape> shape = of(foot, now, passes);
    if (shape.isEmpty()) {
      return Message.of("There is no room for %s there: take it out, or %s", tabs, elsewhere);
    }
    int bevel = shape.get().bevel();
    Message deep = Message.of("at most %s deep", Value.atMost(shape.get().depth()));
    if (bevel == bevel(foot, now)) {
      return Message.of("Make %s %s%s", tabs, deep, orBevel(bevel(foot, now, passes)));
    }
    return Message.of(
        "Bevel the ends of %s by %s%s",
        tabs,
        Value.angle(bevel),
        shape.get().depth() < depth(foot, now) - LengthTolerance.FINE.mm()
            ? Message.of(" and make it %s", deep)
            : "");
  }

  /** Where more bevel alone does as well: ", or bevel its ends by 18°"; or nothing. */
  public static Message orBevel(OptionalInt bevel) {
    return bevel.isEmpty()
        ? Message.EMPTY
        : Message.of(", or bevel its ends by %s", Value.angle(bevel.getAsInt()));
  }

  /** The least bevel by which a tab as deep as it is passes, in whole degrees; empty where none. */
  public static OptionalInt bevel(Segment2 foot, Polygon2 now, Predicate<Polygon2> passes) {
    double depth = depth(foot, now);
    return IntStream.rangeClosed(bevel(foot, now) + 1, STEEPEST)
        .takeWhile(bevel -> 2 * depth * slope(bevel) <= (1 - LEAST_END) * foot.length())
        .filter(bevel -> passes.test(drawn(foot, slope(bevel), depth)))
        .findFirst();
  }

  private static double slope(int bevel) {
    return Math.tan(Math.toRadians(bevel));
  }

  /**
   * The shape in which two tabs keep clear of each other, as deep as the deeper at most.
   *
   * @param isApart whether two tabs, the first of the deeper, keep clear
   */
  public static Optional<TabShape> clear(
      Segment2 foot,
      Polygon2 lying,
      Segment2 foot2,
      Polygon2 lying2,
      BiPredicate<Polygon2, Polygon2> isApart) {
    if (depth(foot, lying) < depth(foot2, lying2)) {
      return clear(foot2, lying2, foot, lying, isApart);
    }
    return of(
        foot,
        lying,
        tab -> {
          TabShape shape = new TabShape(bevel(foot, tab), depth(foot, tab));
          double slope = Math.tan(Math.toRadians(shape.bevel()));
          boolean isPointed = 2 * shape.depth() * slope >= foot2.length();
          return !isPointed && isApart.test(tab, drawn(foot2, slope, shape.depth()));
        });
  }

  /** How far a tab reaches off the line that it is folded along, in mm. */
  public static double depth(Segment2 foot, Polygon2 tab) {
    return tab.corners().stream().mapToDouble(c -> off(foot, c)).max().orElse(0);
  }

  /**
   * How far a tab reaches past a region, in mm; 0 where it does not. The distance from a convex
   * outline is a convex function, so that of all places of a tab a corner is the farthest off (Boyd
   * and Vandenberghe, Convex Optimization, 2004, section 3.2.5: from memory).
   */
  public static double past(Polygon2 tab, Polygon2 region) {
    if (region.isConvex()) {
      return tab.corners().stream().mapToDouble(c -> offConvex(c, region)).max().orElse(0);
    }
    Polygon whole = Planar.polygon(region);
    Geometry past = OverlayNGRobust.overlay(Planar.polygon(tab), whole, OverlayNG.DIFFERENCE);
    double most = 0;
    for (Coordinate c : past.getCoordinates()) {
      most = Math.max(most, whole.distance(Planar.factory().createPoint(c)));
    }
    return most;
  }

  /** How far a place is from a convex outline; 0 inside. */
  private static double offConvex(Vec2 place, Polygon2 convex) {
    double nearest = Double.POSITIVE_INFINITY;
    boolean inside = true;
    for (int i = 0; i < convex.size(); i++) {
      Segment2 side = convex.side(i);
      inside &= side.to().minus(side.from()).cross(place.minus(side.from())) >= 0;
      nearest = Math.min(nearest, side.distance(place));
    }
    return inside ? 0 : nearest;
  }

  private static double off(Segment2 foot, Vec2 place) {
    return foot.direction().cross(place.minus(foot.from()));
  }

  /** The bevel a tab has, at its less beveled end, in whole degrees. */
  private static int bevel(Segment2 foot, Polygon2 tab) {
    Vec2 along = foot.direction();
    double least = 90;
    for (int i = 0; i < tab.size(); i++) {
      Segment2 side = tab.side(i);
      if (side.from().distance(foot.to()) < Mm.HAIR) {
        least = Math.min(least, lean(side.direction(), along.times(-1)));
      }
      if (side.to().distance(foot.from()) < Mm.HAIR) {
        least = Math.min(least, lean(side.direction().times(-1), along));
      }
    }
    return (int) Math.max(0, Math.floor(least + ROUNDED));
  }

  /** How far a tab's end leans from square toward its middle, in degrees. */
  private static double lean(Vec2 end, Vec2 inward) {
    return Math.toDegrees(Math.asin(Math.clamp(end.dot(inward), -1, 1)));
  }

  private static double area(Segment2 foot, int bevel, double depth) {
    return depth * (foot.length() - depth * slope(bevel));
  }

  /** How deep a tab so beveled may be; 0 where none passes. */
  private static double deepest(
      Segment2 foot, int bevel, double depth, Predicate<Polygon2> passes) {
    double slope = slope(bevel);
    double most = slope == 0 ? depth : Math.min(depth, foot.length() * (1 - LEAST_END) / 2 / slope);
    if (passes.test(drawn(foot, slope, most))) {
      return most;
    }
    double in = 0;
    double out = most;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (in + out) / 2;
      if (passes.test(drawn(foot, slope, middle))) {
        in = middle;
      } else {
        out = middle;
      }
    }
    return in < Mm.HAIR ? 0 : in;
  }

  /** A tab so beveled and so deep. */
  static Polygon2 drawn(Segment2 foot, double slope, double depth) {
    Vec2 along = foot.direction();
    Vec2 up = along.left().times(depth);
    Vec2 in = along.times(depth * slope);
    return Polygon2.ofEitherSense(
        List.of(
            foot.from(), foot.to(), foot.to().plus(up).minus(in), foot.from().plus(up).plus(in)));
  }
}
