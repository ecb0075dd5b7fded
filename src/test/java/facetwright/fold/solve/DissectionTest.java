package facetwright.fold.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

/** Cutting many points apart before they are eliminated. */
class DissectionTest {
  /** A sheet of squares, the four corners of each tied to each other. */
  private static List<int[]> sheet(int columns, int rows) {
    List<int[]> neighbours = new ArrayList<>();
    for (int j = 0; j < rows; j++) {
      for (int i = 0; i < columns; i++) {
        List<Integer> near = new ArrayList<>();
        for (int v = Math.max(0, j - 1); v <= Math.min(rows - 1, j + 1); v++) {
          for (int u = Math.max(0, i - 1); u <= Math.min(columns - 1, i + 1); u++) {
            if (u != i || v != j) {
              near.add(v * columns + u);
            }
          }
        }
        neighbours.add(near.stream().mapToInt(p -> p).toArray());
      }
    }
    return neighbours;
  }

  private static double[] places(int columns, int rows) {
    double[] where = new double[3 * columns * rows];
    for (int p = 0; p < columns * rows; p++) {
      where[3 * p] = p % columns;
      where[3 * p + 1] = Math.floorDiv(p, columns);
    }
    return where;
  }

  private static long entries(Fill fill) {
    return Arrays.stream(fill.below).mapToLong(b -> b.length + 1L).sum();
  }

  /**
   * A square sheet of m points a side, n = m² in all, cut again and again, has a factor of no more
   * than 31/4 n log₂ n entries (A. George, SIAM J. Numer. Anal. 10 (1973) 345-363, from memory).
   */
  @Test
  void aSquareSheetFillsAsTheTheoremSays() {
    for (int m : new int[] {20, 40, 80, 120}) {
      int n = m * m;
      Fill fill = Fill.of(sheet(m, m), places(m, m));
      assertThat((double) entries(fill)).isLessThan(7.75 * n * Math.log(n) / Math.log(2));
    }
  }

  /** Where points lie is of use: cut blindly, the same sheet is not cut so well. */
  @Test
  void aSquareSheetFillsLessWhenItIsCutAcross() {
    Fill blind = Fill.of(sheet(80, 80), shuffled(80 * 80));
    Fill across = Fill.of(sheet(80, 80), places(80, 80));
    assertThat(entries(across)).isLessThan(entries(blind));
  }

  private static double[] shuffled(int points) {
    return new SplittableRandom(7).doubles(3L * points).toArray();
  }

  /** A strip is eliminated from its ends: each point then waits with no more than a column. */
  @Test
  void aStripIsNotCut() {
    Fill fill = Fill.of(sheet(2000, 4), places(2000, 4));
    assertThat(Arrays.stream(fill.below).mapToInt(b -> b.length).max().orElseThrow())
        .isLessThanOrEqualTo(2 * 4 + 2);
  }

  @Property(tries = 30, seed = "20261125")
  void whatIsCutOffIsSmallAndTiedOnlyToLaterPoints(
      @ForAll @IntRange(min = 1, max = 1500) int points,
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    SplittableRandom chance = new SplittableRandom(seed);
    List<Equation> ties = new ArrayList<>();
    for (int i = 0; i < 2 * points; i++) {
      int p = chance.nextInt(points);
      int q = Math.min(points - 1, p + 1 + chance.nextInt(30));
      if (p != q) {
        ties.add(new Apart(p, q, 1));
      }
    }
    List<int[]> neighbours = EliminationOrder.neighbours(points, ties);
    double[] where = new double[3 * points];
    Arrays.setAll(where, i -> i % 3 == 0 ? i / 3.0 : chance.nextDouble());
    int[] stage = Dissection.stages(neighbours, where);
    int last = Arrays.stream(stage).max().orElseThrow();
    boolean[] seen = new boolean[points];
    for (int p = 0; p < points; p++) {
      if (stage[p] == Integer.MIN_VALUE && !seen[p]) {
        assertThat(reach(p, neighbours, stage, seen)).isLessThanOrEqualTo(Dissection.SMALL);
      }
    }
    assertThat(last).isLessThanOrEqualTo(0);
    assertThat(last == Integer.MIN_VALUE).isEqualTo(points <= Dissection.SMALL || ties.isEmpty());
  }

  private static int reach(int from, List<int[]> neighbours, int[] stage, boolean[] seen) {
    Deque<Integer> open = new ArrayDeque<>(List.of(from));
    seen[from] = true;
    int count = 0;
    while (!open.isEmpty()) {
      count++;
      for (int q : neighbours.get(open.remove())) {
        if (stage[q] == Integer.MIN_VALUE && !seen[q]) {
          seen[q] = true;
          open.add(q);
        }
      }
    }
    return count;
  }

  /**
   * A cover touches every tie, and has no more points than can be paired off: the theorem of D.
   * König (Mat. Fiz. Lapok 38 (1931) 116-119, from memory). All covers are tried for comparison.
   */
  @Property(tries = 100, seed = "20261125")
  void aCoverIsTheSmallest(
      @ForAll @IntRange(min = 1, max = 6) int near,
      @ForAll @IntRange(min = 1, max = 6) int far,
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    SplittableRandom chance = new SplittableRandom(seed);
    List<List<Integer>> ties = new ArrayList<>();
    for (int p = 0; p < near + far; p++) {
      ties.add(new ArrayList<>());
    }
    for (int p = 0; p < near; p++) {
      for (int q = near; q < near + far; q++) {
        if (chance.nextInt(3) == 0) {
          ties.get(p).add(q);
          ties.get(q).add(p);
        }
      }
    }
    int[][] tied =
        ties.stream().map(t -> t.stream().mapToInt(q -> q).toArray()).toArray(int[][]::new);
    int[] cover = new Cover(tied).of(IntStream.range(0, near).toArray(), q -> q >= near);
    int best = near;
    for (int set = 0; set < 1 << (near + far); set++) {
      if (covers(set, tied, near)) {
        best = Math.min(best, Integer.bitCount(set));
      }
    }
    assertThat(covers(Arrays.stream(cover).map(p -> 1 << p).sum(), tied, near)).isTrue();
    assertThat(cover).hasSize(best).doesNotHaveDuplicates();
  }

  private static boolean covers(int set, int[][] tied, int near) {
    return IntStream.range(0, near)
        .allMatch(
            p -> Arrays.stream(tied[p]).allMatch(q -> (set >> p & 1) == 1 || (set >> q & 1) == 1));
  }
}
