package facetwright.fold.pose;

import facetwright.net.Sense;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * Whether card can be folded flat round one point, every score right over and each to its own side,
 * without layers passing through each other: exact, not only necessary.
 *
 * <p>The smallest sector, or one of several, whose two scores go to opposite sides is folded into a
 * zigzag and stays so: it and its neighbours become one sector as wide as they are then. That never
 * spoils a corner that can be folded. Where two sectors are left, their scores have to go to one
 * side; where more are left and none can be zigzagged, the corner can't be folded (M. Bern and B.
 * Hayes, The complexity of flat origami, SODA 1996; E. Demaine and J. O'Rourke, Geometric Folding
 * Algorithms, 2007, section 12.2: from memory).
 *
 * <p>What it does not tell: whether what hangs on the sectors farther out gets in the way.
 */
final class Crimping {
  /**
   * Sectors that differ by less are of one width, in degrees: on a score 100 mm long that is less
   * than 0.1 mm, which a steady hand does not hold (common practice, no source).
   */
  static final double SAME_DEGREES = 0.05;

  private final List<Double> sectors;
  private final List<Sense> senses;

  /** For each sector left, the first one it was made from. */
  private final List<Integer> origin = new ArrayList<>();

  private Crimping(List<Double> sectors, List<Sense> senses) {
    this.sectors = new ArrayList<>(sectors);
    this.senses = new ArrayList<>(senses);
    for (int i = 0; i < sectors.size(); i++) {
      origin.add(i);
    }
  }

  /**
   * A sector that can't be folded, in a corner whose alternate sectors add up to 180° and whose
   * mountains and valleys differ by two; empty where the corner folds flat.
   *
   * @param sectors in degrees, in turn round the point
   * @param senses of the scores, each after its sector
   */
  static OptionalInt stuck(List<Double> sectors, List<Sense> senses) {
    Crimping left = new Crimping(sectors, senses);
    while (left.sectors.size() > 2) {
      int next = left.smallestThatGoes();
      if (next < 0) {
        return OptionalInt.of(left.origin.get(left.smallest()));
      }
      left.crimp(next);
    }
    return left.senses.getFirst() == left.senses.getLast()
        ? OptionalInt.empty()
        : OptionalInt.of(left.origin.getFirst());
  }

  private int smallest() {
    int smallest = 0;
    for (int i = 1; i < sectors.size(); i++) {
      if (sectors.get(i) < sectors.get(smallest) - SAME_DEGREES) {
        smallest = i;
      }
    }
    return smallest;
  }

  private int smallestThatGoes() {
    double least = sectors.get(smallest()) + SAME_DEGREES;
    for (int i = 0; i < sectors.size(); i++) {
      int before = Math.floorMod(i - 1, sectors.size());
      if (sectors.get(i) <= least && senses.get(i) != senses.get(before)) {
        return i;
      }
    }
    return -1;
  }

  private void crimp(int middle) {
    int n = sectors.size();
    int before = Math.floorMod(middle - 1, n);
    int after = (middle + 1) % n;
    // The score after the one after stays; those on both sides of the middle go.
    sectors.set(after, sectors.get(before) - sectors.get(middle) + sectors.get(after));
    for (int gone : new int[] {Math.max(before, middle), Math.min(before, middle)}) {
      List.of(sectors, senses, origin).forEach(list -> list.remove(gone));
    }
  }
}
