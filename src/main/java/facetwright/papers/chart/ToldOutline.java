package facetwright.papers.chart;

import facetwright.geom.Arc;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** The outline that spots tell, as a hand draws it: arcs from end to end by their radius. */
final class ToldOutline {
  private final Function<Spot, Vec2> place;
  private final ToDoubleFunction<Measure> mm;

  /**
   * @param place where a spot lies
   * @param mm how long a measure is set
   */
  ToldOutline(Function<Spot, Vec2> place, ToDoubleFunction<Measure> mm) {
    this.place = place;
    this.mm = mm;
  }

  /** Its corners, an arc's by as many short sides as it needs. */
  List<Vec2> corners(List<Spot> spots) {
    if (spots.getFirst() instanceof Spot.Circle(Spot centre, Measure radius)) {
      double r = mm.applyAsDouble(radius);
      int sides = Arc.sides(r, 2 * Math.PI);
      return Polygon2.regular(place.apply(centre), sides, r, 0).corners();
    }
    List<Vec2> corners = new ArrayList<>();
    for (int i = 0; i < spots.size(); i++) {
      if (spots.get(i) instanceof Spot.Bow(Measure radius, _, boolean isLeft, _, _)) {
        Vec2 to = place.apply(spots.get((i + 1) % spots.size()));
        corners.addAll(between(corners.getLast(), to, mm.applyAsDouble(radius), isLeft));
      } else {
        corners.add(place.apply(spots.get(i)));
      }
    }
    return corners;
  }

  /** The corners between the ends of an arc; of a half circle where its radius does not reach. */
  private static List<Vec2> between(Vec2 from, Vec2 to, double told, boolean isLeft) {
    double apart = from.distance(to);
    if (apart <= LengthTolerance.FINE.mm()) {
      return List.of();
    }
    double radius = Math.max(told, apart / 2);
    double rise = Math.sqrt(Math.max(0, radius * radius - apart * apart / 4));
    int way = isLeft ? 1 : -1;
    Vec2 centre = from.toward(to, 0.5).plus(to.minus(from).unit().left().times(way * rise));
    double turn = 2 * Math.asin(Math.min(1, apart / 2 / radius));
    int sides = Arc.sides(radius, turn);
    List<Vec2> all = new ArrayList<>();
    for (int i = 1; i < sides; i++) {
      Motion2 part = Motion2.turn(way * turn * i / sides);
      all.add(centre.plus(part.apply(from.minus(centre))));
    }
    return all;
  }
}
