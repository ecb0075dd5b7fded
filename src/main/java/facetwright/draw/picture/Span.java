package facetwright.draw.picture;

import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.Mark.Stroke;
import facetwright.geom.Vec2;
import java.util.List;

/** The line of a measure, with a tick at either end. */
final class Span {
  private static final double TICK = 0.8;

  private Span() {}

  /**
   * @param gap left in its middle for words, in mm; a shorter line is left out but for its ticks
   */
  static void draw(List<Mark> marks, Vec2 from, Vec2 to, double gap) {
    Vec2 along = to.minus(from).unit();
    Vec2 tick = along.left().times(TICK);
    for (Vec2 end : List.of(from, to)) {
      marks.add(Stroke.line(end.minus(tick), end.plus(tick), LineKind.GUIDE));
    }
    double half = (to.distance(from) - gap) / 2;
    if (gap == 0) {
      marks.add(Stroke.line(from, to, LineKind.GUIDE));
    } else if (half > 0) {
      marks.add(Stroke.line(from, from.plus(along.times(half)), LineKind.GUIDE));
      marks.add(Stroke.line(to, to.minus(along.times(half)), LineKind.GUIDE));
    }
  }
}
