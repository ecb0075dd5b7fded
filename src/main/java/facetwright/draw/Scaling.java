package facetwright.draw;

import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import java.util.ArrayList;
import java.util.List;

/**
 * Marks made smaller or larger about the origin. Lines keep their width and their dashes; words are
 * left out, since they would not stay readable.
 */
final class Scaling {
  private final double factor;

  Scaling(double factor) {
    this.factor = factor;
  }

  List<Mark> of(List<? extends Mark> marks) {
    List<Mark> scaled = new ArrayList<>();
    for (Mark mark : marks) {
      switch (mark) {
        case Mark.Stroke s -> scaled.add(stroke(s));
        case Mark.Circle c ->
            scaled.add(new Mark.Circle(c.centre().times(factor), c.radius() * factor, c.kind()));
        case Mark.Fill f -> scaled.add(new Mark.Fill(rings(f.rings()), f.kind()));
        case Mark.Patch p ->
            scaled.add(
                new Mark.Patch(
                    rings(p.rings()),
                    p.ink(),
                    p.edges().stream().map(this::stroke).toList(),
                    p.part()));
        case Mark.Text _ -> {}
      }
    }
    return scaled;
  }

  private Mark.Stroke stroke(Mark.Stroke s) {
    return new Mark.Stroke(points(s.points()), s.closed(), s.kind());
  }

  private List<Vec2> points(List<Vec2> points) {
    return points.stream().map(p -> p.times(factor)).toList();
  }

  private List<Polygon2> rings(List<Polygon2> rings) {
    return rings.stream().map(r -> new Polygon2(points(r.corners()))).toList();
  }
}
