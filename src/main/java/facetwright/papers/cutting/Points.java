package facetwright.papers.cutting;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Where cuts may lie along a side. Pushing every piece to the left and down loses nothing, so it is
 * enough to cut at sums of wanted lengths, each taken no more often than it is wanted (J. C. Herz,
 * Recursive computational procedure for two-dimensional stock cutting, IBM J. Res. Dev. 16 (1972)
 * 462-469; from memory).
 */
final class Points {
  /** More equal pieces in a row than this are halved rather than cut off one by one. */
  private static final int ROW = 150;

  /** Ascending, the first is 0. */
  final long[] at;

  /** Whether these are all that matter, so that nothing better lies elsewhere. */
  final boolean all;

  private Points(long[] at, boolean all) {
    this.at = at;
    this.all = all;
  }

  /**
   * The lengths that a kind of piece may have along the side.
   *
   * @param limit how often it is wanted
   */
  record Kind(List<Long> lengths, int limit) {
    Kind {
      lengths = List.copyOf(lengths);
    }
  }

  /**
   * @param different of how many different kinds a sum may be
   * @param most points
   * @return none where there are more
   */
  static Points of(Kind[] kinds, long side, int different, int most) {
    NavigableMap<Long, Integer> sums =
        different >= kinds.length ? all(kinds, side, most) : some(kinds, side, different, most);
    if (sums.size() > most) {
      return null;
    }
    long[] at = sums.keySet().stream().mapToLong(Long::longValue).toArray();
    boolean all = different >= kinds.length;
    for (Kind kind : kinds) {
      for (long length : kind.lengths) {
        all &= row(kind, length, side) <= ROW;
      }
    }
    return new Points(at, all);
  }

  /** The least that any plan may do with: each kind alone, in rows that are halved. */
  static Points few(Kind[] kinds, long side) {
    TreeSet<Long> at = new TreeSet<>();
    at.add(0L);
    for (Kind kind : kinds) {
      for (long length : kind.lengths) {
        int row = row(kind, length, side);
        for (int low = row, high = row; high > 1; high = (high + 1) / 2, low /= 2) {
          at.add(low * length);
          at.add(high * length);
        }
        at.add(length);
      }
    }
    return new Points(at.stream().mapToLong(Long::longValue).toArray(), false);
  }

  private static int row(Kind kind, long length, long side) {
    return (int) Math.min(kind.limit, side / length);
  }

  /** Sums of all kinds; beside each how many of the last kind it takes at least. */
  private static NavigableMap<Long, Integer> all(Kind[] kinds, long side, int most) {
    NavigableMap<Long, Integer> sums = new TreeMap<>();
    sums.put(0L, 0);
    for (Kind kind : kinds) {
      sums.replaceAll((_, _) -> 0);
      add(sums, kind, side, most);
    }
    return sums;
  }

  /** Adds what comes of a kind on top of the sums there are. */
  private static void add(NavigableMap<Long, Integer> sums, Kind kind, long side, int most) {
    for (Map.Entry<Long, Integer> sum = sums.firstEntry();
        sum != null && sums.size() <= most;
        sum = sums.higherEntry(sum.getKey())) {
      if (sum.getValue() < Math.min(kind.limit, ROW)) {
        for (long length : kind.lengths) {
          if (sum.getKey() + length <= side) {
            sums.merge(sum.getKey() + length, sum.getValue() + 1, Math::min);
          }
        }
      }
    }
    for (long length : kind.lengths) {
      halves(sums, length, row(kind, length, side));
    }
  }

  /** So that a long row can be halved again and again. */
  private static void halves(NavigableMap<Long, Integer> sums, long length, int row) {
    for (int low = row, high = row; high > ROW; high = (high + 1) / 2, low /= 2) {
      sums.putIfAbsent(low * length, ROW);
      sums.putIfAbsent(high * length, ROW);
    }
  }

  /** Sums of a few different kinds. */
  private static NavigableMap<Long, Integer> some(
      Kind[] kinds, long side, int different, int most) {
    NavigableMap<Long, Integer> sums = new TreeMap<>();
    sums.put(0L, 0);
    some(sums, kinds, 0, 0, side, different, most);
    return sums;
  }

  private static void some(
      NavigableMap<Long, Integer> sums,
      Kind[] kinds,
      int from,
      long base,
      long side,
      int different,
      int most) {
    for (int k = from; different > 0 && k < kinds.length && sums.size() <= most; k++) {
      NavigableMap<Long, Integer> of = new TreeMap<>();
      of.put(base, 0);
      add(of, kinds[k], side, most);
      for (long sum : of.keySet()) {
        boolean isNew = sums.putIfAbsent(sum, 0) == null;
        if (sum > base && (isNew || different > 1)) {
          some(sums, kinds, k + 1, sum, side, different - 1, most);
        }
      }
    }
  }

  /**
   * Fewer that lose nothing: a part beside which a length lies may as well be as long as that
   * leaves room for (J. Terno, R. Lindemann, G. Scheithauer, Zuschnittprobleme und ihre praktische
   * Lösung, 1987; from memory). Longer parts than needed, so a plan read from them wants
   * tightening.
   */
  Points raster(long side) {
    if (!all) {
      return this;
    }
    TreeSet<Long> fewer = new TreeSet<>();
    for (long point : at) {
      fewer.add(at[floor(side - point)]);
    }
    return new Points(fewer.stream().mapToLong(Long::longValue).toArray(), all);
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
