package facetwright.papers.cutting;

import java.util.Arrays;
import java.util.NavigableSet;
import java.util.TreeSet;

/**
 * Where cuts may lie along a side. Pushing every piece to the left and down loses nothing, so it is
 * enough to cut at sums of wanted lengths (J. C. Herz, Recursive computational procedure for
 * two-dimensional stock cutting, IBM J. Res. Dev. 16 (1972) 462-469; from memory).
 */
final class Points {
  /** Ascending, the first is 0. */
  final long[] at;

  /** Whether these are all sums, so that nothing better lies elsewhere. */
  final boolean all;

  private Points(long[] at, boolean all) {
    this.at = at;
    this.all = all;
  }

  /** Sums of these lengths up to a limit; where there are too many, of fewer different lengths. */
  static Points of(long[] lengths, long limit, int most) {
    long[] different = Arrays.stream(lengths).distinct().sorted().toArray();
    for (int kinds : new int[] {different.length, 3, 2}) {
      NavigableSet<Long> sums = sums(different, limit, kinds, most);
      if (sums.size() <= most) {
        return new Points(array(sums), kinds >= different.length);
      }
    }
    return new Points(array(sums(different, limit, 1, Integer.MAX_VALUE)), false);
  }

  private static NavigableSet<Long> sums(long[] lengths, long limit, int kinds, int most) {
    // Sums by how many different lengths they use, at most so many.
    NavigableSet<Long> all = new TreeSet<>();
    if (kinds >= lengths.length) {
      all.add(0L);
      for (long length : lengths) {
        for (Long sum = all.first(); sum != null && all.size() <= most; sum = all.higher(sum)) {
          if (sum + length <= limit) {
            all.add(sum + length);
          }
        }
      }
      return all;
    }
    add(all, lengths, 0, 0, limit, kinds, most);
    return all;
  }

  private static void add(
      NavigableSet<Long> all, long[] lengths, int from, long sum, long limit, int kinds, int most) {
    all.add(sum);
    for (int i = from; kinds > 0 && i < lengths.length && all.size() <= most; i++) {
      for (long next = sum + lengths[i]; next <= limit; next += lengths[i]) {
        add(all, lengths, i + 1, next, limit, kinds - 1, most);
      }
    }
  }

  private static long[] array(NavigableSet<Long> sums) {
    return sums.stream().mapToLong(Long::longValue).toArray();
  }

  int size() {
    return at.length;
  }

  /** The index of the last point no further than this. */
  int floor(long length) {
    int found = Arrays.binarySearch(at, length);
    return found >= 0 ? found : -found - 2;
  }

  /** The index of the first point no nearer than this, or the number of points. */
  int ceiling(long length) {
    int found = Arrays.binarySearch(at, length);
    return found >= 0 ? found : -found - 1;
  }

  /**
   * For each point the cuts worth trying, by index: up to its middle, for the other half mirrors
   * them; and beside each the point that what lies beyond it comes to.
   */
  int[][] beyond() {
    int[][] rest = new int[at.length][];
    for (int i = 0; i < at.length; i++) {
      int half = floor(at[i] / 2);
      rest[i] = new int[half + 1];
      int beyond = i;
      for (int first = 1; first <= half; first++) {
        while (at[beyond] > at[i] - at[first]) {
          beyond--;
        }
        rest[i][first] = beyond;
      }
    }
    return rest;
  }
}
