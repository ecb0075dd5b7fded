package facetwright.fold.close;

import facetwright.fold.pose.ScoreAngles;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.net.Score;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Which panels and scores the closing solver has to find. Pieces that joins link are solved
 * together, and only where one of their scores is open. Tabs are left out, for they follow the
 * panels that carry them or hide them; not so a tab on which facets or a lap depend.
 *
 * @param panels for each panel whether its place is sought
 * @param scores the scores of unknown angle between such panels
 */
public record Unknowns(List<Boolean> panels, List<Integer> scores) {

  public static Unknowns of(Net net, ScoreAngles given) {
    int[] piece = net.pieceOfPanel();
    boolean[] core = core(net, piece);
    int[] group = new int[net.pieces()];
    Arrays.setAll(group, i -> i);
    for (Join join : net.joins()) {
      link(group, piece[join.from()], piece[join.onto()]);
    }
    Set<Integer> open = new LinkedHashSet<>();
    for (int s = 0; s < net.scores().size(); s++) {
      Score score = net.scores().get(s);
      if (core[score.a().panel()] && core[score.b().panel()] && !given.isKnown(s)) {
        open.add(root(group, piece[score.a().panel()]));
      }
    }
    boolean[] sought = new boolean[core.length];
    for (int p = 0; p < core.length; p++) {
      sought[p] = core[p] && open.contains(root(group, piece[p]));
    }
    List<Integer> scores =
        IntStream.range(0, net.scores().size())
            .filter(s -> !given.isKnown(s))
            .filter(s -> sought[net.scores().get(s).a().panel()])
            .filter(s -> sought[net.scores().get(s).b().panel()])
            .boxed()
            .toList();
    return new Unknowns(
        IntStream.range(0, sought.length).mapToObj(p -> sought[p]).toList(), scores);
  }

  /** Every panel but tabs that only follow, whether its angles are known or not. */
  static Unknowns all(Net net) {
    boolean[] core = core(net, net.pieceOfPanel());
    return new Unknowns(IntStream.range(0, core.length).mapToObj(p -> core[p]).toList(), List.of());
  }

  boolean isEmpty() {
    return scores.isEmpty();
  }

  public boolean seeks(int panel) {
    return panels.get(panel);
  }

  boolean has(EdgeRef side) {
    return seeks(side.panel());
  }

  private static boolean[] core(Net net, int[] piece) {
    boolean[] core = new boolean[piece.length];
    for (int p = 0; p < core.length; p++) {
      core[p] = net.panels().get(p).role() != PanelRole.TAB;
    }
    for (Join join : net.joins()) {
      if (join instanceof Join.Lap(int under, int over, _, _)) {
        core[under] = true;
        core[over] = true;
      }
    }
    // Where leaving out its tabs would tear a piece apart, they stay in.
    int[] part = new int[core.length];
    Arrays.setAll(part, i -> i);
    for (Score s : net.scores()) {
      if (core[s.a().panel()] && core[s.b().panel()]) {
        link(part, s.a().panel(), s.b().panel());
      }
    }
    int[] first = new int[net.pieces()];
    Arrays.fill(first, -1);
    boolean[] torn = new boolean[first.length];
    for (int p = 0; p < core.length; p++) {
      if (core[p]) {
        int r = root(part, p);
        torn[piece[p]] |= first[piece[p]] >= 0 && first[piece[p]] != r;
        first[piece[p]] = r;
      }
    }
    for (int p = 0; p < core.length; p++) {
      core[p] |= torn[piece[p]];
    }
    return core;
  }

  static int root(int[] parent, int i) {
    int r = i;
    while (parent[r] != r) {
      parent[r] = parent[parent[r]];
      r = parent[r];
    }
    return r;
  }

  static void link(int[] parent, int a, int b) {
    int low = Math.min(root(parent, a), root(parent, b));
    parent[Math.max(root(parent, a), root(parent, b))] = low;
  }
}
