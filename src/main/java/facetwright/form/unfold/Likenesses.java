package facetwright.form.unfold;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** All ways in which a layout lies on itself, and the groups they form. */
final class Likenesses {
  /** Above so many only those that one alone makes are formed: a form so even is rare. */
  private static final int MOST = 160;

  private final int root;
  private final List<Likeness> all = new ArrayList<>();
  private final int[][] product;

  /** For each the group that it makes alone. */
  private final List<BitSet> cyclic = new ArrayList<>();

  private Likenesses(Layout layout) {
    root = layout.order().getFirst();
    FlatForm flat = layout.flat();
    int sides = flat.outline(root).size();
    for (int onto = 0; onto < flat.count() && all.size() <= MOST; onto++) {
      for (int k = 0; flat.outline(onto).size() == sides && k < 2 * sides; k++) {
        Likeness.carrying(layout, root, onto, k / 2, k % 2 == 1).ifPresent(all::add);
      }
    }
    product = new int[all.size()][all.size()];
    if (all.size() <= MOST) {
      Map<Likeness.Key, Integer> index = new HashMap<>();
      for (int a = 0; a < all.size(); a++) {
        index.put(all.get(a).key(root), a);
      }
      for (int a = 0; a < all.size(); a++) {
        for (int b = 0; b < all.size(); b++) {
          product[a][b] = index.get(all.get(a).keyAfter(all.get(b), root));
        }
      }
      for (int a = 0; a < all.size(); a++) {
        cyclic.add(closed(a, a));
      }
    }
  }

  /**
   * The groups of more than one, the largest first; of those as large, the one with a half turn,
   * for it makes opposite panels alike, then the one with mirrors.
   */
  static List<List<Likeness>> groups(Layout layout) {
    Likenesses found = new Likenesses(layout);
    if (found.all.size() < 2 || found.all.size() > MOST) {
      return List.of();
    }
    Set<BitSet> single = new LinkedHashSet<>(found.cyclic);
    Set<BitSet> groups = new LinkedHashSet<>(single);
    for (BitSet turns : single) {
      int by = found.cyclic.indexOf(turns);
      for (int m = 0; m < found.all.size(); m++) {
        if (found.all.get(m).isMirrored()) {
          groups.add(found.closed(by, m));
        }
      }
    }
    return groups.stream()
        .map(g -> g.stream().mapToObj(found.all::get).toList())
        .filter(g -> g.size() > 1)
        .sorted(
            Comparator.<List<Likeness>>comparingInt(g -> -g.size())
                .thenComparing(g -> g.stream().noneMatch(l -> l.isHalfTurn(found.root)))
                .thenComparing(g -> g.stream().noneMatch(Likeness::isMirrored)))
        .toList();
  }

  private BitSet closed(int a, int b) {
    BitSet group = new BitSet();
    List<Integer> open = new ArrayList<>(List.of(a));
    group.set(a);
    for (int i = 0; i < open.size(); i++) {
      for (int by : new int[] {a, b}) {
        int next = product[by][open.get(i)];
        if (!group.get(next)) {
          group.set(next);
          open.add(next);
        }
      }
    }
    return group;
  }
}
