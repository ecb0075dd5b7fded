package facetwright.papers.cutting;

import facetwright.geom.LengthTolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Sheet after sheet filled with what is worth most, each cut alike as often as what is wanted
 * allows.
 */
final class Filling {
  /** Areas that differ by no more, in mm², are one: sums of many pieces are rounded. */
  private static final double SAME_AREA = 1e-3;

  private final List<Paper> papers;
  private final List<Wanted> wanted;
  private final double kerf;
  private long tries;

  Filling(List<Paper> papers, List<Wanted> wanted, double kerf) {
    this.papers = papers.stream().sorted(Comparator.comparingDouble(Paper::area)).toList();
    this.wanted = wanted;
    this.kerf = kerf;
  }

  /** Tries spent by all that was filled so far. */
  long tries() {
    return tries;
  }

  /** The wanted with other values. */
  List<Wanted> worth(double[] values) {
    return IntStream.range(0, wanted.size()).mapToObj(k -> wanted.get(k).worth(values[k])).toList();
  }

  /**
   * Everything that is left.
   *
   * @param valued the wanted, with what they are worth
   * @param left how many of each are to be cut; none afterwards
   */
  List<SheetPlan> all(List<Wanted> valued, int[] left, Effort effort) {
    List<SheetPlan> sheets = new ArrayList<>();
    while (sum(left) > 0) {
      SheetPlan next = next(valued, left, effort);
      int[] pieces = next.pieces(left.length);
      int copies = copies(pieces, left);
      take(pieces, copies, left);
      sheets.add(new SheetPlan(next.paper(), copies, next.whole()));
    }
    return sheets;
  }

  /** How often these pieces may be taken of what is left. */
  static int copies(int[] pieces, int[] left) {
    int copies = Integer.MAX_VALUE;
    for (int k = 0; k < left.length; k++) {
      copies = pieces[k] == 0 ? copies : Math.min(copies, left[k] / pieces[k]);
    }
    return copies;
  }

  static void take(int[] pieces, int copies, int[] left) {
    for (int k = 0; k < left.length; k++) {
      left[k] -= copies * pieces[k];
    }
  }

  /**
   * The smallest sheet that takes all that is left, or else the one that takes most of its area.
   */
  private SheetPlan next(List<Wanted> valued, int[] left, Effort effort) {
    double rest = 0;
    for (int k = 0; k < left.length; k++) {
      rest += left[k] * wanted.get(k).area();
    }
    SheetPlan best = null;
    for (Paper paper : papers) {
      Optional<OneSheet.Found> filled = filled(paper, valued, left, effort);
      if (filled.isEmpty()) {
        continue;
      }
      SheetPlan sheet = filled.get().sheet();
      if (sheet.used() >= rest - SAME_AREA && sum(sheet.pieces(left.length)) == sum(left)) {
        return sheet;
      }
      // A larger area on one sheet means fewer sheets; that comes before waste.
      if (best == null || sheet.used() > best.used()) {
        best = sheet;
      }
    }
    return best;
  }

  /** None where nothing that is left fits the paper. */
  Optional<OneSheet.Found> filled(Paper paper, List<Wanted> valued, int[] left, Effort effort) {
    boolean any = false;
    for (int k = 0; k < left.length; k++) {
      any |= left[k] > 0 && fits(wanted.get(k), paper);
    }
    if (!any) {
      return Optional.empty();
    }
    OneSheet.Found found = OneSheet.best(paper, valued, left, kerf, effort);
    tries += found.tries();
    return Optional.of(found);
  }

  static boolean fits(Wanted want, Paper paper) {
    return fits(want.width(), want.height(), paper)
        || (want.mayTurn() && fits(want.height(), want.width(), paper));
  }

  private static boolean fits(double width, double height, Paper paper) {
    double slack = LengthTolerance.FINE.mm();
    return width <= paper.width() + slack && height <= paper.height() + slack;
  }

  /**
   * No plan takes fewer sheets: whatever pieces are worth, a sheet gives no more than so much of
   * all that is wanted.
   */
  int leastSheets(List<Wanted> valued) {
    int[] limit = valued.stream().mapToInt(Wanted::count).toArray();
    long most = 0;
    for (Paper paper : papers) {
      OneSheet.Table table = OneSheet.table(paper, valued, limit, kerf, Effort.QUICK);
      tries += table.tries();
      most = Math.max(most, table.atMost());
    }
    return leastSheets(valued, most);
  }

  /**
   * @param most no sheet is worth more, in the units of {@link Problem}
   */
  static int leastSheets(List<Wanted> valued, long most) {
    long all = 0;
    for (Wanted want : valued) {
      all = Math.addExact(all, Math.multiplyExact(Problem.units(want), (long) want.count()));
    }
    return (int) Math.ceilDiv(all, most);
  }

  private static int sum(int[] counts) {
    return IntStream.of(counts).sum();
  }
}
