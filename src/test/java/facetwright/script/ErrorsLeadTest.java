package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.Summary;
import facetwright.check.Verdict;
import facetwright.check.finding.Finding;
import facetwright.cli.json.CheckJson;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What can't be as it is meant is what the verdict begins with, though every join meets. */
class ErrorsLeadTest {
  private static Design design(String script) throws ScriptException {
    return Facetwright.evaluate(
        "design.js", "design(\"Trial\");\n" + script, Map.of(), Budget.USUAL);
  }

  private static String summary(Design design) {
    return Summary.of(design.laid(), design.folded(), design.findings(), design.unit());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          must | const side = 30; must(side > 40, "Wider."); prism({ sides: 4, side, height: 30 }).unfold(); | side > 40 does not hold
          off-sheet | sheet("A5"); prism({ sides: 4, side: 100, height: 90 }).unfold(); | the piece with "base" does not fit the A5 sheet
          fit | box({ width: 60, depth: 60, height: 10 }).open("top").unfold({ part: "lid" }).over(box({ width: 60, depth: 60, height: 30 }).open("top").unfold({ part: "base" })); | does not go over
          placing | const a = box({ width: 60, depth: 60, height: 30 }).unfold({ part: "base" }); box({ width: 30, depth: 30, height: 20 }).unfold({ part: "lid" }).over(a); | "lid" has no opening
          no-room | box({ width: 30, depth: 30, height: 30 }).unfold().light({ across: 38 }); | has no room inside
          """)
  void isTold(String rule, String script, String told) throws ScriptException {
    Design design = design(script);
    Finding error = design.findings().stream().filter(f -> f.rule().equals(rule)).findFirst().get();
    assertThat(error.severity()).isEqualTo(Finding.Severity.ERROR);
    assertThat(design.folded().canBeMade(design.net())).isTrue();
    assertThat(summary(design)).startsWith("Can't be made as meant: ").contains(told);
    JsonNode folded =
        JsonMapper.shared().readTree(CheckJson.of(design, Optional.empty())).path("folded");
    assertThat(folded.path("verdict").asString()).startsWith("Can't be made as meant: ");
    assertThat(folded.path("closed").asBoolean(true)).isFalse();
    assertThat(folded.path("cause").path("rule").asString()).isEqualTo(rule);
  }

  @Test
  void oneSheetIsToldOfOnce() throws ScriptException {
    assertThat(
            summary(design("sheet(\"A5\"); prism({ sides: 4, side: 100, height: 90 }).unfold();")))
        .containsOnlyOnce("not fit");
  }

  @Test
  void howManyAreBesideIsTold() throws ScriptException {
    String two = "must(1 > 2, \"x\"); must(2 > 3, \"y\"); must(3 > 4, \"z\");";
    assertThat(summary(design(two + "prism({ sides: 4, side: 30, height: 30 }).unfold();")))
        .startsWith("Can't be made as meant: 1 > 2 does not hold; and 2 other faults. Every join");
  }

  /** Not known and not as meant: both are told, the sure thing first. */
  @Test
  void aFormNotKnownToClose() throws ScriptException {
    Design design =
        design(
            "panel(\"a\", { width: 9, height: 9 }).attach(\"top\", \"b\", { depth: 9 });"
                + " must(false, \"x\");");
    assertThat(summary(design))
        .startsWith("Can't be made as meant: false does not hold. Nor is it known whether");
    Verdict verdict = Verdict.of(design.laid(), design.folded(), design.findings());
    assertThat(verdict.outcome()).isEqualTo(Verdict.Outcome.FAILS);
  }

  /** Where it does not close, that comes first: nothing else can be mended before. */
  @Test
  void whatDoesNotCloseIsToldFirst() throws ScriptException {
    Design design =
        design(
            "const a = panel(\"a\", { width: 40, height: 40 });"
                + "const b = a.attach(\"top\", \"b\", { depth: 30, fold: 90 });"
                + "const c = a.attach(\"right\", \"c\", { depth: 30, fold: 60 });"
                + "b.join(\"right\", c, \"left\"); must(false, \"x\");");
    List<Finding> errors =
        design.findings().stream().filter(f -> f.severity() == Finding.Severity.ERROR).toList();
    assertThat(errors).hasSizeGreaterThan(1);
    assertThat(summary(design)).startsWith("Does not close: ");
  }
}
