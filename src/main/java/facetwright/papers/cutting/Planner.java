package facetwright.papers.cutting;

import facetwright.message.Message;
import facetwright.message.Refused;
import facetwright.message.Value;
import facetwright.pace.Pace;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Everything wanted from as few sheets as this finds, then from the least paper, then with the
 * fewest different measures and cuts. Sheet after sheet is filled as full as possible and cut alike
 * as often as that makes sense; several ways of favouring large pieces are tried. A plan says how
 * few sheets any plan takes at least; where it takes more, a {@link Search} for a better one goes
 * on until its effort is spent.
 */
public final class Planner {
  /** Pieces are worth their area to these powers: over 1 favours the large ones. */
  private static final double[] POWERS = {1, 1.15, 1.5};

  /** Fewest sheets, then least paper, then what is easiest to cut. */
  static final Comparator<CutPlan> BETTER =
      Comparator.comparingInt(CutPlan::sheetCount)
          .thenComparingDouble(p -> Math.rint(p.paperArea()))
          .thenComparingInt(p -> p.measures().size() + p.sheets().size())
          .thenComparingInt(CutPlan::cuts);

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
   * @return the plan; its {@link CutPlan#bound} is the fewest sheets that any plan may take
   * @throws IllegalArgumentException when a piece fits no sheet, with its name and what to do
   */
  public static CutPlan plan(List<Paper> papers, List<Wanted> wanted, double kerf, Effort effort) {
    return new Planner(papers, wanted, kerf, effort).plan();
  }

  private CutPlan plan() {
    wanted.forEach(this::mustFit);
    if (wanted.isEmpty()) {
      return new CutPlan(wanted, kerf, List.of(), true, 0);
    }
    Pace.doing("planning how " + sum(wanted) + " pieces are cut");
    Filling filling = new Filling(papers, wanted, kerf);
    int least = filling.leastSheets(wanted.stream().map(w -> w.worth(w.area())).toList());
    CutPlan best = null;
    for (double power : POWERS) {
      CutPlan tried = fill(filling, power);
      best = best == null || BETTER.compare(tried, best) < 0 ? tried : best;
      if (best.sheetCount() == least && papers.size() == 1) {
        break;
      }
    }
    if (best.sheetCount() > least) {
      Search search = new Search(papers, wanted, kerf, filling, effort.tries(), least, best);
      search.run();
      best = search.best();
      least = search.least();
    }
    return new CutPlan(wanted, kerf, best.sheets(), best.sheetCount() == least, least);
  }

  private CutPlan fill(Filling filling, double power) {
    List<Wanted> valued = wanted.stream().map(w -> w.worth(Math.pow(w.area(), power))).toList();
    int[] left = wanted.stream().mapToInt(Wanted::count).toArray();
    List<SheetPlan> sheets = filling.all(valued, left, Effort.QUICK.atMost(effort));
    return new CutPlan(wanted, kerf, new ArrayList<>(sheets), false, 0);
  }

  private static long sum(List<Wanted> wanted) {
    return wanted.stream().mapToLong(Wanted::count).sum();
  }

  private void mustFit(Wanted want) {
    if (want.count() == Wanted.UNLIMITED) {
      throw new IllegalArgumentException("\"" + want.name() + "\" needs a count");
    }
    if (papers.stream().noneMatch(p -> Filling.fits(want, p))) {
      throw new Refused(
          Message.of(
              "%s (%s) is larger than every sheet of paper given. Give a larger sheet%s.",
              Value.name(want.name()),
              Value.size(want.width(), want.height()),
              want.mayTurn() ? "" : ", or let it be turned against the pattern"));
    }
  }
}
