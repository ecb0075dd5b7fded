package facetwright.fold.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Where the factor of a matrix is not zero. Points are numbered anew so that what is eliminated
 * into the same point lies together (a postorder of the elimination tree; J. W. H. Liu, SIAM J.
 * Matrix Anal. Appl. 11 (1990) 134-172, from memory).
 */
final class Fill {
  /** For each point its place in the order. */
  final int[] place;

  /** For each place the later ones it is tied to when it is eliminated, ascending. */
  final int[][] below;

  private Fill(int[] place, int[][] below) {
    this.place = place;
    this.below = below;
  }

  /**
   * The lesser fill of two: by the fewest neighbours throughout, or, of many points, by the fewest
   * within parts that are cut from each other. A broad sheet is better cut, a strip is not.
   *
   * @param neighbours for each point those it shares an equation with
   * @param where the coordinates of the points, about
   */
  static Fill of(List<int[]> neighbours, double[] where) {
    Fill whole = of(neighbours, new int[neighbours.size()]);
    if (neighbours.size() <= Dissection.SMALL) {
      return whole;
    }
    Fill cut = of(neighbours, Dissection.stages(neighbours, where));
    return cut.work() < whole.work() ? cut : whole;
  }

  private static Fill of(List<int[]> neighbours, int[] stage) {
    int[] place = EliminationOrder.places(neighbours, stage);
    int[][] below = below(neighbours, place);
    int[] rank = postorder(below);
    int[][] ranked = new int[below.length][];
    for (int k = 0; k < below.length; k++) {
      ranked[rank[k]] = Arrays.stream(below[k]).map(r -> rank[r]).sorted().toArray();
    }
    return new Fill(Arrays.stream(place).map(k -> rank[k]).toArray(), ranked);
  }

  /** How much there is to do when factoring, about. */
  private long work() {
    return Arrays.stream(below).mapToLong(b -> (b.length + 1L) * (b.length + 1L)).sum();
  }

  private static int[][] below(List<int[]> neighbours, int[] place) {
    int n = place.length;
    int[] at = new int[n];
    for (int p = 0; p < n; p++) {
      at[place[p]] = p;
    }
    int[][] below = new int[n][];
    List<List<int[]>> from = new ArrayList<>();
    for (int k = 0; k < n; k++) {
      from.add(new ArrayList<>());
    }
    int[] seen = new int[n];
    Arrays.fill(seen, -1);
    int[] found = new int[n];
    for (int k = 0; k < n; k++) {
      seen[k] = k;
      int count = 0;
      for (int q : neighbours.get(at[k])) {
        if (place[q] > k && seen[place[q]] != k) {
          seen[place[q]] = k;
          found[count++] = place[q];
        }
      }
      for (int[] child : from.get(k)) {
        for (int r : child) {
          if (seen[r] != k) {
            seen[r] = k;
            found[count++] = r;
          }
        }
      }
      from.get(k).clear();
      below[k] = Arrays.copyOf(found, count);
      Arrays.sort(below[k]);
      if (count > 0) {
        from.get(below[k][0]).add(below[k]);
      }
    }
    return below;
  }

  /** For each place its number when every subtree is counted before what it hangs on. */
  private static int[] postorder(int[][] below) {
    int n = below.length;
    int[] size = new int[n];
    Arrays.fill(size, 1);
    for (int k = 0; k < n; k++) {
      if (below[k].length > 0) {
        size[below[k][0]] += size[k];
      }
    }
    // A subtree takes the numbers just before its root's; roots share out all.
    int[] next = new int[n];
    int[] rank = new int[n];
    int free = n;
    for (int k = n - 1; k >= 0; k--) {
      int end;
      if (below[k].length == 0) {
        end = free;
        free -= size[k];
      } else {
        end = next[below[k][0]];
        next[below[k][0]] -= size[k];
      }
      rank[k] = end - 1;
      next[k] = end - 1;
    }
    return rank;
  }
}
