package facetwright.papers.cutting;

import java.util.List;

/** The pieces of highest value from one sheet. */
public final class OneSheet {
  private OneSheet() {}

  /**
   * What one sheet was found to give.
   *
   * @param sheet how it is cut
   * @param value in the units of {@link Problem}
   * @param atMost no plan has a higher value
   * @param tries spent
   */
  record Found(SheetPlan sheet, long value, long atMost, long tries) {}

  /**
   * @param wanted each at most as often as its count says
   * @param kerf what the blade takes, 0 or more, in mm
   * @return a plan of one sheet; {@link CutPlan#bestKnown} tells whether it is proved best, {@link
   *     CutPlan#bound} what none betters
   */
  public static CutPlan plan(Paper paper, List<Wanted> wanted, double kerf, Effort effort) {
    int[] limit = wanted.stream().mapToInt(Wanted::count).toArray();
    Found found = best(paper, wanted, limit, kerf, effort);
    boolean isProven = found.value == found.atMost;
    CutPlan plan = new CutPlan(wanted, kerf, List.of(found.sheet), isProven, 0);
    return plan.bounded(isProven ? plan.value() : found.atMost / Problem.PER_VALUE);
  }

  static Found best(Paper paper, List<Wanted> wanted, int[] limit, double kerf, Effort effort) {
    if (!(kerf >= 0) || Double.isInfinite(kerf)) {
      throw new IllegalArgumentException("a blade takes 0 mm or more, not " + kerf);
    }
    Table asked = table(paper, wanted, limit, kerf, effort);
    Unlimited table = asked.table;
    Problem problem = table.problem;
    long atMost = asked.atMost;
    Built free = FewCuts.of(table);
    if (free == null || free.counts().within(limit)) {
      return found(problem, free, atMost, table.tries());
    }
    // Where there are too many points for one, a plan from fewer points begins the search.
    boolean isDear = table.tries() + OneEach.tries(table) > effort.tries();
    Unlimited small =
        isDear ? Unlimited.of(problem, new Effort(1 + effort.tries() / OneEach.PART)) : table;
    Built pruned = Built.within(free, limit);
    Built each = OneEach.of(small);
    Built start = pruned.value() > each.value() ? pruned : each;
    long spent = table.tries() + (isDear ? small.tries() : 0) + OneEach.tries(small);
    if (start.value() == atMost) {
      return found(problem, start, atMost, spent);
    }
    BestFirst search = new BestFirst(table, start, effort.tries() - spent).search();
    long bound = table.isExact() ? Math.min(atMost, search.atMost()) : atMost;
    return found(problem, search.best(), bound, spent + search.tries());
  }

  /** What a sheet can give were there no limit on copies, and a bound on what it gives. */
  record Table(Unlimited table, long atMost) {
    long tries() {
      return table.tries();
    }
  }

  static Table table(Paper paper, List<Wanted> wanted, int[] limit, double kerf, Effort effort) {
    Problem problem = new Problem(paper, wanted, limit, kerf);
    Unlimited table = Unlimited.of(problem, effort);
    long atMost = Math.min(problem.valueOfAll(), problem.valueByArea());
    return new Table(table, table.isExact() ? Math.min(atMost, table.best()) : atMost);
  }

  private static Found found(Problem problem, Built built, long atMost, long tries) {
    Part whole =
        built == null
            ? problem.waste(problem.width, problem.height)
            : Built.part(problem, built, problem.width, problem.height);
    long value = built == null ? 0 : built.value();
    // The bound by area is rounded up.
    long bound = value >= atMost - 1 ? value : atMost;
    return new Found(new SheetPlan(problem.paper, 1, whole), value, bound, tries);
  }
}
