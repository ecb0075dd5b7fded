package facetwright.bench;

import facetwright.papers.cutting.CutPlan;
import facetwright.papers.cutting.Effort;
import facetwright.papers.cutting.Instances;
import facetwright.papers.cutting.OneSheet;
import facetwright.papers.cutting.Verify;

/** Prints value, optimum, cuts and time of every published cutting instance. */
public final class CuttingBench {
  private CuttingBench() {}

  /** Runs all, or those whose name starts with the first word. */
  public static void main(String[] words) {
    long start = System.nanoTime();
    for (Instances.Instance one : Instances.all()) {
      if (words.length > 0 && !one.name().startsWith(words[0])) {
        continue;
      }
      long before = System.nanoTime();
      CutPlan plan = OneSheet.plan(one.sheet(), one.wanted(), 0, Effort.USUAL);
      long after = System.nanoTime();
      System.out.printf(
          "%-28s %10.0f of %10.0f%s %3d cuts %3d measures %7.0f ms%s%n",
          one,
          plan.value(),
          one.optimum(),
          plan.bestKnown() ? " proved" : "       ",
          plan.cuts(),
          plan.measures().size(),
          (after - before) / 1e6,
          Verify.atMost(plan).isEmpty() ? "" : " WRONG " + Verify.atMost(plan));
    }
    System.out.printf("all: %.1f s%n", (System.nanoTime() - start) / 1e9);
  }
}
