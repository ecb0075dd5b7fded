package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.finding.Finding;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where a script says where parts go, nothing is guessed of those of which it does not. */
class UnplacedPartsTest {
  private static Design evaluate(String name, String placed) throws ScriptException {
    return Facetwright.evaluate(
        "parts.js",
        """
        design("Parts"); const box1 = box({ width: 60, depth: 40, height: 30 }).open("top").unfold({ part: "box" });
        const lid = box({ width: 62, depth: 42, height: 10 }).open("top").unfold({ part: "lid" });
        const other = box({ width: 70, depth: 33, height: 60 }).open(["base", "top"]).unfold({ part: "%s" });
        %s
        """
            .formatted(name, placed),
        Map.of(),
        Budget.USUAL);
  }

  private static List<Finding> fits(Design design) {
    return design.findings().stream().filter(f -> f.rule().equals("fit")).toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"sleeve", "inner drawer", "cap", "case"})
  void itsFitIsSaidNotToBeKnown(String name) throws ScriptException {
    assertThat(fits(evaluate(name, "lid.over(box1);")))
        .singleElement()
        .satisfies(f -> assertThat(f.severity()).isEqualTo(Finding.Severity.NOTE))
        .satisfies(f -> assertThat(f.what().toString()).contains("not told whether \"" + name))
        .satisfies(f -> assertThat(f.site().line()).isEqualTo(3));
  }

  @ParameterizedTest
  @ValueSource(strings = {"tower", "showcase piece", "ring"})
  void otherNamesSayNothing(String name) throws ScriptException {
    assertThat(fits(evaluate(name, "lid.over(box1);"))).isEmpty();
  }

  @Test
  void whatStandsBesideIsAnswered() throws ScriptException {
    assertThat(fits(evaluate("sleeve", "lid.over(box1); other.beside(box1);"))).isEmpty();
  }

  @Test
  void whatIsSaidToGoOverIsMeasured() throws ScriptException {
    assertThat(
            evaluate("sleeve", "lid.beside(box1); other.over(box1);").folded().together().nests())
        .hasSize(1);
  }
}
