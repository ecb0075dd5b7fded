package facetwright.papers.cutting;

import facetwright.geom.RoundOff;
import facetwright.pace.Pace;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Looks for a plan of fewer sheets, and for proof that there is none, until either is found or its
 * tries are spent. First a {@link Mixture} is bettered, which gives a bound, and rounded to whole
 * sheets. Then sheets are filled again and again, pieces on wasteful sheets being worth more each
 * time (sequential value correction; G. Belov, G. Scheithauer, Setup and open-stacks minimization
 * in one-dimensional stock cutting, INFORMS J. Comput. 19 (2007) 27-35; from memory).
 */
final class Search {
  /** A thousandth of a sheet is worth so much, so that prices lose nothing when rounded. */
  private static final double PER_SHEET = 1e6;

  /** What pieces may weigh more for lying on a wasteful sheet. */
  private static final double MOST_WASTE = 2.5;

  /** Sheets are filled anew at most so often. */
  private static final int MOST_ROUNDS = 200;

  private final List<Paper> papers;
  private final List<Wanted> wanted;
  private final double kerf;
  private final Filling filling;
  private final long end;
  private int least;
  private CutPlan best;

  Search(
      List<Paper> papers,
      List<Wanted> wanted,
      double kerf,
      Filling filling,
      long tries,
      int least,
      CutPlan best) {
    this.papers = papers;
    this.wanted = wanted;
    this.kerf = kerf;
    this.filling = filling;
    this.end = filling.tries() + tries;
    this.least = least;
    this.best = best;
  }

  CutPlan best() {
    return best;
  }

  /** The fewest sheets that any plan takes, as far as is known. */
  int least() {
    return least;
  }

  void run() {
    mix();
    correct();
  }

  private boolean isOver() {
    Pace.step();
    return best.sheetCount() <= least || filling.tries() >= end;
  }

  private int[] counts() {
    return wanted.stream().mapToInt(Wanted::count).toArray();
  }

  private void mix() {
    Mixture mixture = new Mixture(counts(), alone());
    for (SheetPlan sheet : best.sheets()) {
      mixture.take(sheet.pieces(wanted.size()), sheet);
    }
    int rounds = 3 * wanted.size() + 20;
    for (int round = 0; round < rounds && !isOver(); round++) {
      if (!better(mixture)) {
        break;
      }
    }
    for (double up : new double[] {0, 0.5, 0.3, 0.8}) {
      if (!isOver()) {
        round(mixture, up);
      }
    }
  }

  /** How many of each alone one sheet gives at least. */
  private int[] alone() {
    int[] alone = new int[wanted.size()];
    for (int k = 0; k < alone.length; k++) {
      Wanted want = wanted.get(k);
      long most = 1;
      for (Paper paper : papers) {
        most = Math.max(most, grid(paper, want.width(), want.height()));
        most = want.mayTurn() ? Math.max(most, grid(paper, want.height(), want.width())) : most;
      }
      alone[k] = (int) Math.min(most, want.count());
    }
    return alone;
  }

  private long grid(Paper paper, double width, double height) {
    long across = (long) RoundOff.floor((paper.width() + kerf) / (width + kerf));
    long up = (long) RoundOff.floor((paper.height() + kerf) / (height + kerf));
    return across * up;
  }

  /** Looks for a way worth more than a sheet; false where there is none. */
  private boolean better(Mixture mixture) {
    double[] prices = mixture.prices();
    double[] values = new double[prices.length];
    for (int k = 0; k < values.length; k++) {
      values[k] = Math.max(0, prices[k]) * PER_SHEET;
      values[k] = values[k] < 1 ? 1 : values[k];
    }
    List<Wanted> valued = filling.worth(values);
    long most = 0;
    OneSheet.Found way = null;
    for (Paper paper : papers) {
      Optional<OneSheet.Found> found = filling.filled(paper, valued, counts(), Effort.QUICK);
      if (found.isPresent()) {
        most = Math.max(most, found.get().atMost());
        way = way == null || found.get().value() > way.value() ? found.get() : way;
      }
    }
    least = Math.max(least, Filling.leastSheets(valued, most));
    if (way == null || way.value() <= PER_SHEET * Problem.PER_VALUE * (1 + RoundOff.SOLVED)) {
      return false;
    }
    int[] pieces = way.sheet().pieces(wanted.size());
    for (int k = 0; k < pieces.length; k++) {
      pieces[k] = prices[k] < 0 ? 0 : pieces[k];
    }
    return mixture.take(pieces, way.sheet());
  }

  /** Whole sheets of the mixture, those cut most often first; then the rest is filled. */
  private void round(Mixture mixture, double up) {
    int[] left = counts();
    List<SheetPlan> sheets = new ArrayList<>();
    for (Mixture.Share share : mixture.shares()) {
      int[] pieces = share.way().pieces(left.length);
      int copies =
          (int) Math.min(share.sheets() + up + RoundOff.SOLVED, Filling.copies(pieces, left));
      if (copies > 0) {
        Filling.take(pieces, copies, left);
        sheets.add(new SheetPlan(share.way().paper(), copies, share.way().whole()));
      }
    }
    sheets.addAll(
        filling.all(wanted.stream().map(w -> w.worth(w.area())).toList(), left, Effort.QUICK));
    offer(sheets);
  }

  private CutPlan offer(List<SheetPlan> sheets) {
    CutPlan plan = new CutPlan(wanted, kerf, sheets, false, 0);
    best = Planner.BETTER.compare(plan, best) < 0 ? plan : best;
    return plan;
  }

  private void correct() {
    SplittableRandom random = new SplittableRandom(1);
    double[] values = wanted.stream().mapToDouble(w -> Math.pow(w.area(), 1.04)).toArray();
    CutPlan last = best;
    for (int round = 0; round < MOST_ROUNDS && !isOver(); round++) {
      double keep = 0.2 + 0.6 * random.nextDouble();
      double power = 1 + 0.2 * random.nextDouble();
      int[] counts = counts();
      double[] heard = new double[values.length];
      for (SheetPlan sheet : last.sheets()) {
        double waste = Math.min(MOST_WASTE, 1 / sheet.part());
        int[] pieces = sheet.pieces(values.length);
        for (int k = 0; k < values.length; k++) {
          heard[k] += waste * pieces[k] * sheet.copies() / counts[k];
        }
      }
      for (int k = 0; k < values.length; k++) {
        values[k] =
            keep * values[k] + (1 - keep) * Math.pow(wanted.get(k).area(), power) * heard[k];
      }
      last = offer(filling.all(filling.worth(values), counts, Effort.QUICK));
    }
  }
}
