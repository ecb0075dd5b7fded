package facetwright.draw.page;

import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.Mark.Stroke;
import facetwright.geom.Box2;
import facetwright.geom.Vec2;
import java.util.List;

/** Marks by which pages are trimmed and laid on each other. */
final class JoinMarks {
  /** How long a crop mark is, in mm. */
  static final double CROP = 4;

  /** How far a round mark reaches from its middle, in mm. */
  static final double REGISTER = 2.2;

  private static final double CROP_GAP = 1;

  private JoinMarks() {}

  /** At the corners of a window, outside it. */
  static void crops(List<Mark> marks, Box2 window, Vec2 shift) {
    for (double x : new double[] {window.minX(), window.maxX()}) {
      for (double y : new double[] {window.minY(), window.maxY()}) {
        Vec2 corner = new Vec2(x, y).plus(shift);
        double outX = x == window.minX() ? -1 : 1;
        double outY = y == window.minY() ? -1 : 1;
        crop(marks, corner, new Vec2(outX, 0));
        crop(marks, corner, new Vec2(0, outY));
      }
    }
  }

  private static void crop(List<Mark> marks, Vec2 corner, Vec2 out) {
    marks.add(
        Stroke.line(
            corner.plus(out.times(CROP_GAP)),
            corner.plus(out.times(CROP_GAP + CROP)),
            LineKind.GUIDE));
  }

  /** Round a place that two pages show. */
  static void register(List<Mark> marks, Vec2 place) {
    marks.add(new Mark.Circle(place, REGISTER * 0.6, LineKind.GUIDE));
    for (Vec2 arm : List.of(new Vec2(REGISTER, 0), new Vec2(0, REGISTER))) {
      marks.add(Stroke.line(place.minus(arm), place.plus(arm), LineKind.GUIDE));
    }
  }
}
