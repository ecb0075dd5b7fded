package facetwright.draw;

import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Vec2;
import facetwright.net.Net;
import facetwright.net.sheet.Laid;
import java.util.ArrayList;
import java.util.List;

/**
 * What of a laid net lies on one of its sheets: the pieces whose middle is nearest to it.
 *
 * @param panels indices of the panels on this sheet
 * @param page the sheet, grown where a piece reaches over its edge
 * @param over whether a piece reaches over the edge of the sheet
 */
public record SheetPart(Laid laid, int sheet, List<Integer> panels, Box2 page, boolean over) {
  private static final double ROOM = 5;

  /** What leaves the sheet by no more lies on it. */
  private static final LengthTolerance SLACK = LengthTolerance.UNSEEN;

  public static SheetPart of(Laid laid, int sheet) {
    if (sheet < 0 || sheet >= laid.sheets()) {
      throw new IllegalArgumentException(
          "there is no sheet " + (sheet + 1) + " of " + laid.sheets());
    }
    Net net = laid.net();
    int[] piece = net.pieceOfPanel();
    List<Box2> boxes = net.boxOfPiece();
    List<Integer> here = new ArrayList<>();
    Box2 page = laid.sheet(sheet);
    boolean over = false;
    for (int p = 0; p < piece.length; p++) {
      Box2 box = boxes.get(piece[p]);
      if (nearest(laid, box.centre()) == sheet) {
        here.add(p);
        if (!laid.sheet(sheet).holds(box, SLACK)) {
          page = page.union(box.grown(ROOM));
          over = true;
        }
      }
    }
    return new SheetPart(laid, sheet, List.copyOf(here), page, over);
  }

  /** Whether this place of the laid net belongs to this sheet. */
  public boolean has(Vec2 place) {
    return nearest(laid, place) == sheet;
  }

  /** From the plane of the laid net to the page. */
  public Vec2 shift() {
    return new Vec2(-page.minX(), -page.minY());
  }

  /** Round the panels of this sheet, on the page; the page where there are none. */
  public Box2 panelBox() {
    Vec2 shift = shift();
    return panels.stream()
        .map(p -> laid.net().panels().get(p).outline().box())
        .reduce(Box2::union)
        .map(
            b ->
                new Box2(
                    b.minX() + shift.x(),
                    b.minY() + shift.y(),
                    b.maxX() + shift.x(),
                    b.maxY() + shift.y()))
        .orElse(new Box2(0, 0, page.width(), page.height()));
  }

  /** A place of the page where it lies when the sheet is turned over about its upright middle. */
  public Vec2 turnedOver(Vec2 onPage) {
    return new Vec2(page.width() - onPage.x(), onPage.y());
  }

  /** The same of a box. */
  public Box2 turnedOver(Box2 onPage) {
    double wide = page.width();
    return new Box2(wide - onPage.maxX(), onPage.minY(), wide - onPage.minX(), onPage.maxY());
  }

  private static int nearest(Laid laid, Vec2 place) {
    return laid.sheetAt(place);
  }
}
