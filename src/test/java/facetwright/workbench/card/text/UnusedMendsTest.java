package facetwright.workbench.card.text;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.finding.Finding;
import facetwright.script.Facetwright;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import facetwright.script.scope.Scope;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a script makes for nothing is put right by the change of the text that its note offers. */
class UnusedMendsTest {
  private static final String HEAD =
      """
      design("Trial");
      let t = prism({ sides: 5, side: 30, height: 40 });
      const p = prism({ sides: 5, side: 30, height: 40 });
      """;
  private static final String FOOT = "\nt.unfold();\np.unfold();\n";

  private static List<Finding> unused(String script) throws ScriptException {
    return Facetwright.evaluate("a.js", script, Map.of(), Budget.USUAL).findings().stream()
        .filter(f -> f.rule().equals("unused"))
        .toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          t.open("top");              | t = t.open("top");          | Put t = before it
          p.open("top");              | p = p.open("top");          | Put p = before it, with let
          p.scale(2).open("base")     | p = p.scale(2).open("base") | Put p = before it, with let
            p\\n    .open("top");     |   p = p\\n    .open("top"); | Put p = before it, with let
          box({ width: 9, depth: 9, height: 9 }) | box({ width: 9, depth: 9, height: 9 }).unfold() | Put .unfold() behind it
          const lid = p.open("top");  | const lid = p.open("top");\\nlid.unfold(); | Write lid.unfold();
          if (1) {\\n  const lid = p.open("top")\\n} | {\\n  const lid = p.open("top")\\n  lid.unfold();\\n} | Write lid.unfold();
          """)
  void isPutRight(String line, String mended, String label) throws Exception {
    String script = HEAD + line.replace("\\n", "\n") + FOOT;
    Finding found = unused(script).getFirst();
    Repair repair = Repairs.of(Scope.of(script), found.site(), found.mends()).getFirst();
    String after = repair.edit().in(script);
    assertThat(repair.label()).isEqualTo(label);
    assertThat(after).contains(mended.replace("\\n", "\n"));
    assertThat(unused(after)).isEmpty();
  }
}
