package facetwright.draw;

import facetwright.geom.Arc;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Which straight parts of a drawing stand for an arc of an outline, by where they lie. */
final class RoundSides {
  /** Ends that fall on one place of a grid so fine are one end. */
  private static final LengthTolerance GRID = new LengthTolerance(1e-5);

  private final Map<List<Long>, Bow> bows = new HashMap<>();

  /** An arc of an outline: itself, however many are like it. */
  private static final class Bow {
    private final Vec2 centre;

    Bow(Vec2 centre) {
      this.centre = centre;
    }
  }

  /**
   * @param outlines those of which sides are drawn
   */
  RoundSides(List<Polygon2> outlines) {
    for (Polygon2 outline : outlines) {
      for (Arc arc : outline.arcs()) {
        Bow bow = new Bow(arc.centre());
        for (int i = 0; i < arc.sides(); i++) {
          int side = arc.first() + i;
          bows.put(key(outline.corner(side), outline.corner(side + 1)), bow);
        }
      }
    }
  }

  private static List<Long> key(Vec2 a, Vec2 b) {
    boolean first = a.x() < b.x() || (a.x() == b.x() && a.y() < b.y());
    Vec2 one = first ? a : b;
    Vec2 two = first ? b : a;
    return List.of(grid(one.x()), grid(one.y()), grid(two.x()), grid(two.y()));
  }

  private static long grid(double mm) {
    return Math.round(mm / GRID.mm());
  }

  /** The line with the arcs that it runs along; a whole circle as one. */
  Mark along(Mark.Stroke line) {
    if (bows.isEmpty()) {
      return line;
    }
    int n = line.points().size();
    int sides = line.closed() ? n : n - 1;
    Bow[] of = new Bow[sides];
    for (int i = 0; i < sides; i++) {
      of[i] = bows.get(key(line.points().get(i), line.points().get((i + 1) % n)));
    }
    int start = 0;
    while (line.closed() && start < sides && of[start] == of[(start + sides - 1) % sides]) {
      start++;
    }
    start %= sides;
    List<Arc> arcs = new ArrayList<>();
    for (int i = 0; i < sides; ) {
      int at = (start + i) % sides;
      int count = 1;
      while (i + count < sides && of[(at + count) % sides] == of[at]) {
        count++;
      }
      if (of[at] != null) {
        arcs.add(new Arc(at, count, of[at].centre));
      }
      i += count;
    }
    return round(new Mark.Stroke(line.points(), line.closed(), line.kind(), arcs));
  }

  /** An outline as a line; a whole circle as one. */
  static Mark around(Polygon2 outline, LineKind kind) {
    return round(Mark.Stroke.around(outline, kind));
  }

  private static Mark round(Mark.Stroke line) {
    List<Arc> arcs = line.arcs();
    int sides = arcs.stream().mapToInt(Arc::sides).sum();
    if (!line.closed() || sides < line.points().size()) {
      return line;
    }
    Vec2 centre = arcs.getFirst().centre();
    return arcs.stream().allMatch(a -> LengthTolerance.FINE.same(a.centre(), centre))
        ? new Mark.Circle(centre, centre.distance(line.points().getFirst()), line.kind())
        : line;
  }
}
