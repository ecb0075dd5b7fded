package facetwright.check.cut;

import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.Room;
import facetwright.net.sheet.SheetLayout;
import facetwright.net.sheet.SheetSize;
import facetwright.net.sheet.SheetSizes;
import facetwright.net.sheet.Stock;
import facetwright.words.Mend;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** What to do about a net that has not the room on its sheet that it should. */
final class SheetMends {
  /** Sizes by ISO 216 and ISO 269, which are not offered to who counts in inches. */
  private static final Pattern ISO = Pattern.compile("[ABC]\\d+");

  private final Laid laid;
  private final Room room;
  private final Optional<SheetSize> larger;

  /**
   * @param room to be kept free round the pieces
   */
  SheetMends(Laid laid, Room room) {
    this.laid = laid;
    this.room = room;
    this.larger = larger();
  }

  /** A larger sheet, where there is one that does. */
  List<Mend> mends() {
    return larger.<Mend>map(s -> new Mend.Sheet(s.name())).stream().toList();
  }

  /** A larger sheet, or how much smaller the net has to be. */
  Message fix() {
    int percent = percent();
    Message smaller =
        percent < 1
            ? Message.text("Make it smaller, or divide it into more pieces.")
            : Message.of(
                "Make it smaller, at %s or less of every length, tabs and borders too, or divide"
                    + " it into more pieces.",
                Value.share(percent / 100.0));
    return larger
        .map(size -> Message.of("Use a larger sheet: %s would do. %s", size.name(), smaller))
        .orElse(smaller);
  }

  /** The largest whole percentage of its size at which it fits; 0 where it is less than one. */
  private int percent() {
    int fits = 0;
    int over = 100;
    while (over - fits > 1) {
      int tried = (fits + over) / 2;
      if (fits(tried / 100.0)) {
        fits = tried;
      } else {
        over = tried;
      }
    }
    return fits;
  }

  /** Whether the net made smaller fits; a larger sheet for the net as it is comes to the same. */
  private boolean fits(double scale) {
    Stock stock = laid.stock();
    double border = 2 * room.margin();
    Stock larger =
        new Stock(
            stock.name(),
            (stock.width() - border) / scale,
            (stock.height() - border) / scale,
            stock.weight(),
            stock.caliper(),
            stock.grain());
    double gap = Math.min(SheetLayout.MOST_GAP, room.gap() / scale);
    Laid there = SheetLayout.lay(laid.net(), larger, new Room(0, gap));
    return there.fits() && there.sheets() <= sheets();
  }

  /** The least named size on which it fits, of the same series where the sheet belongs to one. */
  private Optional<SheetSize> larger() {
    Stock stock = laid.stock();
    String series = stock.name().replaceFirst("\\d+$", "");
    boolean inSeries =
        !series.equals(stock.name())
            && SheetSizes.list().stream().anyMatch(s -> s.name().equals(stock.name()));
    boolean isOfInches = !ISO.matcher(stock.name()).matches() && !stock.name().endsWith("mm");
    return SheetSizes.list().stream()
        .filter(s -> !isOfInches || !ISO.matcher(s.name()).matches())
        .filter(s -> !inSeries || s.name().replaceFirst("\\d+$", "").equals(series))
        .filter(s -> s.width() * s.height() > stock.width() * stock.height())
        .sorted(Comparator.comparingDouble(s -> s.width() * s.height()))
        .filter(s -> 2 * room.margin() < Math.min(s.width(), s.height()))
        .filter(this::holds)
        .findFirst();
  }

  private boolean holds(SheetSize size) {
    Laid there = SheetLayout.lay(laid.net(), size.stock(laid.stock().weight()), room);
    return there.fits() && there.sheets() <= sheets();
  }

  /** No mend takes more sheets than it does now; what fits none may come to several. */
  private int sheets() {
    return laid.fits() ? laid.sheets() : Integer.MAX_VALUE;
  }
}
