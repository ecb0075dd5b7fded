package facetwright.draw.machine;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import java.util.ArrayList;
import java.util.List;

/** Segments that follow one another on one straight line, as one. */
final class Straight {
  private static final double NEAR = LengthTolerance.UNSEEN.mm();

  private Straight() {}

  static List<Segment2> joined(List<Segment2> segments) {
    List<Segment2> joined = new ArrayList<>();
    for (Segment2 segment : segments) {
      Segment2 all = segment;
      boolean isLonger = true;
      while (isLonger) {
        isLonger = false;
        for (int i = 0; i < joined.size() && !isLonger; i++) {
          if (follow(joined.get(i), all)) {
            all = together(joined.remove(i), all);
            isLonger = true;
          }
        }
      }
      joined.add(all);
    }
    return joined;
  }

  /** Whether the two lie on one line and meet or share some of it. */
  private static boolean follow(Segment2 a, Segment2 b) {
    return a.distance(b) <= NEAR && isOnLine(a, b) && isOnLine(b, a);
  }

  private static boolean isOnLine(Segment2 line, Segment2 other) {
    Vec2 along = line.direction();
    return Math.abs(along.cross(other.from().minus(line.from()))) <= NEAR
        && Math.abs(along.cross(other.to().minus(line.from()))) <= NEAR;
  }

  private static Segment2 together(Segment2 a, Segment2 b) {
    Vec2 along = a.direction();
    Vec2 first = a.from();
    Vec2 last = a.to();
    for (Vec2 end : List.of(b.from(), b.to())) {
      if (along.dot(end.minus(first)) < 0) {
        first = end;
      }
      if (along.dot(end.minus(last)) > 0) {
        last = end;
      }
    }
    return new Segment2(first, last);
  }
}
