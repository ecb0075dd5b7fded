package facetwright.fold.walk;

import facetwright.fold.close.Unknowns;
import facetwright.net.Net;
import facetwright.net.Score;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Which panels loops of scores run through: what is left when all that only hangs on is taken. */
final class LoopPanels {
  private LoopPanels() {}

  /** The panels in loops or between them, and the scores that join those. */
  static Unknowns of(Net net) {
    int panels = net.panels().size();
    List<List<Integer>> neighbours = new ArrayList<>();
    int[] scores = new int[panels];
    for (int p = 0; p < panels; p++) {
      neighbours.add(new ArrayList<>());
    }
    for (Score s : net.scores()) {
      neighbours.get(s.a().panel()).add(s.b().panel());
      neighbours.get(s.b().panel()).add(s.a().panel());
      scores[s.a().panel()]++;
      scores[s.b().panel()]++;
    }
    boolean[] gone = new boolean[panels];
    ArrayDeque<Integer> hanging = new ArrayDeque<>();
    IntStream.range(0, panels).filter(p -> scores[p] <= 1).forEach(hanging::add);
    while (!hanging.isEmpty()) {
      int p = hanging.remove();
      gone[p] = true;
      for (int q : neighbours.get(p)) {
        scores[q]--;
        if (!gone[q] && scores[q] == 1) {
          hanging.add(q);
        }
      }
    }
    List<Boolean> kept = IntStream.range(0, panels).mapToObj(p -> !gone[p]).toList();
    List<Integer> between =
        IntStream.range(0, net.scores().size())
            .filter(s -> kept.get(net.scores().get(s).a().panel()))
            .filter(s -> kept.get(net.scores().get(s).b().panel()))
            .boxed()
            .toList();
    return new Unknowns(kept, between);
  }
}
