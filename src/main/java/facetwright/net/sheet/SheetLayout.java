package facetwright.net.sheet;

import facetwright.geom.Motion2;
import facetwright.geom.Vec2;
import facetwright.message.Message;
import facetwright.message.Refused;
import facetwright.message.Value;
import facetwright.net.Net;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Lays a net's pieces on sheets: largest first, each as low and then as far left as it goes, on as
 * few sheets as this finds. A piece keeps the direction its maker gave it where that costs no
 * sheet, so that its scores stay parallel to the sheet's edges; the sheet itself is turned a
 * quarter before a piece is. Otherwise quarter turns and the direction of the piece's smallest
 * rectangle are tried.
 *
 * <p>The search is a heuristic: it does not promise the fewest sheets possible. Pieces keep clear
 * of each other by the gap, measured between their true outlines.
 */
public final class SheetLayout {
  /** Room left between two pieces when none is asked for, in mm. */
  public static final double USUAL_GAP = 2;

  /** The most room that is left between two pieces, in mm. */
  public static final double MOST_GAP = 100;

  private static final double MOST_MARGIN = 100;

  private SheetLayout() {}

  /** Lays with no margin: pieces may reach the sheet's edge. */
  public static Laid lay(Net net, Stock stock) {
    return lay(net, stock, 0, USUAL_GAP);
  }

  /**
   * @param margin kept free along each edge of the sheet, 0 to 100 mm
   * @param gap kept free between two pieces, 0 to 100 mm
   * @throws IllegalArgumentException when the margin or gap is out of range or leaves no sheet
   */
  public static Laid lay(Net net, Stock stock, double margin, double gap) {
    inRange("margin", margin);
    inRange("gap between pieces", gap);
    if (2 * margin >= Math.min(stock.width(), stock.height())) {
      throw new Refused(noRoom(stock, margin));
    }
    List<PieceShape> pieces = PieceShape.of(net, gap);
    List<Integer> all = IntStream.range(0, pieces.size()).boxed().toList();
    Try best = lay(pieces, all, stock, margin, gap);
    return new Laid(net.moved(List.of(best.motions)), best.stock, best.sheets, best.fits, margin);
  }

  /**
   * Some pieces of a net that are cut from one card.
   *
   * @param stock the sizes it may come in, of which the smallest is taken that holds them all; one
   *     at least
   * @param pieces which of the net's pieces
   */
  public record Share(List<Stock> stock, List<Integer> pieces) {
    public Share {
      stock = List.copyOf(stock);
      pieces = List.copyOf(pieces);
    }
  }

  /**
   * Lays a net whose pieces are cut from several cards, each card on sheets of its own.
   *
   * @param shares all pieces, each once; the first share's card counts as that of the net
   */
  public static Laid lay(Net net, List<Share> shares, double margin, double gap) {
    List<PieceShape> pieces = PieceShape.of(net, gap);
    Motion2[] motions = new Motion2[pieces.size()];
    List<Stock> cards = new ArrayList<>();
    boolean fits = true;
    double right = 0;
    for (Share share : shares) {
      Try best = null;
      for (Stock stock : share.stock) {
        best = lay(pieces, share.pieces, stock, margin, gap);
        if (best.fits && best.sheets == 1) {
          break;
        }
      }
      for (int piece : share.pieces) {
        motions[piece] = best.motions[piece].then(Motion2.shift(new Vec2(right, 0)));
      }
      cards.addAll(Collections.nCopies(best.sheets, best.stock));
      right += best.sheets * (best.stock.width() + Laid.SHEET_GAP);
      fits &= best.fits;
    }
    return new Laid(
        net.moved(List.of(motions)), cards.getFirst(), cards.size(), fits, margin, cards);
  }

  private static Try lay(
      List<PieceShape> pieces, List<Integer> some, Stock stock, double margin, double gap) {
    List<Integer> order =
        some.stream()
            .sorted(Comparator.comparingDouble((Integer i) -> -pieces.get(i).area()))
            .toList();
    Try best = null;
    for (boolean mayTurnPieces : new boolean[] {false, true}) {
      for (Stock lying : List.of(stock, stock.turned())) {
        Try tried = attempt(pieces, order, lying, margin, gap, mayTurnPieces);
        if (best == null || tried.betterThan(best)) {
          best = tried;
        }
        if (best.fits && best.sheets == 1) {
          return best;
        }
      }
    }
    return best;
  }

  /** The words for a margin that leaves nothing of a sheet. */
  public static Message noRoom(Stock stock, double margin) {
    double shorter = Math.min(stock.width(), stock.height());
    return Message.of(
        "a margin of %s on both sides leaves nothing of a sheet that is %s the shorter way: it must"
            + " be less than %s",
        Value.given(margin), Value.given(shorter), Value.limit(shorter / 2));
  }

  @SuppressWarnings("ArrayRecordComponent") // Read alone, and never compared.
  private record Try(Stock stock, Motion2[] motions, int sheets, boolean fits) {
    boolean betterThan(Try other) {
      return fits == other.fits ? fits && sheets < other.sheets : fits;
    }
  }

  private static Try attempt(
      List<PieceShape> pieces,
      List<Integer> order,
      Stock stock,
      double margin,
      double gap,
      boolean mayTurn) {
    List<SheetFill> sheets = new ArrayList<>();
    Motion2[] motions = new Motion2[pieces.size()];
    int[] sheetOf = new int[pieces.size()];
    boolean fits = true;
    for (int piece : order) {
      List<PieceShape.Turned> turns = pieces.get(piece).turns(mayTurn);
      SheetFill.Spot spot = null;
      int sheet = 0;
      while (spot == null && sheet < sheets.size()) {
        spot = sheets.get(sheet).place(turns);
        sheet += spot == null ? 1 : 0;
      }
      if (spot == null) {
        SheetFill fresh = new SheetFill(stock, margin, gap);
        spot = fresh.place(turns);
        fits &= spot != null;
        if (spot == null) {
          spot = fresh.force(turns.getFirst());
        }
        sheets.add(fresh);
      }
      double right = sheet * (stock.width() + Laid.SHEET_GAP);
      motions[piece] = spot.motion(right);
      sheetOf[piece] = sheet;
    }
    for (int piece : order) {
      motions[piece] = motions[piece].then(Motion2.shift(sheets.get(sheetOf[piece]).toMiddle()));
    }
    return new Try(stock, motions, sheets.size(), fits);
  }

  private static void inRange(String what, double mm) {
    if (!(mm >= 0 && mm <= MOST_MARGIN)) {
      throw new Refused(
          Message.of(
              "the %s lies in %s to %s, not %s",
              what, Value.given(0), Value.given(MOST_MARGIN), Value.given(mm)));
    }
  }
}
