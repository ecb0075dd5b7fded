package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import facetwright.check.finding.Finding;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is said twice of the same is told at the second, with the place of the first. */
class SaidTwiceTest {
  private static final String BOX = "box({ width: 50, depth: 40, height: 30 })";

  private static List<Finding> twice(String lines) throws ScriptException {
    return Facetwright.evaluate("t.js", "design(\"T\");\n" + lines, Map.of(), Budget.USUAL)
        .findings()
        .stream()
        .filter(f -> f.rule().equals("said-twice"))
        .toList();
  }

  private static String made(String line) {
    return line.replace("BOX", BOX)
        .replace("WRAP", "const w = wrap({ columns: 6, width: 30, rows: [12, 60, 12] })")
        .replace("PANEL", "const p = panel(\"p\", { width: 60, height: 50 })")
        .replace(
            "BLANK",
            "const b = blank({ width: 90, height: 60 }).score({ from: \"left\", at: 30 })");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "sheet(\"A3\"); | sheet(\"A4\"); | sheet() was called twice, first in line 2",
        "aim({ height: 30 }); | aim({ height: 40 }); | aim() was called twice, first in line 2",
        "dial(\"a\", 3); | dial(\"a\", 4); | two dials are called \"a\", the first in" + " line 2",
        "BOX.unfold({ part: \"a\" }); | BOX.unfold({ part: \"a\" }); | two parts are called \"a\","
            + " the first in line 2",
        "PANEL; p.part(\"a\"); | p.part(\"b\"); | this is the part \"a\" already, by line 2",
        "BOX.unfold({ part: \"a\" }).mirrored(\"b\"); | WRAP.part(\"b\"); | two parts are called"
            + " \"b\", the first in line 2",
        "WRAP; w.floor(); | w.floor(); | this wrap has a floor already, by line 2",
      })
  void refused(String first, String second, String told) {
    String script =
        "design(\"T\");\n" + made(first) + "\n" + made(second) + "\n" + made("BOX.unfold();");
    ScriptException why =
        catchThrowableOfType(
            ScriptException.class,
            () -> Facetwright.evaluate("t.js", script, Map.of(), Budget.USUAL));
    assertThat(why).as(script).isNotNull();
    assertThat(why.getMessage()).contains(told);
    assertThat(why.site().line()).isEqualTo(3);
    assertThat(why.site().column()).isPositive();
  }

  @Test
  void aSecondTitle() {
    ScriptException why =
        catchThrowableOfType(ScriptException.class, () -> twice("design(\"U\");\n"));
    assertThat(why.getMessage()).contains("design() was called twice, first in line 1");
  }

  /** Every word that takes the place of an earlier one of which nothing is left. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "const f = BOX.layer(\"top\", { paper: \"a\" }) | f.layer(\"top\", { paper: \"b\""
            + " }).unfold();",
        "const f = BOX.tab(\"top\", \"side 1\", { depth: 5 }) | f.tab(\"top\", \"side"
            + " 1\").unfold();",
        "const f = BOX.tab(\"top\", \"side 1\", { depth: 5 }) | f.hook(\"top\", \"side"
            + " 1\").unfold();",
        "const f = BOX.hinge(\"top\", \"side 1\") | f.hinge(\"top\", \"side 3\").unfold();",
        "const f = BOX.window(\"top\", { border: 8 }).backing(\"top\") | f.backing(\"top\", {"
            + " paper: \"b\" }).unfold();",
        "WRAP; w.rows(\"rim\").tabs() | w.rows(\"rim\").tabs({ bevel: 20 });",
        "WRAP; w.columns(2).rows(\"wall\").layer() | w.rows(\"wall\").layer({ paper: \"b\" });",
        "WRAP; w.rows(\"wall\").fold(30) | w.rows(\"wall\").fold(40);",
        "WRAP; w.rows(1).gusset() | w.rows(1).gusset({ point: \"out\" });",
        "WRAP; w.window(\"wall 3\", { border: 9 }).backing(\"wall 3\") | w.backing(\"wall 3\");",
        "PANEL; p.layer() | p.layer({ paper: \"b\" });",
        "PANEL; p.window({ border: 9 }).backing() | p.backing({ paper: \"b\" });",
        "BLANK; b.layer([9, 9]) | b.layer([8, 8], { paper: \"b\" });",
        "BLANK; b.name([9, 9], \"a\") | b.name([8, 8], \"b\");",
        "BLANK; b.role([9, 9], \"tab\") | b.role([8, 8], \"facet\");",
        "BLANK; b.standOn([9, 9]) | b.standOn([40, 8]);",
        "BLANK; b.fold([9, 9], [40, 9], { fold: 30 }) | b.fold([9, 9], [40, 9], { fold: 40 });",
        "BLANK.score({ from: \"bottom\", at: 20, between: [0, 30], fold: 9 }) | b.score({ from:"
            + " \"bottom\", at: 20, fold: 30 });",
      })
  void replaced(String first, String second) throws ScriptException {
    List<Finding> found = twice(made(first) + ";\n" + made(second));
    assertThat(found).as(first + second).hasSize(1);
    assertThat(found.getFirst().message()).contains("nothing is left of what line 2 says");
    assertThat(found.getFirst().site().line()).isEqualTo(3);
    assertThat(found.getFirst().site().column()).isPositive();
    assertThat(found.getFirst().fix()).isEqualTo("Take one of the two out.");
  }

  /** First for all, then for one of them: both count. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "BOX.layer(\"side\").layer(\"side 2\", { paper: \"b\" }).unfold();",
        "BOX.tab(\"top\", \"side\", { depth: 5 }).tab(\"top\", \"side 1\", { depth: 6 }).unfold();",
        "BOX.hinge(\"top\", \"side 3\").tuck(\"top\", \"side 1\").unfold();",
        "const a = BOX.layer(\"top\"); a.unfold(); a.layer(\"top\", { paper: \"b\" }).unfold();",
        "WRAP; w.rows(\"rim\").tabs(); w.columns(1).rows(\"rim\").tabs({ bevel: 20 });",
        "WRAP; w.rows(\"rim\").remove(); w.columns(1).rows(\"all\").remove();",
        "WRAP; for (let k = 1; k < 7; k++) w.columns(k).rows(\"wall\").layer({ paper: \"p\" + k"
            + " });",
        "WRAP; w.rows(\"wall\").fold(30); w.columns(1).rows(\"wall\").fold(40);",
        "BLANK; b.score({ from: \"bottom\", at: 20, fold: 9 }); b.score({ from: \"bottom\", at: 20,"
            + " between: [30, 90], fold: 30 });",
        "BLANK; b.score({ from: \"left\", at: 30 }).cut({ from: \"left\", at: 30, between: [0, 20]"
            + " });",
        "PANEL; const q = p.attach(\"top\", \"q\", { depth: 9 }); q.label(\"a\"); p.label(\"b\");",
        "const o = { a: 1, b: { a: 2 } }; BOX.layer(\"top\", { paper: \"a\" }).unfold();",
        "if (true) { function f() {} } function f() {} BOX.unfold();",
        "for (const n of [\"a\", \"b\"]) { PANEL; p.part(n); }",
      })
  void bothCount(String lines) throws ScriptException {
    assertThat(twice(made(lines))).as(lines).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "WRAP; w.rows(1).remove(); | w.columns(2).rows(1).remove(); | Remove does nothing here:"
            + " line 2",
        "PANEL; const q = p.attach(\"top\", \"q\", { depth: 9, fold: 180 }).lap(p); | q.lap(p); |"
            + " Lap does nothing here: line 2",
        "BLANK; b.waste([9, 9]); | b.waste([8, 8]); | Waste does nothing here: line 2",
        "WRAP; w.rows(\"wall\").label(\"a\"); | w.columns(1).rows(\"wall\").label(\"b\"); | Two"
            + " labels go on \"wall 1\", this one and that of line 2",
        "PANEL; p.label(\"a\"); | p.label(\"b\"); | Two labels go on \"p\", this one and that of"
            + " line 2",
        "BLANK; b.label([9, 9], \"a\"); | b.label([8, 8], \"b\"); | Two labels go on \"panel 1\","
            + " this one and that of line 2",
        "const f = BOX.label(\"top\", \"a\"); | f.label(\"top\", \"b\").unfold(); | Two labels go"
            + " on \"top\", this one and that of line 2",
        "PANEL; | p.attach(\"top\", \"p\", { depth: 9 }); | Two panels are called \"p\", this one"
            + " and that of line 2",
        "BLANK; b.name([9, 9], \"a\"); | b.name([40, 9], \"a\"); | Two panels are called \"a\","
            + " this one and that of line 2",
        "PANEL; | for (const e of [\"top\", \"left\"]) p.attach(e, \"q\", { depth: 9 }); | All that"
            + " is made here is called \"q\"",
        "BOX.unfold(); function f() {} | function f() {} | The function \"f\" is made here anew, so"
            + " that the one of line 2 is lost",
        "const f = BOX; f.layer(\"top\", { paper: \"a\", | reveal: 1, paper: \"b\" }).unfold(); |"
            + " \"paper\" stands twice in these braces, in line 2 and here",
        "WRAP; | for (const c of [\"a\", \"b\"]) w.rows(\"wall\").layer({ paper: c }); | Layer is"
            + " said here more than once of the same",
      })
  void told(String first, String second, String told) throws ScriptException {
    List<Finding> found = twice(made(first) + "\n" + made(second));
    assertThat(found).as(first + second).isNotEmpty();
    assertThat(found.getFirst().message()).startsWith(told);
    assertThat(found.getFirst().site().line()).isEqualTo(3);
    assertThat(found.getFirst().site().column()).isPositive();
    assertThat(found.getFirst().fix()).isNotEmpty();
  }

  @Test
  void inAFile() throws ScriptException {
    List<Finding> found =
        twice(
            """
            const { tub } = use("tubs.js");
            tub(50);
            // ======== gathered in: tubs.js ========
            function tub(side) {
              const form = prism({ sides: 6, side, height: 20 }).layer("top");
              return form.layer("top", { paper: "b" }).unfold({ tab: 8, tab: 9 });
            }
            """);
    assertThat(found).hasSize(2);
    assertThat(found.getFirst().site().text())
        .isEqualTo("line 3 (line 7, in what is gathered in of tubs.js)");
    assertThat(found.getLast().message())
        .startsWith("\"tab\" stands twice in these braces, in column");
  }
}
