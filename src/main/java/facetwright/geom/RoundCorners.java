package facetwright.geom;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Outlines of straight sides between corners, each sharp or rounded by an arc that meets its two
 * sides without a kink. Corners run counter-clockwise; side i runs from corner i to the next.
 */
public final class RoundCorners {
  /** A corner that turns by less, in radians, lies on a straight side. */
  private static final double STRAIGHT = 1e-7;

  /** A line that turns by less, in radians, runs on. */
  private static final double KINK = 1e-6;

  /** An arc that turns by more, in radians, has sides that all but run back: no corner between. */
  private static final double WIDEST = 3.1;

  private RoundCorners() {}

  private static Corner at(List<Corner> corners, int index) {
    return corners.get(Math.floorMod(index, corners.size()));
  }

  /** The direction of a side. */
  public static Vec2 along(List<Corner> corners, int side) {
    return at(corners, side + 1).at().minus(at(corners, side).at()).unit();
  }

  /** How far the outline turns to the left at a corner, in radians. */
  public static double turn(List<Corner> corners, int corner) {
    Vec2 in = along(corners, corner - 1);
    Vec2 out = along(corners, corner);
    return Math.atan2(in.cross(out), in.dot(out));
  }

  public static boolean isStraight(List<Corner> corners, int corner) {
    return Math.abs(turn(corners, corner)) < STRAIGHT;
  }

  /** How much of each of its sides a round corner takes: r tan(turn / 2). */
  private static double tangent(List<Corner> corners, int corner) {
    double radius = at(corners, corner).radius();
    return radius > 0 ? radius * Math.tan(Math.abs(turn(corners, corner)) / 2) : 0;
  }

  /**
   * How long the straight part of a side is, in mm; below 0 where the arcs at its ends find no
   * room.
   *
   * @param way the direction that it should have: a side that runs the other way counts below 0
   */
  public static double straight(List<Corner> corners, int side, Vec2 way) {
    Vec2 whole = at(corners, side + 1).at().minus(at(corners, side).at());
    return whole.dot(way) - tangent(corners, side) - tangent(corners, side + 1);
  }

  /** The places on a round corner's arc from side to side, in so many equal steps. */
  public static List<Vec2> places(List<Corner> corners, int corner, int steps) {
    Vec2 centre = centre(corners, corner);
    Vec2 start = start(corners, corner);
    double turn = turn(corners, corner);
    List<Vec2> places = new ArrayList<>(List.of(start));
    for (int i = 1; i <= steps; i++) {
      places.add(centre.plus(Motion2.turn(turn * i / steps).apply(start.minus(centre))));
    }
    return places;
  }

  private static Vec2 start(List<Corner> corners, int corner) {
    Vec2 back = along(corners, corner - 1).times(tangent(corners, corner));
    return at(corners, corner).at().minus(back);
  }

  /** The middle of a round corner's arc. */
  public static Vec2 centre(List<Corner> corners, int corner) {
    double radius = Math.copySign(at(corners, corner).radius(), turn(corners, corner));
    return start(corners, corner).plus(along(corners, corner - 1).left().times(radius));
  }

  /** The places along it as it is cut, and its arcs among them. */
  private record Cut(List<Vec2> places, List<Arc> arcs) {}

  private static Cut cut(List<Corner> corners) {
    List<Vec2> places = new ArrayList<>();
    List<Arc> arcs = new ArrayList<>();
    for (int c = 0; c < corners.size(); c++) {
      if (!at(corners, c).isRound()) {
        add(places, at(corners, c).at());
        continue;
      }
      int sides = Arc.sides(at(corners, c).radius(), Math.abs(turn(corners, c)));
      List<Vec2> along = places(corners, c, sides);
      add(places, along.getFirst());
      arcs.add(new Arc(places.size() - 1, sides, centre(corners, c)));
      places.addAll(along.subList(1, along.size()));
    }
    if (places.size() > 1 && LengthTolerance.FINE.same(places.getLast(), places.getFirst())) {
      places.removeLast();
    }
    return new Cut(places, arcs);
  }

  /**
   * As it is cut, each arc by as many sides as it needs; empty where it has no area, or crosses or
   * touches itself.
   */
  public static Optional<Polygon2> polygon(List<Corner> corners) {
    Cut cut = cut(corners);
    return Polygon2.wide(cut.places)
        .map(_ -> new Polygon2(cut.places, cut.arcs))
        .filter(Polygon2::isSimple);
  }

  /** A place but where the one before is the same. */
  private static void add(List<Vec2> places, Vec2 place) {
    if (places.isEmpty() || !LengthTolerance.FINE.same(places.getLast(), place)) {
      places.add(place);
    }
  }

  /** Whether two legs, one after the other, meet without a kink. */
  private static boolean isSmooth(Leg before, Leg after) {
    Vec2 in = before.way(before.to());
    Vec2 out = after.way(after.from());
    return Math.abs(Math.atan2(in.cross(out), in.dot(out))) < KINK;
  }

  /**
   * The corners of an outline, an arc's where the sides that it meets would meet; empty where one
   * does not run on straight from its sides.
   */
  private static Optional<List<Corner>> of(Polygon2 outline) {
    List<Corner> corners = new ArrayList<>();
    List<Leg> legs = Leg.of(outline.corners(), true, outline.arcs());
    for (int i = 0; i < legs.size(); i++) {
      Leg leg = legs.get(i);
      if (!leg.isStraight()) {
        Leg before = legs.get(Math.floorMod(i - 1, legs.size()));
        Leg after = legs.get((i + 1) % legs.size());
        if (Math.abs(leg.turn()) > WIDEST || !isSmooth(before, leg) || !isSmooth(leg, after)) {
          return Optional.empty();
        }
        Vec2 spoke = leg.from().minus(leg.centre());
        Vec2 ahead = spoke.left().times(Math.tan(leg.turn() / 2));
        corners.add(new Corner(leg.from().plus(ahead), leg.radius()));
      } else if (legs.get(Math.floorMod(i - 1, legs.size())).isStraight()) {
        corners.add(new Corner(leg.from()));
      }
    }
    return Optional.of(corners).filter(c -> c.size() >= 3 && isCutSo(c, outline));
  }

  private static boolean isCutSo(List<Corner> corners, Polygon2 outline) {
    List<Vec2> places = cut(corners).places;
    return places.size() == outline.size()
        && places.stream()
            .allMatch(
                p -> outline.corners().stream().anyMatch(c -> LengthTolerance.FINE.same(c, p)));
  }

  /**
   * Each side moved outward by one distance, below 0 inward. A corner moves to where its two moved
   * sides meet: along n + m by d / (1 + n·m), where n and m are their directions outward; a round
   * one stays round about the same middle, and is sharp once that is reached. Whether a side is
   * gone or the outline crosses itself is not looked at.
   *
   * @return empty where a corner is so sharp that it would move without end
   */
  public static Optional<List<Corner>> setOff(List<Corner> corners, double by) {
    List<Corner> moved = new ArrayList<>();
    for (int c = 0; c < corners.size(); c++) {
      Vec2 n = along(corners, c - 1).left().times(-1);
      Vec2 m = along(corners, c).left().times(-1);
      Vec2 along = n.plus(m);
      double part = by / (1 + n.dot(m));
      if (!Double.isFinite(part * along.x()) || !Double.isFinite(part * along.y())) {
        return Optional.empty();
      }
      // Where it turns left the middle lies inside, and the arc grows outward.
      double grows = turn(corners, c) > 0 ? by : -by;
      Corner from = at(corners, c);
      double radius = from.isRound() ? Math.max(0, from.radius() + grows) : 0;
      moved.add(new Corner(from.at().plus(along.times(part)), radius));
    }
    return Optional.of(moved);
  }

  /**
   * An outline with arcs, each of its sides and arcs moved outward by one distance, below 0 inward.
   *
   * @return empty where a side or an arc would be gone, or it would cross itself
   */
  public static Optional<Polygon2> setOff(Polygon2 outline, double by) {
    List<Corner> corners = of(outline).orElse(List.of());
    List<Corner> moved = setOff(corners, by).orElse(List.of());
    for (int i = 0; i < moved.size(); i++) {
      boolean isGone =
          (corners.get(i).isRound() && !moved.get(i).isRound())
              || LengthTolerance.FINE.same(moved.get(i).at(), at(moved, i + 1).at());
      if (isGone || straight(moved, i, along(corners, i)) < -LengthTolerance.FINE.mm()) {
        return Optional.empty();
      }
    }
    return moved.isEmpty() ? Optional.empty() : polygon(moved);
  }
}
