package facetwright.papers.cutting;

import facetwright.pace.Pace;

/**
 * A good plan for limited copies, quickly: the table of {@link Unlimited} with one built rectangle
 * kept for each size, put together only where the copies suffice. Not always the best, for the
 * rectangle of highest value may use up what a larger one needs.
 */
final class OneEach {
  /** A cut takes as long as so many in the table, which are tried in rows. */
  private static final int PER_CUT = 6;

  /** A table of such a part of an effort, and this for it, leave some of it for a search. */
  static final int PART = 2 * PER_CUT;

  private final Problem problem;
  private final Unlimited table;
  private final long[][] value;
  private final Built[][] kept;

  private OneEach(Unlimited table) {
    this.table = table;
    this.problem = table.problem;
    this.value = new long[table.xs.size()][table.ys.size()];
    this.kept = new Built[table.xs.size()][table.ys.size()];
  }

  /** The best found for the whole sheet, on which some piece fits. */
  static Built of(Unlimited table) {
    OneEach all = new OneEach(table);
    all.fill();
    return all.kept[table.xs.size() - 1][table.ys.size() - 1];
  }

  /** How many tries it takes. */
  static long tries(Unlimited table) {
    return PER_CUT * table.tries();
  }

  private void fill() {
    for (Problem.Fit fit : problem.fits) {
      put(
          table.xs.ceiling(fit.w()),
          table.ys.ceiling(fit.h()),
          fit.value(),
          Built.of(problem, fit));
    }
    for (int i = 1; i < table.xs.size(); i++) {
      Pace.step(1 + tries(table) / table.xs.size() / 1000);
      for (int j = 1; j < table.ys.size(); j++) {
        put(i, j, value[i - 1][j], kept[i - 1][j]);
        put(i, j, value[i][j - 1], kept[i][j - 1]);
        int[] beyondX = table.beyondX[i];
        for (int first = 1; first < beyondX.length; first++) {
          join(i, j, FromEdge.LEFT, kept[first][j], kept[beyondX[first]][j]);
        }
        int[] beyondY = table.beyondY[j];
        for (int first = 1; first < beyondY.length; first++) {
          join(i, j, FromEdge.BOTTOM, kept[i][first], kept[i][beyondY[first]]);
        }
      }
    }
  }

  private void join(int i, int j, FromEdge way, Built a, Built b) {
    if (a != null
        && b != null
        && a.value() + b.value() > value[i][j]
        && Built.allowed(a, b, problem.limit)) {
      put(i, j, a.value() + b.value(), Built.together(way, a, b));
    }
  }

  private void put(int i, int j, long worth, Built built) {
    if (worth > value[i][j]) {
      value[i][j] = worth;
      kept[i][j] = built;
    }
  }
}
