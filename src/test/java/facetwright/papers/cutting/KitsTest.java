package facetwright.papers.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.junit.jupiter.api.Test;

/** How few sheets plans of random kits take, against bounds reckoned in other ways. */
class KitsTest {
  private static final int WIDTH = 60;
  private static final int HEIGHT = 84;

  private static List<Wanted> kit(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int kinds = 2 + random.nextInt(6);
    int most = seed % 2 == 0 ? 13 : 40;
    List<Wanted> wanted = new ArrayList<>();
    for (int k = 0; k < kinds; k++) {
      int w = 6 + random.nextInt(34);
      int h = 6 + random.nextInt(44);
      wanted.add(Wanted.of("piece " + k, w, h, 1 + random.nextInt(most), random.nextInt(3) > 0));
    }
    return wanted;
  }

  /** Sixty kits; of the linear relaxation's bound at most one sheet is missed, and that seldom. */
  @Test
  void takesAsFewSheetsAsAnyPlan() {
    List<Integer> more = new ArrayList<>();
    for (int seed = 0; seed < 60; seed++) {
      List<Wanted> wanted = kit(seed);
      CutPlan plan =
          Planner.plan(List.of(new Paper("sheet", WIDTH, HEIGHT)), wanted, 0, Effort.USUAL);
      int relaxed = relaxed(wanted);
      assertThat(Verify.exactly(plan)).isEmpty();
      assertThat(plan.sheetCount()).as("kit %d", seed).isBetween(relaxed, relaxed + 1);
      assertThat((int) plan.bound()).as("kit %d", seed).isBetween(1, plan.sheetCount());
      assertThat(plan.bestKnown()).isEqualTo(plan.sheetCount() == (int) plan.bound());
      if (!plan.bestKnown()) {
        more.add(seed);
      }
    }
    assertThat(more).as("kits without proof").hasSizeLessThanOrEqualTo(4);
  }

  /**
   * The least number of sheets were it allowed to cut parts of sheets and too many pieces of a kind
   * from one, rounded up: no plan takes fewer. Ways to cut come from trying every cut at whole
   * millimetres (P. C. Gilmore, R. E. Gomory, 1961, 1965; from memory), the linear program from
   * Hipparchus.
   */
  private static int relaxed(List<Wanted> wanted) {
    int kinds = wanted.size();
    List<int[]> ways = new ArrayList<>();
    for (int k = 0; k < kinds; k++) {
      int[] alone = new int[kinds];
      alone[k] = 1;
      ways.add(alone);
    }
    double[] counts = wanted.stream().mapToDouble(Wanted::count).toArray();
    while (true) {
      double[] prices = prices(ways, counts);
      EveryCut cuts = new EveryCut(wanted, prices);
      double sum = 0;
      for (int k = 0; k < kinds; k++) {
        sum += prices[k] * counts[k];
      }
      if (cuts.best() < 1 + 1e-7) {
        return (int) Math.ceil(sum - 1e-5);
      }
      ways.add(cuts.pieces());
    }
  }

  /** The dual: as dear as no way is worth more than one sheet. */
  private static double[] prices(List<int[]> ways, double[] counts) {
    List<LinearConstraint> rows = new ArrayList<>();
    for (int[] way : ways) {
      rows.add(
          new LinearConstraint(Arrays.stream(way).asDoubleStream().toArray(), Relationship.LEQ, 1));
    }
    return new SimplexSolver()
        .optimize(
            new LinearObjectiveFunction(counts, 0),
            new LinearConstraintSet(rows),
            GoalType.MAXIMIZE,
            new NonNegativeConstraint(true))
        .getPoint();
  }

  /** The sheet cut at every whole millimetre, without a limit on copies. */
  private static final class EveryCut {
    private final List<Wanted> wanted;
    private final double[][] best = new double[WIDTH + 1][HEIGHT + 1];

    /** A kind, or less than 0 for a cut: −1 − 2 × its place, and one less where it is level. */
    private final int[][] how = new int[WIDTH + 1][HEIGHT + 1];

    EveryCut(List<Wanted> wanted, double[] prices) {
      this.wanted = wanted;
      for (int w = 0; w <= WIDTH; w++) {
        for (int h = 0; h <= HEIGHT; h++) {
          how[w][h] = Integer.MAX_VALUE;
          for (int k = 0; k < prices.length; k++) {
            Wanted one = wanted.get(k);
            boolean fits =
                (one.width() <= w && one.height() <= h)
                    || (one.mayTurn() && one.height() <= w && one.width() <= h);
            if (fits) {
              put(w, h, prices[k], k);
            }
          }
          for (int at = 1; at <= w / 2; at++) {
            put(w, h, best[at][h] + best[w - at][h], -1 - 2 * at);
          }
          for (int at = 1; at <= h / 2; at++) {
            put(w, h, best[w][at] + best[w][h - at], -2 - 2 * at);
          }
        }
      }
    }

    private void put(int w, int h, double value, int way) {
      if (value > best[w][h]) {
        best[w][h] = value;
        how[w][h] = way;
      }
    }

    double best() {
      return best[WIDTH][HEIGHT];
    }

    int[] pieces() {
      int[] pieces = new int[wanted.size()];
      count(WIDTH, HEIGHT, pieces);
      return pieces;
    }

    private void count(int w, int h, int[] pieces) {
      int way = how[w][h];
      if (way == Integer.MAX_VALUE) {
        return;
      }
      if (way >= 0) {
        pieces[way]++;
      } else if ((-1 - way) % 2 == 0) {
        count((-1 - way) / 2, h, pieces);
        count(w - (-1 - way) / 2, h, pieces);
      } else {
        count(w, (-2 - way) / 2, pieces);
        count(w, h - (-2 - way) / 2, pieces);
      }
    }
  }

  /**
   * Up to seven pieces: what the plan calls the fewest is no more than what every division takes.
   */
  @Property(seed = "20261130", tries = 300)
  void isAsGoodAsEveryDivision(
      @ForAll @Size(min = 1, max = 7) List<@IntRange(min = 0, max = 9999) Integer> pieces,
      @ForAll @IntRange(min = 0, max = 1) int kerf) {
    List<Wanted> wanted = new ArrayList<>();
    for (int piece : pieces) {
      wanted.add(
          Wanted.of(
              "piece " + wanted.size(), 4 + piece % 27, 4 + piece / 27 % 37, 1, piece % 2 == 0));
    }
    CutPlan plan = Planner.plan(List.of(new Paper("sheet", 30, 40)), wanted, kerf, Effort.USUAL);
    assertThat(Verify.exactly(plan)).isEmpty();
    assertThat(plan.sheetCount()).isEqualTo(new EveryDivision(wanted, 30, 40, kerf).fewest());
    assertThat((int) plan.bound()).isLessThanOrEqualTo(plan.sheetCount());
  }

  /** All smallest rectangles that each set of pieces can be put together to, two by two. */
  private static final class EveryDivision {
    private final List<List<int[]>> sizes = new ArrayList<>();
    private final boolean[] fits;

    EveryDivision(List<Wanted> wanted, int width, int height, int kerf) {
      int sets = 1 << wanted.size();
      this.fits = new boolean[sets];
      for (int set = 0; set < sets; set++) {
        List<int[]> mine = new ArrayList<>();
        if (Integer.bitCount(set) == 1) {
          Wanted one = wanted.get(Integer.numberOfTrailingZeros(set));
          put(mine, (int) one.width(), (int) one.height());
          if (one.mayTurn()) {
            put(mine, (int) one.height(), (int) one.width());
          }
        }
        for (int part = (set - 1) & set; part > 0; part = (part - 1) & set) {
          for (int[] a : sizes.get(part)) {
            for (int[] b : sizes.get(set ^ part)) {
              put(mine, a[0] + kerf + b[0], Math.max(a[1], b[1]));
              put(mine, Math.max(a[0], b[0]), a[1] + kerf + b[1]);
            }
          }
        }
        mine.removeIf(s -> s[0] > width || s[1] > height);
        sizes.add(mine);
        fits[set] = !mine.isEmpty();
      }
    }

    private static void put(List<int[]> all, int w, int h) {
      if (all.stream().noneMatch(s -> s[0] <= w && s[1] <= h)) {
        all.removeIf(s -> w <= s[0] && h <= s[1]);
        all.add(new int[] {w, h});
      }
    }

    int fewest() {
      int[] sheets = new int[fits.length];
      for (int set = 1; set < fits.length; set++) {
        sheets[set] = Integer.MAX_VALUE;
        for (int part = set; part > 0; part = (part - 1) & set) {
          if (fits[part]) {
            sheets[set] = Math.min(sheets[set], 1 + sheets[set ^ part]);
          }
        }
      }
      return sheets[fits.length - 1];
    }
  }
}
