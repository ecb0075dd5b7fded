package facetwright.net;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/** A number by which a script asks for an opening, and what the opening is with another number. */
enum OpeningNumber {
  /** How far to the right its middle lies. */
  AT_X,
  /** How far up its middle lies. */
  AT_Y,
  /** A hole's diameter, or the size of a window with equal sides from corner to corner. */
  ACROSS,
  /** A rectangle's width. */
  WIDTH,
  /** A rectangle's height. */
  HEIGHT,
  /** The card left round a window of the panel's own shape. */
  BORDER;

  private static final LengthTolerance SAME = LengthTolerance.FINE;

  boolean isPlace() {
    return this == AT_X || this == AT_Y;
  }

  /**
   * The number that an opening was asked for with, in mm.
   *
   * @param panel the panel's outline
   * @return empty where openings of its shape have no such number
   */
  OptionalDouble asked(Opening opening, Polygon2 panel) {
    if (this == BORDER) {
      double border = border(opening, panel);
      return changed(opening, panel, 0, border)
              .filter(o -> isSame(o.outline(), opening.outline()))
              .isPresent()
          ? OptionalDouble.of(border)
          : OptionalDouble.empty();
    }
    if (opening instanceof Opening.Hole h) {
      Vec2 at = h.datum().measured(h.centre());
      return switch (this) {
        case AT_X -> OptionalDouble.of(at.x());
        case AT_Y -> OptionalDouble.of(at.y());
        case ACROSS -> OptionalDouble.of(h.diameter() / h.datum().scale());
        default -> OptionalDouble.empty();
      };
    }
    Polygon2 shape = measured(opening);
    Vec2 middle = shape.centroid();
    boolean isRectangle = isRectangle(shape);
    boolean isRegular = isRegular(shape, middle);
    return switch (this) {
      case AT_X -> given(isRectangle || isRegular, middle.x());
      case AT_Y -> given(isRectangle || isRegular, middle.y());
      case ACROSS -> given(isRegular, 2 * middle.distance(shape.corner(0)));
      case WIDTH -> given(isRectangle, shape.side(0).length());
      case HEIGHT -> given(isRectangle, shape.side(1).length());
      case BORDER -> OptionalDouble.empty();
    };
  }

  private static OptionalDouble given(boolean is, double value) {
    return is ? OptionalDouble.of(value) : OptionalDouble.empty();
  }

  /**
   * The opening with another number in place of the one it was asked for with.
   *
   * @return empty where nothing is left of it
   */
  Optional<Opening> changed(Opening opening, Polygon2 panel, double from, double to) {
    Datum datum = opening.datum();
    if (this == BORDER) {
      return Planar.inset(panel, to * datum.scale()).stream()
          .min(Comparator.comparingDouble(p -> p.centroid().distance(opening.outline().centroid())))
          .map(p -> new Opening.Window(p, datum, opening.site()));
    }
    Vec2 shift =
        switch (this) {
          case AT_X -> new Vec2(to - from, 0);
          case AT_Y -> new Vec2(0, to - from);
          default -> Vec2.ZERO;
        };
    double wider = this == WIDTH || this == ACROSS ? to / from : 1;
    double higher = this == HEIGHT || this == ACROSS ? to / from : 1;
    if (opening instanceof Opening.Hole h) {
      Vec2 centre = datum.place(datum.measured(h.centre()).plus(shift));
      return Optional.of(new Opening.Hole(centre, h.diameter() * wider, datum, h.site()));
    }
    Polygon2 shape = measured(opening);
    Vec2 middle = shape.centroid();
    UnaryOperator<Vec2> then =
        c -> {
          Vec2 d = c.minus(middle);
          return middle.plus(new Vec2(d.x() * wider, d.y() * higher)).plus(shift);
        };
    Polygon2 made =
        datum.place(
            wider == higher
                ? shape.taken(then)
                : new Polygon2(shape.corners().stream().map(then).toList()));
    return Optional.of(
        opening instanceof Opening.Slot
            ? new Opening.Slot(made, datum, opening.site())
            : new Opening.Window(made, datum, opening.site()));
  }

  private static Polygon2 measured(Opening opening) {
    return opening.datum().measured(opening.outline());
  }

  private static double border(Opening opening, Polygon2 panel) {
    double least = Double.POSITIVE_INFINITY;
    for (int e = 0; e < panel.size(); e++) {
      least = Math.min(least, opening.room(panel.side(e)));
    }
    return least / opening.datum().scale();
  }

  private static boolean isSame(Polygon2 a, Polygon2 b) {
    return a.size() == b.size()
        && a.corners().stream().allMatch(c -> b.corners().stream().anyMatch(d -> SAME.same(c, d)));
  }

  /** Whether it stands upright, its first corner at the lower left. */
  private static boolean isRectangle(Polygon2 shape) {
    Vec2 a = shape.corner(0);
    Vec2 c = shape.corner(2);
    return shape.size() == 4
        && c.x() > a.x()
        && c.y() > a.y()
        && SAME.same(shape.corner(1), new Vec2(c.x(), a.y()))
        && SAME.same(shape.corner(3), new Vec2(a.x(), c.y()));
  }

  /** Whether its sides are equal and the last of them is level below. */
  private static boolean isRegular(Polygon2 shape, Vec2 middle) {
    double first = -Math.PI / 2 + Math.PI / shape.size();
    double radius = middle.distance(shape.corner(0));
    return isSame(Polygon2.regular(middle, shape.size(), radius, first), shape);
  }
}
