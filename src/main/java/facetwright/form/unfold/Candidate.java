package facetwright.form.unfold;

import facetwright.geom.Polygon2;
import facetwright.geom.RoundOff;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A layout with its tabs and how its pieces pack.
 *
 * @param packings one a piece
 * @param kept the ways in which it lies on itself that tabs made alike have to keep
 */
record Candidate(Layout layout, TabPlan tabs, List<Packing> packings, Optional<Likeness> kept) {
  /** Tabs that are alike may make the box round a net larger by this part. */
  private static final double LARGER = 0.05;

  static Candidate of(Layout layout, TabPlan plan, double sheetWidth, double sheetHeight) {
    return of(layout, plan, sheetWidth, sheetHeight, Optional.empty());
  }

  /**
   * @param kept a way in which the layout lies on itself turned over, as the tabs do
   */
  static Candidate of(
      Layout layout, TabPlan plan, double sheetWidth, double sheetHeight, Optional<Likeness> kept) {
    List<Packing> packings = new ArrayList<>();
    for (int p = 0; p < layout.pieces(); p++) {
      List<Polygon2> panels = panels(layout, p);
      List<Polygon2> all = new ArrayList<>(panels);
      for (Tab tab : plan.placed()) {
        if (layout.piece(tab.carrier()) == p) {
          all.add(tab.outline());
        }
      }
      packings.add(Packing.of(all, panels, sheetWidth, sheetHeight));
    }
    return new Candidate(layout, plan, packings, kept);
  }

  /**
   * The same layout with tabs as symmetric as its panels allow, where that costs nothing: no tab
   * left out or less deep, no larger sheet, hardly a larger box.
   */
  Candidate alike(Tabs wanted, double sheetWidth, double sheetHeight) {
    if (tabs.placed().isEmpty()) {
      return this;
    }
    List<List<Likeness>> groups =
        Likenesses.groups(layout).stream()
            .filter(group -> kept.stream().allMatch(k -> group.stream().anyMatch(k::isSame)))
            .toList();
    for (List<Likeness> group : groups) {
      if (tabs.isAlike(group)) {
        return this;
      }
      Optional<Candidate> next =
          instead(TabFitter.alike(layout, wanted, group), sheetWidth, sheetHeight);
      if (next.isPresent()) {
        return next.get();
      }
    }
    // A seam that a mirror turns over on itself has its tab on one side; the others are alike.
    return groups.stream()
        .filter(group -> TabFitter.isAnyTurnedOver(layout, group))
        .flatMap(
            group ->
                instead(TabFitter.nearlyAlike(layout, wanted, group), sheetWidth, sheetHeight)
                    .stream())
        .findFirst()
        .orElse(this);
  }

  private Optional<Candidate> instead(
      Optional<TabPlan> plan, double sheetWidth, double sheetHeight) {
    return plan.filter(p -> p.costsNoMoreThan(tabs))
        .map(p -> of(layout, p, sheetWidth, sheetHeight, kept))
        .filter(c -> c.fits() == fits() && c.area() <= area() * (1 + LARGER));
  }

  static List<Polygon2> panels(Layout layout, int piece) {
    return layout.order().stream()
        .filter(f -> layout.piece(f) == piece)
        .map(layout::outline)
        .toList();
  }

  boolean fits() {
    return packings.stream().allMatch(Packing::fits);
  }

  /** Fewer tabs left out first, then what fits the sheet, then what packs small. */
  boolean betterThan(Candidate other) {
    if (tabs.dropped().size() != other.tabs.dropped().size()) {
      return tabs.dropped().size() < other.tabs.dropped().size();
    }
    if (fits() != other.fits()) {
      return fits();
    }
    return area() < other.area() * (1 - RoundOff.PART);
  }

  /**
   * Whether its lying on itself turned over is worth what it costs beside the smallest: no tab, no
   * sheet, hardly a larger box.
   */
  boolean isWorth(Candidate smallest) {
    boolean costsNoMore =
        tabs.dropped().size() == smallest.tabs.dropped().size()
            && fits() == smallest.fits()
            && area() <= smallest.area() * (1 + Unfolding.FOR_A_MIRROR / 100.0);
    return costsNoMore || betterThan(smallest);
  }

  /** Whether what packs so without tabs is not so much smaller that this is not worth its size. */
  boolean isWorthBeside(Packing other) {
    return tabs.dropped().isEmpty()
        && fits()
        && area() <= other.area() * (1 + Unfolding.FOR_A_MIRROR / 100.0);
  }

  private double area() {
    return packings.stream().mapToDouble(Packing::area).sum();
  }
}
