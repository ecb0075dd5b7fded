package facetwright.fold.making;

import facetwright.geom.Vec3;
import java.util.ArrayList;
import java.util.List;

/** Panels in space, cut off by a plane (Sutherland and Hodgman, 1974; from memory). */
final class Cutting {
  private Cutting() {}

  /** What of a flat ring lies at least so far along a direction; empty where nothing does. */
  static List<Vec3> above(List<Vec3> ring, Vec3 direction, double from) {
    List<Vec3> part = new ArrayList<>();
    if (ring.isEmpty()) {
      return part;
    }
    Vec3 last = ring.getLast();
    for (Vec3 next : ring) {
      double before = direction.dot(last) - from;
      double after = direction.dot(next) - from;
      if (before < 0 != after < 0) {
        part.add(last.toward(next, before / (before - after)));
      }
      if (after >= 0) {
        part.add(next);
      }
      last = next;
    }
    return part;
  }
}
