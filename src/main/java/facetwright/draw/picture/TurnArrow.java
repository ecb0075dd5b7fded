package facetwright.draw.picture;

import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.Mark.Stroke;
import facetwright.geom.Vec2;
import java.util.ArrayList;
import java.util.List;

/** An arrow that says how something is turned before a step. */
final class TurnArrow {
  private static final int PARTS = 8;
  private static final double HEAD = 1.4;

  /** How far the halves of the head stand off the line, in radians. */
  private static final double SPREAD = 0.5;

  private TurnArrow() {}

  /**
   * Turned as it lies.
   *
   * @param quarters to the left, 1 to 3; three are one to the right
   */
  static List<Mark> of(Vec2 middle, double radius, int quarters) {
    double turn = quarters == 3 ? -Math.PI / 2 : quarters * Math.PI / 2;
    double from = Math.PI / 2 - turn / 2;
    List<Vec2> points = new ArrayList<>();
    for (int i = 0; i <= PARTS; i++) {
      points.add(middle.plus(Vec2.polar(radius, from + turn * i / PARTS)));
    }
    return headed(points);
  }

  /**
   * Turned over about its upright middle: a bow from side to side.
   *
   * @param wide from end to end
   */
  static List<Mark> over(Vec2 foot, double wide, double high) {
    List<Vec2> points = new ArrayList<>();
    for (int i = 0; i <= PARTS; i++) {
      double a = Math.PI * i / PARTS;
      points.add(foot.plus(new Vec2(-Math.cos(a) * wide / 2, Math.sin(a) * high)));
    }
    return headed(points);
  }

  /** About an upright line: a flat bow round it. */
  static List<Mark> round(Vec2 middle, double wide, double high) {
    List<Vec2> points = new ArrayList<>();
    for (int i = 0; i <= 2 * PARTS; i++) {
      double a = -0.9 * Math.PI * (1 - (double) i / PARTS) - Math.PI / 2;
      points.add(middle.plus(new Vec2(Math.cos(a) * wide / 2, Math.sin(a) * high / 2)));
    }
    return headed(points);
  }

  /** A line with a head at its end. */
  static List<Mark> headed(List<Vec2> points) {
    Vec2 tip = points.getLast();
    Vec2 back = points.get(points.size() - 2).minus(tip);
    double angle = Math.atan2(back.y(), back.x());
    return List.of(
        new Stroke(points, false, LineKind.NOW),
        new Stroke(
            List.of(
                tip.plus(Vec2.polar(HEAD, angle - SPREAD)),
                tip,
                tip.plus(Vec2.polar(HEAD, angle + SPREAD))),
            false,
            LineKind.NOW));
  }
}
