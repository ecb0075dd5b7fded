package facetwright.net.outline;

import facetwright.geom.Arc;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.NetException;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;

/** Corners rounded by arcs, each meeting its two sides without a kink. */
final class Rounding {
  /** A corner that turns by less, in radians, lies on a straight side. */
  private static final double STRAIGHT = 1e-7;

  private Rounding() {}

  /** How far an outline turns to the left at a corner, in radians. */
  static double turn(Outline outline, int corner) {
    Vec2 in = outline.corner(corner).at().minus(outline.corner(corner - 1).at());
    Vec2 out = outline.corner(corner + 1).at().minus(outline.corner(corner).at());
    return Math.atan2(in.cross(out), in.dot(out));
  }

  static boolean isStraight(Outline outline, int corner) {
    return Math.abs(turn(outline, corner)) < STRAIGHT;
  }

  /** How much of each of its sides a round corner takes a unit of its radius: tan(turn / 2). */
  private static double part(Outline outline, int corner) {
    return Math.tan(Math.abs(turn(outline, corner)) / 2);
  }

  /** How much of a side the round corners at its ends take, in mm. */
  static double taken(Outline outline, int side) {
    return taken(outline, side, side) + taken(outline, side, side + 1);
  }

  private static double taken(Outline outline, int side, int corner) {
    return outline.corner(corner).isRound()
        ? part(outline, corner) * outline.corner(corner).radius()
        : 0;
  }

  static Outline of(Outline from, double radius, List<Integer> which, Site site) {
    for (int c : which) {
      if (isStraight(from, c)) {
        throw new NetException(
            "corner " + (c + 1) + " of the outline lies on a straight side: nothing to round",
            site);
      }
    }
    Outline asked = with(from, radius, which);
    if (fits(asked)) {
      return asked;
    }
    double most = Most.under(radius, mm -> fits(with(from, mm, which)));
    throw new NetException(
        Message.of(
            "corners rounded by %s find no room on their sides: at most by %s",
            Value.given(radius), Value.atMost(most)),
        site);
  }

  private static Outline with(Outline from, double radius, List<Integer> which) {
    List<Corner> corners = new ArrayList<>(from.corners());
    which.forEach(c -> corners.set(c, new Corner(corners.get(c).at(), radius)));
    return new Outline(corners);
  }

  private static boolean fits(Outline outline) {
    for (int side = 0; side < outline.size(); side++) {
      double length = outline.corner(side).at().distance(outline.corner(side + 1).at());
      if (taken(outline, side) > length + LengthTolerance.FINE.mm()) {
        return false;
      }
    }
    return Offset.isSimple(outline);
  }

  /** The area that rounding takes off, in mm²: below 0 where it fills hollow corners. */
  static double lost(Outline outline) {
    double lost = 0;
    for (int c = 0; c < outline.size(); c++) {
      double turn = turn(outline, c);
      double r = outline.corner(c).radius();
      // Two tangents of length r·tan(t/2) with the middle make a kite; of it the sector stays.
      lost += Math.signum(turn) * r * r * (Math.tan(Math.abs(turn) / 2) - Math.abs(turn) / 2);
    }
    return lost;
  }

  /** The places on a round corner's arc from side to side, in so many equal steps. */
  static List<Vec2> along(Outline outline, int corner, int steps) {
    Corner at = outline.corner(corner);
    Vec2 in = at.at().minus(outline.corner(corner - 1).at()).unit();
    Vec2 start = at.at().minus(in.times(taken(outline, corner - 1, corner)));
    Vec2 centre = centre(outline, corner);
    double turn = turn(outline, corner);
    List<Vec2> places = new ArrayList<>(List.of(start));
    for (int i = 1; i <= steps; i++) {
      places.add(centre.plus(Motion2.turn(turn * i / steps).apply(start.minus(centre))));
    }
    return places;
  }

  private static Vec2 centre(Outline outline, int corner) {
    Corner at = outline.corner(corner);
    Vec2 in = at.at().minus(outline.corner(corner - 1).at()).unit();
    Vec2 start = at.at().minus(in.times(taken(outline, corner - 1, corner)));
    return start.plus(in.left().times(Math.copySign(at.radius(), turn(outline, corner))));
  }

  /** As it is cut, each arc by as many sides as it needs. */
  static Polygon2 polygon(Outline outline) {
    List<Vec2> places = new ArrayList<>();
    List<Arc> arcs = new ArrayList<>();
    for (int c = 0; c < outline.size(); c++) {
      Corner corner = outline.corner(c);
      if (!corner.isRound()) {
        add(places, corner.at());
        continue;
      }
      int sides = Arc.sides(corner.radius(), Math.abs(turn(outline, c)));
      List<Vec2> along = along(outline, c, sides);
      add(places, along.getFirst());
      arcs.add(new Arc(places.size() - 1, sides, centre(outline, c)));
      places.addAll(along.subList(1, along.size()));
    }
    if (places.size() > 1 && LengthTolerance.FINE.same(places.getLast(), places.getFirst())) {
      places.removeLast();
    }
    return new Polygon2(places, arcs);
  }

  /** A place but where the one before is the same. */
  private static void add(List<Vec2> places, Vec2 place) {
    if (places.isEmpty() || !LengthTolerance.FINE.same(places.getLast(), place)) {
      places.add(place);
    }
  }
}
