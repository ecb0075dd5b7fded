package facetwright.form.unfold;

import facetwright.form.FormEdge;
import facetwright.geom.RoundOff;
import facetwright.geom.Vec2;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

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
    FlatForm flat = layout.flat();
    Vec2 middle = flat.middle(root);
    layout.start(root);
    List<Twig> twigs = new ArrayList<>();
    sprout(layout, root, middle, random, twigs);
    while (!twigs.isEmpty()) {
      Twig best = twigs.getFirst();
      for (Twig t : twigs) {
        if (t.cost < best.cost - RoundOff.PART) {
          best = t;
        }
      }
      twigs.remove(best);
      int facet = flat.across(best.edge, best.onto);
      if (!layout.isPlaced(facet) && layout.hang(best.edge, best.onto)) {
        sprout(layout, facet, middle, random, twigs);
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
