package facetwright.papers.cutting;

import java.util.List;
import java.util.Optional;

/** The pieces of highest value from one sheet. */
public final class OneSheet {
  private OneSheet() {}

  /**
   * @param wanted each at most as often as its count says
   * @param kerf what the blade takes, 0 or more, in mm
   * @return a plan of one sheet; {@link CutPlan#bestKnown} tells whether it is proved best
   */
  public static CutPlan plan(Paper paper, List<Wanted> wanted, double kerf, Effort effort) {
    int[] limit = wanted.stream().mapToInt(Wanted::count).toArray();
    return best(paper, wanted, limit, kerf, effort);
  }

  /** What one sheet can give at most were there no limit on copies; its area where not known. */
  static double atMost(Paper paper, List<Wanted> wanted, int[] limit, double kerf, Effort effort) {
    Unlimited table = Unlimited.of(new Problem(paper, wanted, limit, kerf), effort);
    return table.isExact() ? table.best() / Problem.PER_VALUE : paper.area();
  }

  static CutPlan best(Paper paper, List<Wanted> wanted, int[] limit, double kerf, Effort effort) {
    if (!(kerf >= 0) || Double.isInfinite(kerf)) {
      throw new IllegalArgumentException("a blade takes 0 mm or more, not " + kerf);
    }
    Problem problem = new Problem(paper, wanted, limit, kerf);
    Unlimited table = Unlimited.of(problem, effort);
    Part free = FewCuts.of(table);
    if (suffice(free, limit)) {
      return best(problem, wanted, free, kerf, table.isExact());
    }
    Optional<Built> known = OneEach.of(table);
    Built start = known.orElseGet(() -> mostValuable(problem));
    if (start.value() == problem.valueOfAll()) {
      return best(problem, wanted, part(problem, start), kerf, true);
    }
    BestFirst search = new BestFirst(table, start, effort.nodes()).search();
    boolean proven = search.isProven() || search.best().value() == problem.valueOfAll();
    return best(problem, wanted, part(problem, search.best()), kerf, proven);
  }

  private static CutPlan best(
      Problem problem, List<Wanted> wanted, Part whole, double kerf, boolean proven) {
    return new CutPlan(wanted, kerf, List.of(new SheetPlan(problem.paper, 1, whole)), proven);
  }

  private static Part part(Problem problem, Built built) {
    return Built.part(problem, built, problem.width, problem.height);
  }

  private static Built mostValuable(Problem problem) {
    Problem.Fit best = problem.fits.getFirst();
    for (Problem.Fit fit : problem.fits) {
      best = fit.value() > best.value() ? fit : best;
    }
    return Built.of(problem, best);
  }

  private static boolean suffice(Part whole, int[] limit) {
    int[] used = new int[limit.length];
    whole.each(
        part -> {
          if (part instanceof Part.Piece piece) {
            used[piece.kind()]++;
          }
        });
    for (int k = 0; k < limit.length; k++) {
      if (used[k] > limit[k]) {
        return false;
      }
    }
    return true;
  }
}
