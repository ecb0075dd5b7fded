package facetwright.papers.cutting;

import facetwright.geom.RoundOff;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The fewest sheets if parts of sheets could be cut: a mixture of ways to cut a sheet, bettered way
 * by way (P. C. Gilmore, R. E. Gomory, A linear programming approach to the cutting stock problem,
 * Operations Research 9 (1961) 849-859; from memory). It sets prices of pieces: no way in the
 * mixture is worth more than a sheet, and one that is betters it.
 */
final class Mixture {
  /** A smaller share of a sheet is rounding. */
  private static final double TINY = RoundOff.PART;

  /** The inverse of the matrix whose columns are the ways in the mixture. */
  private final double[][] inverse;

  private final double[] sheets;
  private final SheetPlan[] ways;

  /**
   * @param counts how many of each are wanted, over 0
   * @param most how many of each alone one sheet gives, over 0
   */
  Mixture(int[] counts, int[] most) {
    int kinds = counts.length;
    this.inverse = new double[kinds][kinds];
    this.sheets = new double[kinds];
    this.ways = new SheetPlan[kinds];
    for (int k = 0; k < kinds; k++) {
      inverse[k][k] = 1.0 / most[k];
      sheets[k] = counts[k] / (double) most[k];
    }
  }

  /**
   * What a piece of each kind is worth, in sheets; below 0 where the mixture has too many of them.
   */
  double[] prices() {
    double[] prices = new double[sheets.length];
    for (double[] row : inverse) {
      for (int k = 0; k < prices.length; k++) {
        prices[k] += row[k];
      }
    }
    return prices;
  }

  /** A way to cut a sheet, and how many sheets of the mixture are cut so. */
  record Share(SheetPlan way, double sheets) {}

  /** The ways that were taken in and are still of use, those of most sheets first. */
  List<Share> shares() {
    return IntStream.range(0, ways.length)
        .filter(i -> ways[i] != null)
        .mapToObj(i -> new Share(ways[i], sheets[i]))
        .sorted(Comparator.comparingDouble(s -> -s.sheets()))
        .toList();
  }

  /**
   * Takes in a way.
   *
   * @param way how many of each kind it is to give
   * @param sheet that gives so many or more
   * @return false where that changes nothing
   */
  boolean take(int[] way, SheetPlan sheet) {
    int kinds = sheets.length;
    double[] share = new double[kinds];
    for (int i = 0; i < kinds; i++) {
      for (int k = 0; k < kinds; k++) {
        share[i] += inverse[i][k] * way[k];
      }
    }
    int out = -1;
    for (int i = 0; i < kinds; i++) {
      if (share[i] > TINY && (out < 0 || sheets[i] * share[out] < sheets[out] * share[i])) {
        out = i;
      }
    }
    if (out < 0) {
      return false;
    }
    double amount = sheets[out] / share[out];
    for (int k = 0; k < kinds; k++) {
      inverse[out][k] /= share[out];
    }
    for (int i = 0; i < kinds; i++) {
      if (i != out) {
        sheets[i] = Math.max(0, sheets[i] - amount * share[i]);
        for (int k = 0; k < kinds; k++) {
          inverse[i][k] -= share[i] * inverse[out][k];
        }
      }
    }
    sheets[out] = amount;
    ways[out] = sheet;
    return true;
  }
}
