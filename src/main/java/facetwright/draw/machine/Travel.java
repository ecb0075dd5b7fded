package facetwright.draw.machine;

import facetwright.draw.Mark;
import facetwright.draw.Mark.Circle;
import facetwright.draw.Mark.Stroke;
import facetwright.geom.Vec2;
import java.util.ArrayList;
import java.util.List;

/**
 * The order in which lines are run: always the nearest next, an open one from its nearer end. That
 * is not the shortest way of all, but far shorter than none.
 */
final class Travel {
  private Travel() {}

  /**
   * @param from where the tool is before the first
   */
  static List<Mark> order(List<Mark> lines, Vec2 from) {
    List<Mark> left = new ArrayList<>(lines);
    List<Mark> run = new ArrayList<>();
    Vec2 at = from;
    while (!left.isEmpty()) {
      int best = 0;
      double least = Double.POSITIVE_INFINITY;
      for (int i = 0; i < left.size(); i++) {
        double way = Math.min(at.distance(start(left.get(i))), at.distance(end(left.get(i))));
        if (way < least) {
          least = way;
          best = i;
        }
      }
      Mark next = left.remove(best);
      if (at.distance(end(next)) < at.distance(start(next))) {
        next = reversed(next);
      }
      run.add(next);
      at = end(next);
    }
    return run;
  }

  static Vec2 start(Mark line) {
    return switch (line) {
      case Stroke s -> s.points().getFirst();
      case Circle c -> c.centre().plus(new Vec2(c.radius(), 0));
      case Mark.Fill _, Mark.Patch _, Mark.Text _ ->
          throw new IllegalArgumentException("a machine runs along lines only");
    };
  }

  static Vec2 end(Mark line) {
    return line instanceof Stroke s && !s.closed() ? s.points().getLast() : start(line);
  }

  private static Mark reversed(Mark line) {
    return line instanceof Stroke s && !s.closed() && s.arcs().isEmpty()
        ? new Stroke(s.points().reversed(), false, s.kind())
        : line;
  }
}
