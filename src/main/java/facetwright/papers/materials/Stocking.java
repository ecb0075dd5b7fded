package facetwright.papers.materials;

import facetwright.geom.Box2;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.SheetLayout;
import facetwright.papers.copies.CopyPlan;
import facetwright.papers.cutting.Effort;
import facetwright.papers.cutting.Paper;
import facetwright.papers.cutting.Planner;
import facetwright.papers.cutting.Wanted;
import java.util.ArrayList;
import java.util.List;

/**
 * How many sheets of card so many pieces of a design take: as many whole designs from each as lie
 * on it, or where a design has several parts, the boxes round these put together on fewer sheets.
 *
 * @param perSheet how many whole designs one sheet gives; 0 where one takes more than a sheet
 * @param sheets for all pieces
 */
record Stocking(int perSheet, int sheets) {

  static Stocking of(Laid laid, int pieces) {
    int simple = laid.sheets() * pieces;
    if (!laid.fits() || laid.kinds().size() > 1) {
      return new Stocking(0, simple);
    }
    int perSheet = CopyPlan.of(laid).count();
    int whole = perSheet == 0 ? simple : (pieces + perSheet - 1) / perSheet;
    List<Box2> boxes = laid.net().boxOfPiece();
    if (boxes.size() == 1 || whole == 1) {
      return new Stocking(perSheet, whole);
    }
    double edges = 2 * laid.orLess().getLast().margin();
    Paper card =
        new Paper(laid.stock().name(), laid.stock().width() - edges, laid.stock().height() - edges);
    List<Wanted> all = new ArrayList<>();
    boolean small = true;
    for (Box2 box : boxes) {
      String name = "part " + (all.size() + 1);
      all.add(Wanted.of(name, box.width(), box.height(), pieces, true));
      small &= holds(card, box);
    }
    int planned =
        small
            ? Planner.plan(List.of(card), all, SheetLayout.USUAL_GAP, Effort.USUAL).sheetCount()
            : whole;
    return new Stocking(perSheet, Math.min(whole, planned));
  }

  private static boolean holds(Paper card, Box2 box) {
    return Math.max(box.width(), box.height()) <= Math.max(card.width(), card.height())
        && Math.min(box.width(), box.height()) <= Math.min(card.width(), card.height());
  }
}
