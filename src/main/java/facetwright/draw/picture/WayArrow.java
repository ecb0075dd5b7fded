package facetwright.draw.picture;

import facetwright.draw.Ink;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.geom.Box2;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import java.util.ArrayList;
import java.util.List;

/** The arrow that tells which way something moves in a picture of patches. */
final class WayArrow {
  /** A way that looks shorter begins before what moves, in mm. */
  static final double SHORT = 9;

  private static final double HEAD = 2.4;
  private static final int PARTS = 10;
  private static final double BENT = 0.3;

  private WayArrow() {}

  /** A line with a head at its end, over what was drawn before. */
  static Mark.Patch of(List<Vec2> points) {
    Vec2 tip = points.getLast();
    Vec2 back = points.get(points.size() - 2).minus(tip).unit();
    Vec2 foot = tip.plus(back.times(HEAD));
    Vec2 aside = back.left().times(HEAD / 2);
    List<Vec2> shaft = new ArrayList<>(points.subList(0, points.size() - 1));
    shaft.add(tip.plus(back.times(HEAD / 2)));
    return new Mark.Patch(
        List.of(Polygon2.ofEitherSense(List.of(tip, foot.plus(aside), foot.minus(aside)))),
        Ink.BLACK,
        List.of(new Mark.Stroke(shaft, false, LineKind.NOW)),
        Labels.NO_PART);
  }

  /**
   * A way that bends outward.
   *
   * @param middle of the piece
   */
  static List<Vec2> bow(Vec2 start, Vec2 goal, Vec2 middle) {
    Vec2 out = start.minus(middle);
    Vec2 outward = out.length() < 1 ? new Vec2(0, 1) : out.unit();
    double far = start.distance(goal);
    Vec2 along = far < 1 ? outward.times(-1) : goal.minus(start).unit();
    Vec2 begin = far < SHORT ? goal.minus(along.times(SHORT)) : start;
    Vec2 bend = begin.toward(goal, 0.5).plus(outward.times(BENT * begin.distance(goal)));
    List<Vec2> points = new ArrayList<>();
    for (int i = 0; i <= PARTS; i++) {
      double u = (double) i / PARTS;
      points.add(begin.toward(bend, u).toward(bend.toward(goal, u), u));
    }
    return points;
  }

  /** What it covers. */
  static List<Box2> places(List<Vec2> points) {
    List<Box2> places = new ArrayList<>();
    places.add(around(points.getLast(), HEAD / 2 + 0.3));
    for (int i = 0; i + 1 < points.size(); i++) {
      for (int k = 0; k <= PARTS; k++) {
        places.add(around(points.get(i).toward(points.get(i + 1), (double) k / PARTS), 0.6));
      }
    }
    return places;
  }

  private static Box2 around(Vec2 p, double by) {
    return new Box2(p.x(), p.y(), p.x(), p.y()).grown(by);
  }
}
