package facetwright.check.closing;

import facetwright.check.finding.Subject;
import facetwright.geom.AngleTolerance;
import facetwright.geom.Segment2;
import facetwright.net.EdgeRef;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Panels of four sides that hang together by parallel ones, all round.
 *
 * @param sides for each wall in turn the side by which it meets the next
 * @param next the sides that those meet
 */
record Tube(List<EdgeRef> sides, List<EdgeRef> next) {
  /** Sides that turn less from each other are parallel. */
  private static final AngleTolerance PARALLEL = AngleTolerance.UNSEEN;

  Tube {
    sides = List.copyOf(sides);
    next = List.copyOf(next);
  }

  /** All of a net's with three walls or more, each once. */
  static List<Tube> all(Subject subject) {
    Map<EdgeRef, EdgeRef> across = Meeting.across(subject.net());
    Set<EdgeRef> seen = new HashSet<>();
    List<Tube> found = new ArrayList<>();
    for (int p = 0; p < subject.net().panels().size(); p++) {
      for (int e = 0; e < 2 && subject.panel(p).outline().size() == 4; e++) {
        List<EdgeRef> tube = round(subject, new EdgeRef(p, e), across);
        if (tube.size() >= 3 && tube.stream().noneMatch(seen::contains)) {
          tube.forEach(
              side -> {
                seen.add(side);
                seen.add(opposite(side));
              });
          found.add(new Tube(tube, tube.stream().map(across::get).toList()));
        }
      }
    }
    return found;
  }

  /** The walls of a tube, each by the side it is left by; none where it does not go round. */
  private static List<EdgeRef> round(Subject subject, EdgeRef first, Map<EdgeRef, EdgeRef> across) {
    List<EdgeRef> tube = new ArrayList<>();
    EdgeRef side = first;
    do {
      EdgeRef next = across.get(side);
      tube.add(side);
      boolean goesOn =
          isWall(subject, side)
              && next != null
              && subject.panel(next.panel()).outline().size() == 4
              && tube.size() <= subject.net().panels().size();
      if (!goesOn) {
        return List.of();
      }
      side = opposite(next);
    } while (!side.equals(first));
    return tube;
  }

  private static EdgeRef opposite(EdgeRef side) {
    return new EdgeRef(side.panel(), (side.edge() + 2) % 4);
  }

  private static boolean isWall(Subject subject, EdgeRef side) {
    Segment2 one = subject.net().segment(side);
    Segment2 two = subject.net().segment(opposite(side));
    return Math.abs(one.direction().cross(two.direction())) <= PARALLEL.radians();
  }

  /** How wide a wall is round the tube, in mm. */
  static double width(Subject subject, EdgeRef side) {
    Segment2 one = subject.net().segment(side);
    return Math.abs(
        one.direction().cross(subject.net().segment(opposite(side)).from().minus(one.from())));
  }
}
