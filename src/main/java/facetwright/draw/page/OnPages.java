package facetwright.draw.page;

import facetwright.geom.Box2;
import facetwright.geom.Motion2;
import facetwright.geom.Vec2;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.Room;
import facetwright.net.sheet.SheetLayout;
import facetwright.net.sheet.SheetSize;
import facetwright.net.sheet.Stock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Pieces laid anew on the printer's pages, where each finds room on one. */
final class OnPages {
  private OnPages() {}

  /** Those of one card together; empty where a piece is larger than a page's printed part. */
  static Optional<Laid> of(Laid laid, SheetSize page) {
    int[] pieceOf = laid.net().pieceOfPanel();
    List<SheetLayout.Share> shares = new ArrayList<>();
    for (Stock card : laid.kinds()) {
      List<Integer> pieces =
          IntStream.range(0, pieceOf.length)
              .filter(p -> laid.cardOf(p).equals(card))
              .map(p -> pieceOf[p])
              .distinct()
              .boxed()
              .toList();
      shares.add(new SheetLayout.Share(List.of(on(card, page)), pieces));
    }
    boolean mayFit =
        laid.net().boxOfPiece().stream()
            .allMatch(b -> Math.hypot(b.width(), b.height()) < diagonal(page));
    if (!mayFit || shares.stream().mapToInt(s -> s.pieces().size()).sum() != laid.net().pieces()) {
      return Optional.empty();
    }
    Laid on =
        SheetLayout.lay(
            laid.net(), shares, List.of(new Room(Tiling.MARGIN, SheetLayout.USUAL_GAP)));
    return on.fits() ? Optional.of(aside(on)) : Optional.empty();
  }

  /** What lies on each page moved down and to the right, so that words find room beside it. */
  private static Laid aside(Laid on) {
    List<Box2> boxes = on.net().boxOfPiece();
    List<Vec2> shifts = new ArrayList<>();
    for (int i = 0; i < on.sheets(); i++) {
      int page = i;
      Box2 sheet = on.sheet(i);
      Optional<Box2> all =
          boxes.stream().filter(b -> on.sheetAt(b.centre()) == page).reduce(Box2::union);
      shifts.add(
          all.map(
                  b ->
                      new Vec2(
                          sheet.maxX() - Tiling.MARGIN - b.maxX(),
                          sheet.minY() + Tiling.MARGIN - b.minY()))
              .orElse(Vec2.ZERO));
    }
    return on.with(
        on.net()
            .moved(
                boxes.stream()
                    .map(b -> Motion2.shift(shifts.get(on.sheetAt(b.centre()))))
                    .toList()));
  }

  private static double diagonal(SheetSize page) {
    return Math.hypot(page.width(), page.height());
  }

  private static Stock on(Stock card, SheetSize page) {
    return new Stock(
        page.name(),
        page.width(),
        page.height(),
        card.weight(),
        card.caliper(),
        card.grain(),
        card.colour());
  }
}
