package facetwright.form.unfold;

import facetwright.geom.LengthTolerance;
import java.util.List;

/**
 * Which tabs a layout gets.
 *
 * @param placed at most one for each cut edge
 * @param dropped cut edges that no tab fits
 */
record TabPlan(List<Tab> placed, List<Integer> dropped) {
  /** Tabs that are alike may hold so much less area for glue. */
  private static final double LOST = 0.1;

  /** Whether the tabs lie on each other under every likeness of a group. */
  boolean isAlike(List<Likeness> group) {
    return placed.stream()
        .allMatch(
            t -> group.stream().allMatch(l -> placed.stream().anyMatch(o -> o.isImage(t, l))));
  }

  /** Whether no more are left out, and none is less deep than the least deep of another plan. */
  boolean costsNoMoreThan(TabPlan other) {
    return dropped.size() <= other.dropped.size()
        && least() >= other.least() - LengthTolerance.FINE.mm()
        && area() >= other.area() * (1 - LOST);
  }

  private double least() {
    return placed.stream().mapToDouble(Tab::depth).min().orElse(0);
  }

  private double area() {
    return placed.stream().mapToDouble(t -> t.outline().area()).sum();
  }
}
