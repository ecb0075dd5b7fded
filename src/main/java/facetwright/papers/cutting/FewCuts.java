package facetwright.papers.cutting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads a plan out of the table of {@link Unlimited}: among all plans of the highest value one with
 * few cuts, waste taken off in as large parts as possible. The fewest, unless there are so many
 * equal plans that looking at each would take too long.
 */
final class FewCuts {
  private static final int MOST_LOOKS = 4000;

  private final Unlimited table;
  private final Problem problem;
  private final Map<Long, Choice> known = new HashMap<>();
  private final Map<Long, Built> made = new HashMap<>();

  /** What becomes of a part that has no waste along an edge: cut at a point, or a piece. */
  private record Choice(FromEdge way, int at, int beyond, Problem.Fit piece, int cuts) {}

  /** A part: its true size, and the least indices that give as much. */
  private record Need(long w, long h, int i, int j) {}

  private FewCuts(Unlimited table) {
    this.table = table;
    this.problem = table.problem;
  }

  /** The whole sheet's plan; nothing where it gives nothing. */
  static Built of(Unlimited table) {
    FewCuts reader = new FewCuts(table);
    return reader.built(reader.need(table.problem.width, table.problem.height));
  }

  private Need need(long w, long h) {
    int i = table.xs.floor(w);
    int j = table.ys.floor(h);
    long value = table.most[i][j];
    while (i > 0 && table.most[i - 1][j] == value) {
      i--;
    }
    while (j > 0 && table.most[i][j - 1] == value) {
      j--;
    }
    return new Need(w, h, i, j);
  }

  /** Nothing for waste. */
  private Built built(Need need) {
    if (table.most[need.i][need.j] == 0) {
      return null;
    }
    long w = table.xs.at[need.i];
    long h = table.ys.at[need.j];
    long key = (long) need.i << 32 | need.j;
    Built same = made.get(key);
    if (same == null) {
      same = built(choice(need.i, need.j), w, h);
      made.put(key, same);
    }
    return same;
  }

  private Built built(Choice choice, long w, long h) {
    if (choice.piece != null) {
      return Built.of(problem, choice.piece);
    }
    Built first = built(first(choice, w, h));
    Built second = built(second(choice, w, h));
    return first == null
        ? second
        : second == null ? first : Built.together(choice.way, first, second);
  }

  private Need first(Choice c, long w, long h) {
    return c.way == FromEdge.LEFT ? need(table.xs.at[c.at], h) : need(w, table.ys.at[c.at]);
  }

  private Need second(Choice c, long w, long h) {
    return c.way == FromEdge.LEFT ? need(w - table.xs.at[c.at], h) : need(w, h - table.ys.at[c.at]);
  }

  private int cuts(Need need) {
    if (table.most[need.i][need.j] == 0) {
      return 0;
    }
    int trims = (need.w > table.xs.at[need.i] ? 1 : 0) + (need.h > table.ys.at[need.j] ? 1 : 0);
    return trims + choice(need.i, need.j).cuts;
  }

  private Choice choice(int i, int j) {
    long key = (long) i << 32 | j;
    Choice choice = known.get(key);
    if (choice == null) {
      choice = find(i, j);
      known.put(key, choice);
    }
    return choice;
  }

  private Choice find(int i, int j) {
    long value = table.most[i][j];
    long w = table.xs.at[i];
    long h = table.ys.at[j];
    for (Problem.Fit fit : problem.fits) {
      if (fit.value() == value && fit.w() <= w && fit.h() <= h) {
        return new Choice(FromEdge.LEFT, 0, 0, fit, 0);
      }
    }
    Choice best = null;
    for (Choice way : equal(i, j, value)) {
      if (best != null && known.size() > MOST_LOOKS) {
        break;
      }
      int cuts = 1 + cuts(first(way, w, h)) + cuts(second(way, w, h));
      if (best == null || cuts < best.cuts) {
        best = new Choice(way.way, way.at, way.beyond, null, cuts);
      }
    }
    return best;
  }

  /** Every cut that gives the full value. */
  private List<Choice> equal(int i, int j, long value) {
    List<Choice> ways = new ArrayList<>();
    int[] beyondX = table.beyondX[i];
    for (int first = 1; first < beyondX.length; first++) {
      if (table.most[first][j] + table.most[beyondX[first]][j] == value) {
        ways.add(new Choice(FromEdge.LEFT, first, beyondX[first], null, 0));
      }
    }
    int[] beyondY = table.beyondY[j];
    for (int first = 1; first < beyondY.length; first++) {
      if (table.most[i][first] + table.most[i][beyondY[first]] == value) {
        ways.add(new Choice(FromEdge.BOTTOM, first, beyondY[first], null, 0));
      }
    }
    return ways;
  }
}
