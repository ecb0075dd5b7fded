package facetwright.fold.touch;

import facetwright.geom.Vec3;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.Score;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Two panels that hang together along a line of the folded form, by a score or a seam.
 *
 * @param a the one
 * @param b the other
 * @param from where the line begins
 * @param to where it ends
 * @param along the direction from the one to the other, length 1
 * @param length of the line, in mm
 */
record Bend(int a, int b, Vec3 from, Vec3 to, Vec3 along, double length) {

  /** All of a form. A seam that a tab glues is a bend by its sides, and not by its tab. */
  static List<Bend> all(Net net, List<PosedPanel> placed) {
    List<Bend> bends = new ArrayList<>();
    Set<Integer> glued = new HashSet<>();
    for (Join join : net.joins()) {
      if (join instanceof Join.Seam(EdgeRef a, EdgeRef b, int tab, _, _)) {
        glued.add(tab);
        add(bends, placed, a, b);
      }
    }
    for (Score score : net.scores()) {
      if (!glued.contains(score.a().panel()) && !glued.contains(score.b().panel())) {
        add(bends, placed, score.a(), score.b());
      }
    }
    return bends;
  }

  private static void add(List<Bend> bends, List<PosedPanel> placed, EdgeRef a, EdgeRef b) {
    PosedPanel one = placed.get(a.panel());
    PosedPanel two = placed.get(b.panel());
    Vec3 from = one.corner(a.edge());
    Vec3 to = one.corner(a.edge() + 1);
    // Shorter ones have no direction that ends a steady hand apart agree on.
    double length = to.distance(from);
    if (a.panel() != b.panel()
        && length > 2 * Collision.HELD
        && two.corner(b.edge() + 1).distance(from) <= Collision.HELD
        && two.corner(b.edge()).distance(to) <= Collision.HELD) {
      bends.add(new Bend(a.panel(), b.panel(), from, to, to.minus(from).unit(), length));
    }
  }

  boolean isOf(int panel) {
    return a == panel || b == panel;
  }
}
