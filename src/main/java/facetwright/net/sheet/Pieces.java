package facetwright.net.sheet;

import facetwright.geom.Motion2;
import facetwright.net.Net;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Pieces of a net that are cut from one card, to be laid on sheets of one size or another. */
final class Pieces {
  /** Orders to lay pieces in, the largest first: what is left out of a row is small. */
  private static final List<Comparator<PieceShape>> ORDERS =
      List.of(
          Comparator.comparingLong(p -> -p.size()),
          Comparator.comparingDouble(p -> -p.longer()),
          Comparator.comparingDouble(p -> -p.shorter()),
          Comparator.comparingDouble(p -> -p.width()),
          Comparator.comparingDouble(p -> -p.height()));

  private final List<PieceShape> shapes;
  private final List<Integer> some;

  /** What was tried: how each room came out on a size. */
  private record Asked(Stock stock, Room room) {}

  private final Map<Asked, Try> tried = new HashMap<>();

  Pieces(Net net, List<Integer> some) {
    this.shapes = PieceShape.of(net);
    this.some = some;
  }

  /** The fewest sheets found. */
  Try on(Stock stock, Room room) {
    return tried.computeIfAbsent(new Asked(stock, room), _ -> fewest(stock, room));
  }

  private Try fewest(Stock stock, Room room) {
    Try best = null;
    Set<List<Integer>> seen = new HashSet<>();
    for (Comparator<PieceShape> by : ORDERS) {
      List<Integer> order = some.stream().sorted(Comparator.comparing(shapes::get, by)).toList();
      if (!seen.add(order)) {
        continue;
      }
      Try next = inOrder(order, stock, room);
      best = best == null || next.betterThan(best) ? next : best;
      if (best.isOneSheet() || !best.fits() || best.sheets() == least(stock, room)) {
        return best;
      }
    }
    return best;
  }

  /** Fewer sheets than this have no room for what the pieces cover. */
  private int least(Stock stock, Room room) {
    double all = some.stream().mapToDouble(i -> shapes.get(i).area()).sum();
    double edges = 2 * room.margin();
    return (int) Math.ceil(all / ((stock.width() - edges) * (stock.height() - edges)));
  }

  private Try inOrder(List<Integer> order, Stock stock, Room room) {
    Try best = null;
    for (boolean mayTurnPieces : new boolean[] {false, true}) {
      for (Stock lying : List.of(stock, stock.turned())) {
        Try tried = attempt(order, lying, room, mayTurnPieces);
        if (best == null || tried.betterThan(best)) {
          best = tried;
        }
        if (best.isOneSheet()) {
          return best;
        }
      }
    }
    return best;
  }

  private Try attempt(List<Integer> order, Stock stock, Room room, boolean mayTurn) {
    List<SheetFill> sheets = new ArrayList<>();
    Motion2[] motions = new Motion2[shapes.size()];
    int[] sheetOf = new int[shapes.size()];
    boolean fits = true;
    for (int piece : order) {
      List<PieceShape.Turned> turns = shapes.get(piece).turns(mayTurn);
      SheetFill.Spot spot = null;
      int sheet = 0;
      while (spot == null && sheet < sheets.size()) {
        spot = sheets.get(sheet).place(turns);
        sheet += spot == null ? 1 : 0;
      }
      if (spot == null) {
        SheetFill fresh = new SheetFill(stock, room.margin(), room.gap());
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
    return new Try(stock, room, motions, sheets.size(), fits);
  }
}
