package facetwright.form.unfold;

import facetwright.geom.Polygon2;
import facetwright.geom.RoundOff;
import java.util.ArrayList;
import java.util.List;

/**
 * A layout with its tabs and how its pieces pack.
 *
 * @param packings one a piece
 */
record Candidate(Layout layout, TabFitter.Plan tabs, List<Packing> packings) {

  static Candidate of(Layout layout, Tabs tabs, double sheetWidth, double sheetHeight) {
    TabFitter.Plan plan = TabFitter.plan(layout, tabs);
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
    return new Candidate(layout, plan, packings);
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

  private double area() {
    return packings.stream().mapToDouble(Packing::area).sum();
  }
}
