package facetwright.geom;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A part of a line: straight, or along a circle.
 *
 * @param centre of the circle; where it is straight, where it starts
 * @param turn how far it goes round the centre, in radians, counter-clockwise; 0 where it is
 *     straight
 */
public record Leg(Vec2 from, Vec2 to, Vec2 centre, double turn) {
  public boolean isStraight() {
    return turn == 0;
  }

  /** The direction in which it goes at a place of it. */
  Vec2 way(Vec2 place) {
    return isStraight()
        ? to.minus(from).unit()
        : place.minus(centre).unit().left().times(Math.signum(turn));
  }

  public double radius() {
    return centre.distance(from);
  }

  /**
   * The legs of a line, one after another.
   *
   * @param closed whether it returns to its first point
   * @param arcs that runs of its sides stand for
   */
  public static List<Leg> of(List<Vec2> points, boolean closed, List<Arc> arcs) {
    int n = points.size();
    int sides = closed ? n : n - 1;
    Arc[] starting = new Arc[n];
    boolean[] taken = new boolean[n];
    for (Arc arc : arcs) {
      starting[arc.first()] = arc;
      for (int i = 0; i < arc.sides(); i++) {
        taken[(arc.first() + i) % n] = true;
      }
    }
    List<Leg> legs = new ArrayList<>();
    // A line that begins within an arc is taken from that arc's start on.
    int first = 0;
    while (closed && first < n && taken[first] && starting[first] == null) {
      first++;
    }
    for (int i = 0; i < sides; ) {
      int at = (first + i) % n;
      Vec2 from = points.get(at);
      Arc arc = starting[at];
      int count = arc == null ? 1 : arc.sides();
      Vec2 to = points.get((at + count) % n);
      legs.add(
          arc == null
              ? new Leg(from, to, from, 0)
              : new Leg(from, to, arc.centre(), turn(points, arc)));
      i += count;
    }
    return legs;
  }

  private static double turn(List<Vec2> points, Arc arc) {
    double[] turns = new double[arc.sides()];
    for (int i = 0; i < turns.length; i++) {
      Vec2 from = points.get((arc.first() + i) % points.size()).minus(arc.centre());
      Vec2 to = points.get((arc.first() + i + 1) % points.size()).minus(arc.centre());
      turns[i] = Math.atan2(from.cross(to), from.dot(to));
    }
    return Arrays.stream(turns).sum();
  }
}
