package facetwright.papers.cutting;

import java.util.Optional;

/**
 * A good plan for limited copies, quickly: the table of {@link Unlimited} with one built rectangle
 * kept for each size, put together only where the copies suffice. Not always the best, for the
 * rectangle of highest value may use up what a larger one needs.
 */
final class OneEach {
  private static final long MOST_TRIES = 400_000_000L;

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

  /** The best found for the whole sheet, or none where nothing fits or the table is too large. */
  static Optional<Built> of(Unlimited table) {
    long cells = (long) table.xs.size() * table.ys.size();
    if (cells * (table.xs.size() + table.ys.size()) / 4 > MOST_TRIES) {
      return Optional.empty();
    }
    OneEach all = new OneEach(table);
    all.fill();
    return Optional.ofNullable(all.kept[table.xs.size() - 1][table.ys.size() - 1]);
  }

  private void fill() {
    for (Problem.Fit fit : problem.fits) {
      put(table.xs.floor(fit.w()), table.ys.floor(fit.h()), fit.value(), Built.of(problem, fit));
    }
    for (int i = 1; i < table.xs.size(); i++) {
      for (int j = 1; j < table.ys.size(); j++) {
        put(i, j, value[i - 1][j], kept[i - 1][j]);
        put(i, j, value[i][j - 1], kept[i][j - 1]);
        int[] beyondX = table.beyondX[i];
        for (int first = 1; first < beyondX.length; first++) {
          join(i, j, Way.LEFT, kept[first][j], kept[beyondX[first]][j]);
        }
        int[] beyondY = table.beyondY[j];
        for (int first = 1; first < beyondY.length; first++) {
          join(i, j, Way.BOTTOM, kept[i][first], kept[i][beyondY[first]]);
        }
      }
    }
  }

  private void join(int i, int j, Way way, Built a, Built b) {
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
