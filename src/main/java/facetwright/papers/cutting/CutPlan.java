package facetwright.papers.cutting;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * How everything wanted is cut.
 *
 * @param wanted what was asked for
 * @param kerf what the blade takes, in mm
 * @param sheets each sheet that is cut in a way of its own
 * @param bestKnown whether nothing better is possible: no fewer sheets, or no higher value where
 *     one sheet was asked for
 * @param bound what no plan betters: the fewest sheets any may take, or the highest value one sheet
 *     may give
 */
public record CutPlan(
    List<Wanted> wanted, double kerf, List<SheetPlan> sheets, boolean bestKnown, double bound) {
  public CutPlan {
    wanted = List.copyOf(wanted);
    sheets = List.copyOf(sheets);
  }

  CutPlan bounded(double other) {
    return new CutPlan(wanted, kerf, sheets, bestKnown, other);
  }

  /** How many sheets it takes. */
  public int sheetCount() {
    return sheets.stream().mapToInt(SheetPlan::copies).sum();
  }

  /** Area of all sheets, in mm². */
  public double paperArea() {
    return sheets.stream().mapToDouble(s -> s.copies() * s.paper().area()).sum();
  }

  /** How many of each wanted it gives. */
  public int[] pieces() {
    int[] all = new int[wanted.size()];
    for (SheetPlan sheet : sheets) {
      int[] one = sheet.pieces(all.length);
      for (int k = 0; k < all.length; k++) {
        all[k] += sheet.copies() * one[k];
      }
    }
    return all;
  }

  /** What all pieces are worth. */
  public double value() {
    int[] pieces = pieces();
    double sum = 0;
    for (int k = 0; k < pieces.length; k++) {
      sum += pieces[k] * wanted.get(k).value();
    }
    return sum;
  }

  /** How often the blade comes down, over all sheets. */
  public int cuts() {
    return sheets.stream().mapToInt(s -> s.copies() * s.whole().cuts()).sum();
  }

  /** The different measures a maker has to set, in mm. */
  public Set<Double> measures() {
    Set<Double> all = new TreeSet<>();
    sheets.forEach(
        s ->
            s.whole()
                .each(
                    part -> {
                      if (part instanceof Part.Cut cut) {
                        all.add(cut.at());
                      }
                    }));
    return all;
  }
}
