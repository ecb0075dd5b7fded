package facetwright.form.unfold;

import facetwright.geom.AngleTolerance;
import facetwright.geom.Box2;
import facetwright.geom.ConvexOutline;
import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.geom.RoundOff;
import facetwright.geom.Vec2;
import java.util.List;
import java.util.TreeMap;

/**
 * How a piece is turned: one of its panels' sides runs along the sheet. Of these turns the one that
 * fits the sheet, then the one of least box, where a turn with all sides along the sheet's edges
 * may take up to twice the box of one with none: scores square to the sheet are easier to measure.
 *
 * @param motion turns the piece and shifts its box to the origin
 * @param straight the part of all sides' length that runs along the sheet's edges
 */
record Packing(Motion2 motion, double width, double height, boolean fits, double straight) {

  /**
   * @param outlines everything in the piece, tabs too
   * @param sides outlines whose sides may run along the sheet
   * @param sheetWidth 0 where there is no sheet to fit
   */
  static Packing of(
      List<Polygon2> outlines, List<Polygon2> sides, double sheetWidth, double sheetHeight) {
    List<Vec2> points =
        ConvexOutline.of(outlines.stream().flatMap(o -> o.corners().stream()).toList());
    Packing best = null;
    TreeMap<Long, Direction> directions = directions(sides);
    double all = directions.values().stream().mapToDouble(Direction::length).sum();
    for (Direction direction : directions.values()) {
      Motion2 turn = Motion2.turn(-direction.angle);
      Box2 box = turn.boxOf(points);
      boolean fits =
          sheetWidth <= 0
              || fits(box, sheetWidth, sheetHeight)
              || fits(box, sheetHeight, sheetWidth);
      Motion2 motion = turn.then(Motion2.shift(new Vec2(-box.minX(), -box.minY())));
      Packing next = new Packing(motion, box.width(), box.height(), fits, direction.length / all);
      if (best == null || next.betterThan(best)) {
        best = next;
      }
    }
    return best;
  }

  private static boolean fits(Box2 box, double width, double height) {
    return box.width() <= width && box.height() <= height;
  }

  private boolean betterThan(Packing other) {
    return fits != other.fits ? fits : cost() < other.cost() * (1 - RoundOff.PART);
  }

  private double cost() {
    return area() * (1 - straight / 2);
  }

  /** The motion that turns it on by so many quarters, its box at the origin again. */
  Motion2 turned(int quarters) {
    Vec2 corner =
        switch (Math.floorMod(quarters, 4)) {
          case 0 -> Vec2.ZERO;
          case 1 -> new Vec2(height, 0);
          case 2 -> new Vec2(width, height);
          default -> new Vec2(0, width);
        };
    return motion.then(Motion2.turn(quarters * Math.PI / 2)).then(Motion2.shift(corner));
  }

  double area() {
    return width * height;
  }

  /** A direction of sides within a quarter turn, and how long all sides are that run along it. */
  private record Direction(double angle, double length) {}

  private static TreeMap<Long, Direction> directions(List<Polygon2> sides) {
    TreeMap<Long, Direction> directions = new TreeMap<>();
    for (Polygon2 outline : sides) {
      for (int i = 0; i < outline.size(); i++) {
        Vec2 d = outline.corner(i + 1).minus(outline.corner(i));
        double angle = Math.atan2(d.y(), d.x());
        double quarter = angle - RoundOff.floor(angle / (Math.PI / 2)) * (Math.PI / 2);
        double clean = Math.abs(quarter) < AngleTolerance.FINE.radians() ? 0 : quarter;
        directions.merge(
            Math.round(clean * 1e6),
            new Direction(clean, d.length()),
            (was, more) -> new Direction(was.angle, was.length + more.length));
      }
    }
    return directions;
  }
}
