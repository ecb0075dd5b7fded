package facetwright.papers.handout;

import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.measure.Length;
import facetwright.net.sheet.Laid;
import facetwright.papers.chart.PieceChart;
import facetwright.papers.order.Order;

/** From where on its sheet a blank is cut, in words. */
record Place(Laid laid, Order order) {
  private static final LengthTolerance SAME = LengthTolerance.UNSEEN;

  /** A sentence after a space; empty where a piece is alone, or reaches over its sheet. */
  String of(int index, PieceChart piece) {
    if (laid.net().pieces() == 1 || !laid.fits()) {
      return "";
    }
    Box2 box = laid.net().boxOfPiece().get(index);
    int at = laid.sheetAt(box.centre());
    Box2 sheet = laid.sheet(at);
    boolean isLevel =
        SAME.same(box.width(), piece.width()) && SAME.same(box.height(), piece.height());
    boolean isOnEnd =
        SAME.same(box.width(), piece.height()) && SAME.same(box.height(), piece.width());
    if (!isLevel && !isOnEnd) {
      return "";
    }
    String which =
        laid.sheets() == 1 ? "On the sheet" : "On sheet " + (at + 1) + " of " + laid.sheets();
    return " "
        + which
        + ", its "
        + (sheet.width() > sheet.height() ? "long" : "short")
        + " side across, it lies "
        + length(box.minX() - sheet.minX())
        + " from the left edge and "
        + length(sheet.maxY() - box.maxY())
        + " from the top"
        + (isLevel ? "." : ", standing on end.");
  }

  private String length(double mm) {
    return new Length(Math.max(0, mm)).read(order.unit());
  }
}
