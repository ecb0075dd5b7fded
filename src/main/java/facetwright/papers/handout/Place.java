package facetwright.papers.handout;

import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.language.Telling;
import facetwright.net.sheet.Laid;
import facetwright.papers.chart.PieceChart;

/** From where on its sheet a blank is cut, in words. */
record Place(Laid laid, Telling tell) {
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
    return " "
        + tell.say(
            "handout.place",
            "sheets",
            laid.sheets(),
            "sheet",
            at + 1,
            "long",
            String.valueOf(sheet.width() > sheet.height()),
            "left",
            length(box.minX() - sheet.minX()),
            "top",
            length(sheet.maxY() - box.maxY()),
            "upright",
            String.valueOf(!isLevel));
  }

  private String length(double mm) {
    return tell.read(Math.max(0, mm));
  }
}
