package facetwright.fold.solve;

import java.util.Arrays;
import java.util.function.IntPredicate;

/**
 * The fewest points between two sets that touch every tie from one to the other (D. König, Mat.
 * Fiz. Lapok 38 (1931) 116-119, from memory: as many as ties that share no point can be found).
 */
final class Cover {
  private final int[][] ties;
  private final int[] partner;
  private final int[] seen;
  private int round;

  /**
   * @param ties for each point its neighbours
   */
  Cover(int[][] ties) {
    this.ties = ties;
    this.partner = new int[ties.length];
    this.seen = new int[ties.length];
  }

  /**
   * The points of the cover, in no order.
   *
   * @param near the points of one set
   * @param isFar whether a point is in the other
   */
  int[] of(int[] near, IntPredicate isFar) {
    Arrays.fill(partner, -1);
    for (int p : near) {
      round++;
      pair(p, isFar);
    }
    round++;
    for (int p : near) {
      if (partner[p] < 0) {
        reach(p, isFar);
      }
    }
    int[] cover = new int[near.length];
    int count = 0;
    for (int p : near) {
      if (partner[p] >= 0) {
        cover[count++] = seen[partner[p]] == round ? partner[p] : p;
      }
    }
    return Arrays.copyOf(cover, count);
  }

  /** Whether a near point gets a partner, others moving on to other partners if need be. */
  private boolean pair(int p, IntPredicate isFar) {
    for (int q : ties[p]) {
      if (isFar.test(q) && seen[q] != round) {
        seen[q] = round;
        if (partner[q] < 0 || pair(partner[q], isFar)) {
          partner[q] = p;
          partner[p] = q;
          return true;
        }
      }
    }
    return false;
  }

  /** Marks the far points on ways from a point by a tie and back by a pair. */
  private void reach(int p, IntPredicate isFar) {
    for (int q : ties[p]) {
      if (isFar.test(q) && seen[q] != round) {
        seen[q] = round;
        if (partner[q] >= 0) {
          reach(partner[q], isFar);
        }
      }
    }
  }
}
