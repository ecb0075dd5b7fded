package facetwright.workbench.card.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import facetwright.check.finding.Finding;
import facetwright.script.Facetwright;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import facetwright.script.scope.Scope;
import facetwright.words.Mend;
import facetwright.words.Site;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A hole or window that leaves too little card is put right by the change that is offered. */
class OpeningMendsTest {
  private static List<Finding> findings(String source) throws ScriptException {
    return Facetwright.evaluate("a.js", source, Map.of(), Budget.USUAL).findings();
  }

  private static List<Repair> repairs(String source, Site site, List<Mend> mends) {
    return Repairs.of(Scope.of(source), site, mends);
  }

  private static String script(String unit, String calls) {
    return "design(\"a\", { units: \"" + unit + "\" });\n" + calls.replace('~', '\n') + "\n";
  }

  /** A panel with a hinge and a wall on it, so that its lower side is scored. */
  private static final String FRONT =
      "const foot = panel(\"foot\", { width: %1$s, height: %2$s });~"
          + "const front = foot.attach(\"top\", \"front\", { depth: %2$s, fold: 90 });~";

  private static String front(String unit, String call) {
    String size = unit.equals("in") ? "2.5 2" : "64 50";
    return script(unit, String.format(FRONT, (Object[]) size.split(" ")) + "front" + call + ";");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\u0000',
      textBlock =
          """
          mm | .hole({ across: 4, at: [0, 21] })                 | Write 20
          mm | .hole({ across: 4, at: ["-28 mm", 0] })           | Write "-27 mm"
          mm | .hole({ across: 4.5, at: [0, -19.25] })           | Write -17.5
          mm | .hole({ across: 46 })                             | Write 40
          in | .hole({ across: 0.25, at: [0, 0.85] })            | Write 0.75
          in | .hole({ across: "1/4 in", at: [0, "-13/16 in"] }) | Write "-5/8 in"
          in | .hole({ across: "46 mm" })                        | Write "40.5 mm"
          mm | .window({ border: 2 })                            | Write 5
          in | .window({ border: 0.125 })                        | Write 0.25
          in | .window({ border: "1/8 in" })                     | Write "1/4 in"
          mm | .window({ width: 62, height: 20 })                | Write 58
          mm | .window({ width: 20, height: 20, at: [3, -12] })  | Write -10
          in | .window({ width: "2 3/8 in", height: 0.5 })       | Write "2 1/4 in"
          mm | .window({ sides: 6, across: 47 })                 | Write 46
          in | .window({ sides: 8, across: 0.5, at: [1, 0] })    | Write 0.875
          """)
  void onAPanel(String unit, String call, String label) throws ScriptException {
    isMended(front(unit, call), label);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\u0000',
      textBlock =
          """
          mm | wrap({ columns: 6, width: 20, rows: [40] }).columns("odd").rows("wall").hole({ across: 4, at: [0, 16] });           | Write 15
          mm | wrap({ columns: 6, width: 20, rows: [20, 40] }).rows("wall").window({ border: 4 });                                 | Write 5
          mm | wrap({ columns: 6, width: 20, rows: [14, 40, 14] }).rows("rim").tabs({ hole: 6 });                                  | Write 4
          in | wrap({ columns: 6, width: 1, rows: [1, 2], seam: 0.5 }).rows("wall").window({ border: 0.125 });                     | Write 0.25
          mm | prism({ sides: 6, side: 34, height: 60 }).window("side", { border: 3 }).unfold();                                   | Write 5
          mm | prism({ sides: 6, side: 34, height: 60 }).hole("side", { across: 4, at: [0, 27] }).unfold();                        | Write 23
          mm | prism({ sides: 6, side: 17, height: 30 }).hole("side", { across: 4, at: [0, 11] }).scale(2).unfold();               | Write 10.5
          mm | blank({ width: 80, height: 50 }).hole([40, 46], { across: 5 });                                                     | Write 44.5
          in | for (const x of [1, 2]) {~  blank({ width: 3, height: 2 }).hole([x, 1.8], { across: 0.25 });~}                    | Write 1.75
          """)
  void ofOtherMakings(String unit, String calls, String label) throws ScriptException {
    isMended(script(unit, calls), label);
  }

  private static void isMended(String source, String label) throws ScriptException {
    List<Finding> before = findings(source);
    Finding finding =
        before.stream().filter(f -> f.rule().matches("(hole|window)-near-.*")).findFirst().get();
    Repair repair = repairs(source, finding.site(), finding.mends()).getFirst();
    assertThat(repair.label()).startsWith(label + " in place of ");
    List<Finding> after = findings(repair.edit().in(source));
    assertThat(after).noneMatch(f -> f.message().equals(finding.message()));
    assertThat(after.stream().map(Finding::rule).distinct().toList())
        .isSubsetOf(before.stream().map(Finding::rule).distinct().toList())
        .doesNotContain(finding.rule());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\u0000',
      textBlock =
          """
          mm | panel("a", { width: 60, height: 40 }).hole({ across: 4, at: [0, 22] });                                   | Write 15
          in | panel("a", { width: 3, height: 2 }).window({ width: 1, height: 1, at: ["1 1/4 in", 0] });                 | Write "7/8 in"
          mm | panel("a", { width: 60, height: 40 }).hole({ across: 4 }).hole({ across: 4, at: [3, 0] });                | Write 7
          mm | prism({ sides: 6, side: 34, height: 60 }).hole("side", { across: 40 }).unfold();                          | Write 24
          mm | prism({ sides: 6, side: 34, height: 60 }).window("side", { width: 10, height: 10, at: [14, 0] }).unfold() | Write 7
          """)
  void whatIsOffItsPanelOrRunsIntoAnother(String unit, String calls, String label)
      throws ScriptException {
    String source = script(unit, calls);
    ScriptException fault = catchThrowableOfType(ScriptException.class, () -> findings(source));
    assertThat(fault).as("it is wrong to begin with").isNotNull();
    Repair repair = repairs(source, fault.site(), fault.mends()).getFirst();
    assertThat(repair.label()).startsWith(label + " in place of ");
    assertThat(findings(repair.edit().in(source)).stream().map(Finding::rule).toList())
        .doesNotContain("hole-near-edge", "window-near-score");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\u0000',
      textBlock =
          """
          const across = 46; front.hole({ across });
          const across = 46; front.hole({ across: across });
          front.hole({ across: 40 + 6 });
          front.hole({ across: dial("hole", 46, { from: 2, to: 50 }) });
          front.hole({ across: 4, at: [29, 21.5] });
          front.window({ width: 60, height: 48 });
          for (const y of [-21, 21]) front.hole({ across: 1, at: [0, y] });
          front.window({ corners: [[-28, -22], [28, -22], [0, 22]] });
          """)
  void nothingIsOfferedWhereNoSingleNumberDoes(String calls) throws ScriptException {
    String source = script("mm", String.format(FRONT, "64", "50") + calls);
    List<Finding> found =
        findings(source).stream().filter(f -> f.rule().matches("(hole|window)-near-.*")).toList();
    assertThat(found).isNotEmpty();
    assertThat(found).allSatisfy(f -> assertThat(repairs(source, f.site(), f.mends())).isEmpty());
  }

  @Test
  void aHoleThatIsMovedKeepsClearOfItsNeighbours() throws ScriptException {
    String source =
        script(
            "mm",
            "const a = panel(\"a\", { width: 60, height: 40 });~"
                + "a.hole({ across: 8, at: [0, 8] });~"
                + "a.hole({ across: 4, at: [0, 16] });");
    Finding finding = findings(source).getFirst();
    Repair repair = repairs(source, finding.site(), finding.mends()).getFirst();
    assertThat(repair.edit().in(source)).contains("across: 2, at: [0, 16]");
  }
}
