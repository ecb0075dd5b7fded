package facetwright.papers.handout;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.language.Language;
import facetwright.papers.order.Order;
import facetwright.script.Facetwright;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A learner is told what the verdict comes to; a reader of English what the rules find, too. */
class JudgementTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Closes: every join | Es schließt sich: Alle Verbindungen |"
            + " box({ width: 40, depth: 40, height: 30 }).unfold();",
        "Can't be made as meant | So lässt es sich nicht anfertigen: |"
            + " must(false, \"never\"); box({ width: 40, depth: 40, height: 30 }).unfold();",
        "Closes: it has no joins | Es schließt sich: Es hat keine Verbindungen |"
            + " panel(\"card\", { width: 60, height: 40 });",
      })
  void itIsToldByItsForm(String english, String german, String lines) throws Exception {
    Design d =
        Facetwright.evaluate(
            "test.js", "design(\"Test\");\nsheet(\"A4\");\n" + lines, Map.of(), Budget.USUAL);
    Judgement judgement = Judgement.of(d.laid(), d.folded(), d.findings());
    Order order = Order.usual(d.unit());
    assertThat(judgement.text(order.telling())).startsWith(english);
    assertThat(judgement.text(order.telling())).isEqualTo(judgement.text(d.unit()));
    assertThat(judgement.text(order.in(Language.GERMAN).telling())).startsWith(german);
  }
}
