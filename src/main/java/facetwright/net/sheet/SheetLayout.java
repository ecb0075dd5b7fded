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
import java.util.Optional;
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
  /** What a knife needs between two pieces, in mm; common practice, no source. */
  public static final double USUAL_GAP = 2;

  /** The most room that is left between two pieces or along a sheet's edge, in mm. */
  public static final double MOST_GAP = 100;

  private SheetLayout() {}

  /**
   * @param room kept free round the pieces
   * @throws IllegalArgumentException when the margin leaves no sheet
   */
  public static Laid lay(Net net, Stock stock, Room room) {
    return lay(net, stock, List.of(room));
  }

  /**
   * @param rooms that may be kept free round the pieces, the widest first: the first of them that
   *     does not cost a sheet is
   * @throws IllegalArgumentException when a margin leaves no sheet
   */
  public static Laid lay(Net net, Stock stock, List<Room> rooms) {
    int pieces = net.pieces();
    List<Integer> all = IntStream.range(0, pieces).boxed().toList();
    return lay(net, List.of(new Share(List.of(stock), all)), rooms);
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
   * Lays a net whose pieces are cut from several cards, each card on sheets of its own. Pieces come
   * nearer to each other than they should before a larger size is taken.
   *
   * @param shares all pieces, each once; the first share's card counts as that of the net
   * @param rooms as above
   */
  public static Laid lay(Net net, List<Share> shares, List<Room> rooms) {
    List<Try> tries = shares.stream().map(s -> lay(net, s, rooms)).toList();
    Motion2[] motions = new Motion2[net.pieces()];
    List<Stock> cards = new ArrayList<>();
    double right = 0;
    for (int i = 0; i < shares.size(); i++) {
      Try best = tries.get(i);
      for (int piece : shares.get(i).pieces) {
        motions[piece] = best.motions()[piece].then(Motion2.shift(new Vec2(right, 0)));
      }
      cards.addAll(Collections.nCopies(best.sheets(), best.stock()));
      right += best.sheets() * (best.stock().width() + Laid.SHEET_GAP);
    }
    return new Laid(
        net.moved(List.of(motions)),
        cards.getFirst(),
        cards.size(),
        tries.stream().allMatch(Try::fits),
        tries.stream()
            .map(Try::room)
            .min(Comparator.<Room>comparingInt(rooms::indexOf).reversed())
            .orElseThrow(),
        rooms,
        cards);
  }

  private static Try lay(Net net, Share share, List<Room> rooms) {
    Pieces pieces = new Pieces(net, share.pieces);
    for (Stock stock : share.stock) {
      Optional<Try> one = oneSheet(pieces, stock, rooms);
      if (one.isPresent()) {
        return one.get();
      }
    }
    Stock largest = share.stock.getLast();
    if (!leaves(largest, rooms.getLast())) {
      throw new Refused(noRoom(largest, rooms.getLast().margin()));
    }
    // No fewer sheets than with the least room, and of the rooms with which it takes no more the
    // widest.
    Try least = pieces.on(largest, rooms.getLast());
    if (!least.fits()) {
      return least;
    }
    for (Room room : rooms) {
      Try tried = leaves(largest, room) ? pieces.on(largest, room) : least;
      if (!least.betterThan(tried)) {
        return tried;
      }
    }
    return least;
  }

  /** All on one sheet, with the widest room that lets them lie there. */
  private static Optional<Try> oneSheet(Pieces pieces, Stock stock, List<Room> rooms) {
    Room least = rooms.getLast();
    Room widest = rooms.getFirst();
    if (leaves(stock, widest) && pieces.on(stock, widest).isOneSheet()) {
      return Optional.of(pieces.on(stock, widest));
    }
    return leaves(stock, least) && pieces.on(stock, least).isOneSheet()
        ? rooms.stream()
            .filter(r -> leaves(stock, r))
            .map(r -> pieces.on(stock, r))
            .filter(Try::isOneSheet)
            .findFirst()
        : Optional.empty();
  }

  private static boolean leaves(Stock stock, Room room) {
    return 2 * room.margin() < Math.min(stock.width(), stock.height());
  }

  /** The words for a margin that leaves nothing of a sheet. */
  public static Message noRoom(Stock stock, double margin) {
    double shorter = Math.min(stock.width(), stock.height());
    return Message.of(
        "a margin of %s on both sides leaves nothing of a sheet that is %s the shorter way: it must"
            + " be less than %s",
        Value.given(margin), Value.given(shorter), Value.limit(shorter / 2));
  }

  /** Refuses a margin or gap that no sheet is given. */
  static void inRange(String what, double mm) {
    if (!(mm >= 0 && mm <= MOST_GAP)) {
      throw new Refused(
          Message.of(
              "the %s lies in %s to %s, not %s",
              what, Value.given(0), Value.given(MOST_GAP), Value.given(mm)));
    }
  }
}
