package facetwright.form.unfold;

import facetwright.form.Form;
import facetwright.form.FormEdge;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Vec3;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The longest ring of level edges round a form: the waist of a bauble, the rim of a drum. A form
 * that has one stands upright as it was drawn, even where it comes to a point below.
 */
final class LevelRing {
  private final Form form;
  private final List<List<Integer>> level = new ArrayList<>();

  private LevelRing(Form form) {
    this.form = form;
    form.corners().forEach(_ -> level.add(new ArrayList<>()));
    LengthTolerance tolerance = LengthTolerance.FINE;
    for (FormEdge edge : form.edges()) {
      Vec3 a = form.corners().get(edge.from());
      Vec3 b = form.corners().get(edge.to());
      if (tolerance.same(a.z(), b.z())) {
        level.get(edge.from()).add(edge.to());
        level.get(edge.to()).add(edge.from());
      }
    }
  }

  /** The ring's corners counter-clockwise from above, or an empty list where there is none. */
  static List<Integer> of(Form form) {
    LevelRing rings = new LevelRing(form);
    boolean[] seen = new boolean[form.corners().size()];
    List<List<Integer>> all = new ArrayList<>();
    for (int start = 0; start < seen.length; start++) {
      if (!seen[start]) {
        all.add(rings.walk(start, seen));
      }
    }
    return all.stream()
        .filter(r -> r.size() >= 3)
        .max(Comparator.comparingDouble(rings::length))
        .map(rings::counterClockwise)
        .orElse(List.of());
  }

  /** The simple ring through a corner, or an empty list: every corner on it has two level edges. */
  private List<Integer> walk(int start, boolean[] seen) {
    List<Integer> ring = new ArrayList<>();
    int at = start;
    int from = -1;
    do {
      if (seen[at] || level.get(at).size() != 2) {
        return List.of();
      }
      seen[at] = true;
      ring.add(at);
      int next = level.get(at).get(0) == from ? level.get(at).get(1) : level.get(at).get(0);
      from = at;
      at = next;
    } while (at != start);
    return ring;
  }

  private double length(List<Integer> ring) {
    double sum = 0;
    for (int i = 0; i < ring.size(); i++) {
      sum += corner(ring, i).distance(corner(ring, i + 1));
    }
    return sum;
  }

  private Vec3 corner(List<Integer> ring, int i) {
    return form.corners().get(ring.get(i % ring.size()));
  }

  private List<Integer> counterClockwise(List<Integer> ring) {
    double twice = 0;
    for (int i = 0; i < ring.size(); i++) {
      Vec3 a = corner(ring, i);
      Vec3 b = corner(ring, i + 1);
      twice += a.x() * b.y() - b.x() * a.y();
    }
    return twice < 0 ? ring.reversed() : ring;
  }
}
