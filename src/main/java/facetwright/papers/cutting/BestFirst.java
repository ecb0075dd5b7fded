package facetwright.papers.cutting;

import facetwright.pace.Pace;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;

/**
 * The best plan for limited copies, by building rectangles from pieces, the most promising first.
 * One is dropped when it and the most that could lie beside it come to no more than the best plan
 * known, or when a built one of the same pieces is no larger. It ends with proof, or at its bound
 * of tries.
 */
final class BestFirst {
  /** As many rectangles as memory has room for. */
  private static final int MOST_NODES = 400_000;

  /** A pair takes as long as so many cuts in the table. */
  private static final int PER_PAIR = 6;

  /** So does a built rectangle. */
  private static final int PER_BUILT = 150;

  private final Unlimited table;
  private final Problem problem;
  private final Beside beside;
  private final long most;
  private final PriorityQueue<Node> open =
      new PriorityQueue<>(
          Comparator.comparingLong((Node n) -> -n.bound).thenComparingInt(n -> n.number));
  private final List<Node> closed = new ArrayList<>();
  private final Map<Counts, List<Node>> seen = new HashMap<>();
  private int made;
  private Built best;
  private long worth;
  private long tries;
  private long atMost;

  private record Node(Built built, int i, int j, long bound, int number) {}

  /**
   * @param known a plan to beat
   * @param most tries
   */
  BestFirst(Unlimited table, Built known, long most) {
    this.table = table;
    this.problem = table.problem;
    this.most = most;
    this.best = known;
    this.worth = known.value();
    this.beside = new Beside(table);
  }

  BestFirst search() {
    for (Problem.Fit fit : problem.fits) {
      add(Built.of(problem, fit), table.xs.ceiling(fit.w()), table.ys.ceiling(fit.h()));
    }
    while (true) {
      Node node = open.poll();
      atMost = node == null ? worth : Math.max(worth, node.bound);
      if (atMost == worth || tries > most || made > MOST_NODES) {
        return this;
      }
      closed.add(node);
      int count = closed.size();
      tries += (long) count * PER_PAIR;
      Pace.step(1 + count * PER_PAIR / 1000);
      for (int c = 0; c < count; c++) {
        combine(node, closed.get(c));
      }
    }
  }

  private void combine(Node a, Node b) {
    int i = beside.acrossX(a.i, b.i);
    int j = Math.max(a.j, b.j);
    boolean across = i < table.xs.size() && promises(a, b, i, j);
    int up = beside.upY(a.j, b.j);
    int wide = Math.max(a.i, b.i);
    boolean above = up < table.ys.size() && promises(a, b, wide, up);
    if ((across || above) && Built.allowed(a.built, b.built, problem.limit)) {
      if (across) {
        add(Built.together(FromEdge.LEFT, a.built, b.built), i, j);
      }
      if (above) {
        add(Built.together(FromEdge.BOTTOM, a.built, b.built), wide, up);
      }
    }
  }

  private boolean promises(Node a, Node b, int i, int j) {
    return a.built.value() + b.built.value() + beside.most(i, j) > worth;
  }

  private void add(Built built, int i, int j) {
    tries += PER_BUILT;
    List<Node> same = seen.computeIfAbsent(built.counts(), _ -> new ArrayList<>(1));
    for (Node other : same) {
      if (other.i <= i && other.j <= j) {
        return;
      }
    }
    Node node = new Node(built, i, j, built.value() + beside.most(i, j), made++);
    same.add(node);
    open.add(node);
    if (built.value() > worth) {
      worth = built.value();
      best = built;
    }
  }

  Built best() {
    return best;
  }

  /** No better plan has a higher value, where the table is exact. */
  long atMost() {
    return atMost;
  }

  long tries() {
    return tries;
  }
}
