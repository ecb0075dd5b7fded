package facetwright.net.sheet;

import facetwright.measure.Unit;
import java.util.List;
import java.util.stream.Stream;

/**
 * Sheets that are taken where nobody says which, and those to choose from; common practice, no
 * source.
 */
public final class CommonSheets {
  private CommonSheets() {}

  /** What a printer takes: Letter for designs in inches, else A4. */
  public static SheetSize page(Unit unit) {
    return SheetSizes.named(unit.isMetric() ? "A4" : "Letter");
  }

  /** Card for a net, smallest first: the first that holds it is taken. */
  public static List<SheetSize> forNets(Unit unit) {
    return unit.isMetric() ? named("A4", "A3", "A2") : named("Letter", "Tabloid");
  }

  /** The same of the usual weight. */
  public static List<Stock> cards(Unit unit) {
    return forNets(unit).stream().map(s -> s.stock(Stock.USUAL_WEIGHT)).toList();
  }

  /** Decorative paper for layers, the usual sheet first, then ever larger ones. */
  public static List<SheetSize> forLayers(Unit unit) {
    return unit.isMetric()
        ? named("A4", "A3", "A2", "A1", "A0")
        : named("12x12", "12x18", "Arch C", "Arch D", "Arch E");
  }

  /** What makers have at hand, in millimetres and in inches. */
  public static List<SheetSize> atHand() {
    return named(
        "A5", "A4", "A3", "A2", "Letter", "Legal", "Tabloid", "12x12", "8x8", "6x6", "5x7", "12x18",
        "13x19");
  }

  private static List<SheetSize> named(String... names) {
    return Stream.of(names).map(SheetSizes::named).toList();
  }
}
