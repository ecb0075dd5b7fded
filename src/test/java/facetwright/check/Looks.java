package facetwright.check;

import facetwright.fold.Card;
import facetwright.fold.Folding;
import facetwright.net.Laid;
import facetwright.net.Net;
import facetwright.net.SheetLayout;
import facetwright.net.SheetSizes;
import facetwright.net.Stock;
import java.util.List;

/** What the checks say about a card as it lies on an A3 sheet of 220 g/m². */
final class Looks {
  private Looks() {}

  static List<Finding> at(Card card) {
    return at(card.net(), SheetSizes.named("A3").stock(220));
  }

  static List<Finding> at(Net net, Stock stock) {
    Laid laid = SheetLayout.lay(net, stock);
    return Checks.all(laid, Folding.fold(laid));
  }

  /** As drawn, not moved on the sheet. */
  static List<Finding> asDrawn(Net net, Stock stock) {
    Laid laid = new Laid(net, stock, 1, true);
    return Checks.all(laid, Folding.fold(laid));
  }

  static List<Finding> of(String rule, List<Finding> all) {
    return all.stream().filter(f -> f.rule().equals(rule)).toList();
  }
}
