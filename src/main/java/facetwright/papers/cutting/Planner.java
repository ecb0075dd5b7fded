package facetwright.papers.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Everything wanted from as few sheets as this finds, then from the least paper, then with the
 * fewest different measures and cuts. Sheet after sheet is filled as full as possible and cut alike
 * as often as that makes sense; several ways of favouring large pieces are tried. Where the number
 * of sheets is the least that the pieces' areas allow, the plan says that it is best.
 */
public final class Planner {
  /** Pieces are worth their area to these powers: over 1 favours the large ones. */
  private static final double[] POWERS = {1, 1.15, 1.5};

  private final List<Paper> papers;
  private final List<Wanted> wanted;
  private final double kerf;
  private final Effort effort;

  private Planner(List<Paper> papers, List<Wanted> wanted, double kerf, Effort effort) {
    this.papers = List.copyOf(papers);
    this.wanted = List.copyOf(wanted);
    this.kerf = kerf;
    this.effort = effort;
  }

  /**
   * @param papers the sizes at hand, as many sheets of each as it takes
   * @param wanted each exactly as often as its count says
   * @param kerf what the blade takes, 0 or more, in mm
   * @throws IllegalArgumentException when a piece fits no sheet, with its name and what to do
   */
  public static CutPlan plan(List<Paper> papers, List<Wanted> wanted, double kerf, Effort effort) {
    return new Planner(papers, wanted, kerf, effort).plan();
  }

  private CutPlan plan() {
    wanted.forEach(this::mustFit);
    if (wanted.isEmpty()) {
      return new CutPlan(wanted, kerf, List.of(), true);
    }
    int least = leastSheets();
    Comparator<CutPlan> better =
        Comparator.comparingInt(CutPlan::sheetCount)
            .thenComparingDouble(p -> Math.rint(p.paperArea()))
            .thenComparingInt(p -> p.measures().size() + p.sheets().size())
            .thenComparingInt(CutPlan::cuts);
    CutPlan best = null;
    for (double power : POWERS) {
      CutPlan tried = fill(power);
      if (best == null || better.compare(tried, best) < 0) {
        best = tried;
      }
      if (best.sheetCount() == least && papers.size() == 1) {
        break;
      }
    }
    return new CutPlan(wanted, kerf, best.sheets(), best.sheetCount() == least);
  }

  private void mustFit(Wanted want) {
    if (want.count() == Wanted.UNLIMITED) {
      throw new IllegalArgumentException("\"" + want.name() + "\" needs a count");
    }
    boolean fits =
        papers.stream()
            .anyMatch(
                p ->
                    fits(want.width(), want.height(), p)
                        || (want.mayTurn() && fits(want.height(), want.width(), p)));
    if (!fits) {
      throw new IllegalArgumentException(
          "\"%s\" (%.1f × %.1f mm) is larger than every sheet of paper given. Give a larger sheet%s."
              .formatted(
                  want.name(),
                  want.width(),
                  want.height(),
                  want.mayTurn() ? "" : ", or let it be turned against the pattern"));
    }
  }

  private static boolean fits(double width, double height, Paper paper) {
    double slack = 1e-6;
    return width <= paper.width() + slack && height <= paper.height() + slack;
  }

  /** No plan has fewer: even without a limit on copies one sheet gives no larger area. */
  private int leastSheets() {
    double all = wanted.stream().mapToDouble(w -> w.count() * w.area()).sum();
    int[] limit = wanted.stream().mapToInt(Wanted::count).toArray();
    double most = 0;
    List<Wanted> byArea = wanted.stream().map(w -> w.worth(w.area())).toList();
    for (Paper paper : papers) {
      most = Math.max(most, OneSheet.atMost(paper, byArea, limit, kerf, effort));
    }
    // The slack covers areas rounded inside; at worst a plan is not known to be best.
    return (int) Math.ceil(all / most - 1e-5);
  }

  private CutPlan fill(double power) {
    List<Wanted> valued = wanted.stream().map(w -> w.worth(Math.pow(w.area(), power))).toList();
    int[] left = wanted.stream().mapToInt(Wanted::count).toArray();
    List<SheetPlan> sheets = new ArrayList<>();
    while (sum(left) > 0) {
      SheetPlan next = next(valued, left);
      int[] pieces = next.pieces(left.length);
      int copies = Integer.MAX_VALUE;
      for (int k = 0; k < left.length; k++) {
        copies = pieces[k] == 0 ? copies : Math.min(copies, left[k] / pieces[k]);
      }
      for (int k = 0; k < left.length; k++) {
        left[k] -= copies * pieces[k];
      }
      sheets.add(new SheetPlan(next.paper(), copies, next.whole()));
    }
    return new CutPlan(wanted, kerf, sheets, false);
  }

  /**
   * The smallest sheet that takes all that is left, or else the one that takes most of its area.
   */
  private SheetPlan next(List<Wanted> valued, int[] left) {
    double rest = 0;
    for (int k = 0; k < left.length; k++) {
      rest += left[k] * wanted.get(k).area();
    }
    SheetPlan best = null;
    for (Paper paper : papers.stream().sorted(Comparator.comparingDouble(Paper::area)).toList()) {
      Optional<SheetPlan> filled = filled(paper, valued, left);
      if (filled.isEmpty()) {
        continue;
      }
      SheetPlan sheet = filled.get();
      if (sheet.used() >= rest - 1e-3 && sum(sheet.pieces(left.length)) == sum(left)) {
        return sheet;
      }
      // A larger area on one sheet means fewer sheets; that comes before waste.
      if (best == null || sheet.used() > best.used()) {
        best = sheet;
      }
    }
    return best;
  }

  private Optional<SheetPlan> filled(Paper paper, List<Wanted> valued, int[] left) {
    boolean any = false;
    for (int k = 0; k < left.length; k++) {
      Wanted w = wanted.get(k);
      any |=
          left[k] > 0
              && (fits(w.width(), w.height(), paper)
                  || (w.mayTurn() && fits(w.height(), w.width(), paper)));
    }
    return any
        ? Optional.of(OneSheet.best(paper, valued, left, kerf, effort).sheets().getFirst())
        : Optional.empty();
  }

  private static int sum(int[] counts) {
    int sum = 0;
    for (int count : counts) {
      sum += count;
    }
    return sum;
  }
}
