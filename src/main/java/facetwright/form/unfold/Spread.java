package facetwright.form.unfold;

import facetwright.form.FormEdge;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Hangs facets on what is placed, ring by ring outward, each on its longest edge that fits. */
final class Spread {
  private Spread() {}

  private record Hook(int edge, int onto) {}

  /**
   * @param among the facets to hang
   * @param ring facets already placed on which the first ring may hang
   * @return whether all found a place without overlap
   */
  static boolean outward(Layout layout, List<Integer> among, List<Integer> ring) {
    List<Integer> left = new ArrayList<>(among);
    List<Integer> inner = ring;
    while (!left.isEmpty()) {
      List<Integer> next = new ArrayList<>();
      for (int facet : left) {
        List<Hook> hooks = hooks(layout.flat(), facet, inner);
        if (hooks.isEmpty()) {
          continue;
        }
        if (hooks.stream().noneMatch(h -> layout.hang(h.edge, h.onto))) {
          return false;
        }
        next.add(facet);
      }
      if (next.isEmpty()) {
        return false;
      }
      left.removeAll(next);
      inner = next;
    }
    return true;
  }

  private static List<Hook> hooks(FlatForm flat, int facet, List<Integer> onto) {
    List<Hook> hooks = new ArrayList<>();
    for (int e : flat.edgesOf(facet)) {
      int other = flat.across(e, facet);
      if (other != FormEdge.NONE && onto.contains(other)) {
        hooks.add(new Hook(e, other));
      }
    }
    // Lengths to a thousandth of a millimetre: alike edges keep their order.
    hooks.sort(Comparator.comparingLong(h -> -Math.round(flat.length(h.edge) * 1000)));
    return hooks;
  }
}
