package facetwright.form.unfold;

import facetwright.form.FormEdge;
import facetwright.form.Mirror;
import facetwright.geom.RoundOff;
import facetwright.geom.Vec2;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Function;

/**
 * Grows a net facet by facet: of all facets that could be hung on without overlap, the cheapest is
 * taken, of facets that cost the same the one met first. Where none can be, a new piece is begun.
 *
 * @param compact how much it costs to lie far from the start
 * @param cutting how much it costs to cut the edge rather than score it, by its length
 * @param chance how much chance plays in
 */
record Growth(double compact, double cutting, double chance) {

  private record Twig(int edge, int onto, double cost) {}

  Layout layout(FlatForm flat, int root, SplittableRandom random) {
    Layout layout = new Layout(flat);
    int next = root;
    while (next != Layout.NOT) {
      grow(layout, next, random);
      next = largestLeft(layout);
    }
    return layout;
  }

  private void grow(Layout layout, int root, SplittableRandom random) {
    layout.start(root);
    grow(
        layout,
        List.of(root),
        random,
        twig ->
            layout.hang(twig.edge, twig.onto)
                ? List.of(layout.flat().across(twig.edge, twig.onto))
                : List.of());
  }

  /**
   * A layout that lies on itself turned over, one half grown as the other is.
   *
   * @param started facets already placed, which fall on themselves or on each other
   * @return whether all facets found a place
   */
  boolean evenly(Layout layout, List<Integer> started, Mirror mirror, SplittableRandom random) {
    grow(layout, started, random, twig -> hung(layout, twig, mirror));
    return layout.isOnePiece();
  }

  private static List<Integer> hung(Layout layout, Twig twig, Mirror mirror) {
    int facet = layout.flat().across(twig.edge, twig.onto);
    int image = mirror.facet(facet);
    int edge = mirror.edge(twig.edge);
    if (image == facet) {
      return edge == twig.edge && layout.hang(edge, twig.onto) ? List.of(facet) : List.of();
    }
    return layout.hangBoth(twig.edge, twig.onto, edge, mirror.facet(twig.onto))
        ? List.of(facet, image)
        : List.of();
  }

  /**
   * @param hang hangs what a twig leads to, and tells which facets were
   */
  private void grow(
      Layout layout,
      List<Integer> started,
      SplittableRandom random,
      Function<Twig, List<Integer>> hang) {
    FlatForm flat = layout.flat();
    Vec2 middle = layout.motion(started.getFirst()).apply(flat.middle(started.getFirst()));
    List<Twig> twigs = new ArrayList<>();
    started.forEach(f -> sprout(layout, f, middle, random, twigs));
    while (!twigs.isEmpty()) {
      Twig best = twigs.getFirst();
      for (Twig t : twigs) {
        if (t.cost < best.cost - RoundOff.PART) {
          best = t;
        }
      }
      twigs.remove(best);
      if (!layout.isPlaced(flat.across(best.edge, best.onto))) {
        hang.apply(best).forEach(f -> sprout(layout, f, middle, random, twigs));
      }
    }
  }

  private void sprout(
      Layout layout, int facet, Vec2 middle, SplittableRandom random, List<Twig> twigs) {
    FlatForm flat = layout.flat();
    for (int e : flat.edgesOf(facet)) {
      int other = flat.across(e, facet);
      if (other != FormEdge.NONE && !layout.isPlaced(other)) {
        double far = layout.middleIfHung(e, facet).distance(middle) / flat.size();
        double scored = flat.length(e) / flat.size();
        double cost = compact * far - cutting * scored + chance * random.nextDouble();
        twigs.add(new Twig(e, facet, cost));
      }
    }
  }

  private static int largestLeft(Layout layout) {
    int best = Layout.NOT;
    for (int f = 0; f < layout.flat().count(); f++) {
      if (!layout.isPlaced(f)
          && (best == Layout.NOT
              || layout.flat().outline(f).area()
                  > layout.flat().outline(best).area() + RoundOff.PART)) {
        best = f;
      }
    }
    return best;
  }
}
