package facetwright.papers.materials;

import facetwright.geom.Box2;
import facetwright.net.Laid;
import facetwright.net.Net;
import facetwright.net.SheetLayout;
import facetwright.papers.cutting.Effort;
import facetwright.papers.cutting.OneSheet;
import facetwright.papers.cutting.Paper;
import facetwright.papers.cutting.Planner;
import facetwright.papers.cutting.Wanted;
import java.util.ArrayList;
import java.util.List;

/**
 * How many sheets of card so many pieces of a design take. Parts are reckoned by the boxes round
 * them, which may be turned; where their outlines would fit closer, it takes fewer.
 *
 * @param perSheet how many whole designs one sheet gives; 0 where one takes more than a sheet
 * @param sheets for all pieces
 */
record Stocking(int perSheet, int sheets) {

  static Stocking of(Laid laid, int pieces) {
    Paper card = new Paper(laid.stock().name(), laid.stock().width(), laid.stock().height());
    double gap = SheetLayout.USUAL_GAP;
    int simple = laid.sheets() * pieces;
    if (!laid.fits()) {
      return new Stocking(0, simple);
    }
    List<Box2> boxes = boxes(laid.net());
    if (boxes.size() == 1) {
      Wanted one = wanted(boxes.getFirst(), "net", Wanted.UNLIMITED);
      int fit = OneSheet.plan(card, List.of(one), gap, Effort.USUAL).pieces()[0];
      int perSheet = Math.max(1, fit);
      return new Stocking(perSheet, (pieces + perSheet - 1) / perSheet);
    }
    if (pieces == 1) {
      return new Stocking(laid.sheets() == 1 ? 1 : 0, laid.sheets());
    }
    List<Wanted> all = new ArrayList<>();
    boolean small = true;
    for (Box2 box : boxes) {
      all.add(wanted(box, "part " + (all.size() + 1), pieces));
      small &= holds(card, box);
    }
    int planned = small ? Planner.plan(List.of(card), all, gap, Effort.USUAL).sheetCount() : simple;
    return new Stocking(laid.sheets() == 1 ? 1 : 0, Math.min(simple, planned));
  }

  private static Wanted wanted(Box2 box, String name, int count) {
    return Wanted.of(name, box.width(), box.height(), count, true);
  }

  private static boolean holds(Paper card, Box2 box) {
    return Math.max(box.width(), box.height()) <= Math.max(card.width(), card.height())
        && Math.min(box.width(), box.height()) <= Math.min(card.width(), card.height());
  }

  private static List<Box2> boxes(Net net) {
    List<Box2> boxes = new ArrayList<>();
    int[] piece = net.pieceOfPanel();
    for (int p = 0; p < piece.length; p++) {
      Box2 box = net.panels().get(p).outline().box();
      if (piece[p] < boxes.size()) {
        boxes.set(piece[p], boxes.get(piece[p]).union(box));
      } else {
        boxes.add(box);
      }
    }
    return boxes;
  }
}
