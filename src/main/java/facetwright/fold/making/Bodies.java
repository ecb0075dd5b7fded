package facetwright.fold.making;

import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.Score;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** What hangs together when made, by scores and by joins: a box is one body, its lid another. */
public final class Bodies {
  private Bodies() {}

  /** For each body its panels, in the order of their first. */
  public static List<List<Integer>> of(Net net) {
    int[] root = IntStream.range(0, net.panels().size()).toArray();
    for (Score s : net.scores()) {
      unite(root, s.a().panel(), s.b().panel());
    }
    for (Join join : net.joins()) {
      switch (join) {
        case Join.Seam s -> {
          unite(root, s.a().panel(), s.b().panel());
          if (s.tab() != Join.Seam.NO_TAB) {
            unite(root, s.tab(), s.b().panel());
          }
        }
        case Join.Lap l -> unite(root, l.under(), l.over());
      }
    }
    Map<Integer, List<Integer>> bodies = new LinkedHashMap<>();
    for (int p = 0; p < root.length; p++) {
      bodies.computeIfAbsent(find(root, p), _ -> new ArrayList<>()).add(p);
    }
    return List.copyOf(bodies.values());
  }

  /** Puts what two panels belong to together. */
  public static void unite(int[] root, int a, int b) {
    int one = find(root, a);
    int two = find(root, b);
    root[Math.max(one, two)] = Math.min(one, two);
  }

  /** The panel that stands for all that hangs together with this one. */
  public static int find(int[] root, int panel) {
    int r = panel;
    while (root[r] != r) {
      r = root[r];
    }
    return r;
  }
}
