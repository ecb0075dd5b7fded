package facetwright.net.sheet;

import facetwright.geom.Box2;
import facetwright.geom.Vec2;
import facetwright.measure.Mass;
import facetwright.net.Net;
import java.io.Serializable;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A net laid on its sheets. Sheet 0 has its lower left corner at the origin; further sheets lie to
 * its right, {@link #SHEET_GAP} mm apart.
 *
 * @param net the net, its pieces moved to where they lie
 * @param stock the sheet as it lies (turned a quarter where that fits better)
 * @param sheets how many sheets it takes, at least 1
 * @param fits whether every piece lies whole on one of the sheets
 * @param kept the room that is kept free round the pieces; where they do not fit, what should be
 * @param rooms that may be kept, the widest first
 * @param cards for each sheet which card it is, as it lies: parts may have cards of their own
 */
public record Laid(
    Net net, Stock stock, int sheets, boolean fits, Room kept, List<Room> rooms, List<Stock> cards)
    implements Serializable {
  /** Room drawn between two sheets, in mm. */
  public static final double SHEET_GAP = 20;

  public Laid {
    rooms = List.copyOf(rooms);
    cards = List.copyOf(cards);
  }

  /** One whose sheets are all of one card, with the room it should have. */
  public Laid(Net net, Stock stock, int sheets, boolean fits, Room kept) {
    this(net, stock, sheets, fits, kept, List.of(kept), Collections.nCopies(sheets, stock));
  }

  /** The room that would be kept if the sheet left it. */
  public Room wanted() {
    return rooms.getFirst();
  }

  /** The room that is kept, and those that are less, the widest first. */
  public List<Room> orLess() {
    return rooms.subList(rooms.indexOf(kept), rooms.size());
  }

  /** Kept free along each edge of a sheet, in mm. */
  public double margin() {
    return kept.margin();
  }

  /** The same sheets under a net that lies on them alike. */
  public Laid with(Net other) {
    return new Laid(other, stock, sheets, fits, kept, rooms, cards);
  }

  /** Where sheet {@code index} lies. */
  public Box2 sheet(int index) {
    double x = 0;
    for (Stock before : cards.subList(0, index)) {
      x += before.width() + SHEET_GAP;
    }
    return new Box2(x, 0, x + cards.get(index).width(), cards.get(index).height());
  }

  /** The sheet that a place belongs to: that on which it lies, or which it lies nearest to. */
  public int sheetAt(Vec2 place) {
    for (int i = 0; i < sheets; i++) {
      if (place.x() < sheet(i).maxX() + SHEET_GAP / 2) {
        return i;
      }
    }
    return sheets - 1;
  }

  /** All kinds of card, each once, in the order of its first sheet. */
  public List<Stock> kinds() {
    return cards.stream().distinct().toList();
  }

  /** How many sheets of a card it takes. */
  public int sheetsOf(Stock card) {
    return Collections.frequency(cards, card);
  }

  /** Which card a panel is cut from. */
  public Stock cardOf(int panel) {
    return cards.get(sheetAt(net.panels().get(panel).outline().box().centre()));
  }

  /** What the card of one piece weighs, without what falls away. */
  public Mass mass() {
    return IntStream.range(0, net.panels().size())
        .mapToObj(p -> Mass.of(net.panels().get(p).cardArea(), cardOf(p).weight()))
        .reduce(new Mass(0), Mass::plus);
  }

  /** Where all sheets lie, in order. */
  public List<Box2> sheetBoxes() {
    return IntStream.range(0, sheets).mapToObj(this::sheet).toList();
  }
}
