package facetwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.finding.Finding;
import facetwright.fold.Card;
import facetwright.fold.Folding;
import facetwright.fold.making.GlueOrder;
import facetwright.fold.pose.FoldedForm;
import facetwright.measure.Unit;
import facetwright.message.Message;
import facetwright.net.Net;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.Room;
import facetwright.net.sheet.SheetLayout;
import facetwright.net.sheet.SheetSizes;
import facetwright.net.sheet.Stock;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What the checks say about a card as it lies on an A3 sheet of 220 g/m². Whatever card it is, the
 * verdict does not say that it closes above an error that says it can't, and no length stands in
 * its findings as mere words.
 */
public final class Looks {
  /** Rules whose errors say that the form can't be folded. */
  private static final Set<String> FOLDED =
      Set.of(
          "gap",
          "seam-lengths",
          "short-wall",
          "panel-through-panel",
          "tab-too-big",
          "fold-flat",
          "tear");

  private static final Pattern LENGTH = Pattern.compile("\\d mm\\b");

  private Looks() {}

  public static List<Finding> at(Card card) {
    return at(card.net(), SheetSizes.named("A3").stock(220));
  }

  public static List<Finding> at(Net net, Stock stock) {
    Laid laid = SheetLayout.lay(net, stock, new Room(0, SheetLayout.USUAL_GAP));
    FoldedForm form = Folding.fold(laid);
    List<Finding> all = Checks.all(laid, GlueOrder.of(laid.net(), form));
    if (all.stream()
        .anyMatch(f -> f.severity() == Finding.Severity.ERROR && FOLDED.contains(f.rule()))) {
      assertThat(
              Verdict.of(laid, form, Checks.all(laid, GlueOrder.of(laid.net(), form)))
                  .text(Unit.MM))
          .doesNotStartWith("Closes");
    }
    all.forEach(Looks::carriesItsLengths);
    return all;
  }

  private static void carriesItsLengths(Finding finding) {
    for (Message told : List.of(finding.what(), finding.remedy())) {
      assertThat(told.parts())
          .noneMatch(
              p -> p instanceof Message.Literal(String words) && LENGTH.matcher(words).find());
    }
  }

  /** As drawn, not moved on the sheet. */
  static List<Finding> asDrawn(Net net, Stock stock) {
    Laid laid = new Laid(net, stock, 1, true, new Room(0, 0));
    return Checks.all(laid, GlueOrder.of(laid.net(), Folding.fold(laid)));
  }

  public static List<Finding> of(String rule, List<Finding> all) {
    return all.stream().filter(f -> f.rule().equals(rule)).toList();
  }
}
