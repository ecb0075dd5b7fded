package facetwright.fold.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Points that are eliminated together, since nearly the same later ones hang on them: some places
 * in a row, and the later ones tied to them.
 */
final class Front {
  /** What part of a front may be zeros so that fewer and larger ones do. */
  private static final double ZEROS = 0.2;

  private final int first;
  private final int width;
  private final int[] rows;

  private Front(int first, int width, int[] rows) {
    this.first = first;
    this.width = width;
    this.rows = rows;
  }

  /** All fronts, in the order of elimination. */
  static List<Front> of(int[][] below) {
    List<Front> fronts = new ArrayList<>();
    int n = below.length;
    for (int first = 0; first < n; ) {
      int end = first + 1;
      int zeros = 0;
      while (end < n && below[end - 1].length > 0 && below[end - 1][0] == end) {
        int width = end - first;
        int size = width + 1 + below[end].length;
        int more = zeros + width * (below[end].length + 1 - below[end - 1].length);
        if (more > ZEROS * (width + 1) * size) {
          break;
        }
        zeros = more;
        end++;
      }
      fronts.add(new Front(first, end - first, below[end - 1]));
      first = end;
    }
    return fronts;
  }

  /** The place of its first point. */
  int first() {
    return first;
  }

  /** How many points it eliminates. */
  int width() {
    return width;
  }

  /** How many later places are tied to them. */
  int rest() {
    return rows.length;
  }

  /** How many places it ties together. */
  int size() {
    return width + rows.length;
  }

  /** Where a place that it ties stands among them. */
  int local(int place) {
    return place < first + width ? place - first : width + Arrays.binarySearch(rows, place);
  }

  /** The place of one of them. */
  int place(int local) {
    return local < width ? first + local : rows[local - width];
  }
}
