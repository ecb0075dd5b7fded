package facetwright.geom;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Which straight lines stand for an arc of an outline, by where they lie. */
public final class RoundSides {
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
   * @param outlines of which the lines are sides
   */
  public RoundSides(List<Polygon2> outlines) {
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

  /**
   * The arcs that a line runs along.
   *
   * @param closed whether it returns to its first point
   */
  public List<Arc> along(List<Vec2> points, boolean closed) {
    if (bows.isEmpty()) {
      return List.of();
    }
    int n = points.size();
    int sides = closed ? n : n - 1;
    Bow[] of = new Bow[sides];
    for (int i = 0; i < sides; i++) {
      of[i] = bows.get(key(points.get(i), points.get((i + 1) % n)));
    }
    int start = 0;
    while (closed && start < sides && of[start] == of[(start + sides - 1) % sides]) {
      start++;
    }
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
    return arcs;
  }
}
