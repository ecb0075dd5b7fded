package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Faults that a maker could not go on from: each says what is wrong, where, and what to do. */
class DeadEndsTest {
  private static final String HEAD =
      """
      design("Trial");
      const p = prism({ sides: 5, side: 30, height: 40 });
      const w = wrap({ columns: 6, width: 20, rows: [9, 20, 9] });
      """;

  private static ScriptException fault(String script) {
    return catchThrowableOfType(
        ScriptException.class, () -> Facetwright.evaluate("a.js", script, Map.of(), Budget.USUAL));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          w.tabs()              | 3  | a wrap has no function tabs | It is a function of a selection of cells. A wrap has columns, rows, floor, hook, window,
          w.coulmns("odd")      | 3  | a wrap has no function coulmns | Did you mean columns?
          p.columns("odd")      | 3  | a form has no function columns | It is a function of a wrap and of a selection of cells. A form has
          p.unfold().layer("top") | 12 | a part has no function layer | Put .layer before .unfold
          p.foo.bar             | 1  | there is nothing here that could have bar | See what stands before .bar
          prism({ sides: 4, side: "1 1/4 in" * 2, height: 9 }) | 1 | prism: side: what was reckoned here comes to no number (NaN); to reckon with a length in quotes, read it first: length("1 1/4 in") * 2 | Give side
          w.rows("rim").fold(-90) | 15 | which way it folds is said by sense: "mountain" or "valley" | Give
          new prism({ sides: 4 }) | 1 | what stands behind new is not made with new | Leave the word out
          throw p               | 1  | a form was thrown, as if it were an error | throw new Error(
          throw w               | 1  | a wrap was thrown, as if it were an error | throw new Error(
          throw null            | 1  | nothing was thrown, as if it were an error | throw new Error(
          import("fs")          | 1  | a script can't load "fs" | use(
          import("./lid.js").then((l) => l.make()) | 1 | a script can't load "lid.js" | use(
          eval("1")             | 1  | eval is not defined | Write the code out instead
          (0, eval)("1")        | 5  | eval is not defined | Write the code out instead
          globalThis.eval("1")  | 12 | eval is not a function | Write the code out instead
          new Function("return 1")() | 1 | a text can't be run as code | Write the code out instead
          [].map.constructor("return 1")() | 8 | a text can't be run as code | Write the code out instead
          await p               | 1  | there is nothing to await in a script | Leave the word out
          """)
  void isToldWithAWayOut(String line, int column, String message, String remedy) {
    ScriptException e = fault(HEAD + line + ";\n");
    assertThat(e.getMessage())
        .contains(message)
        .doesNotContain("native code", "null of", "this value", "[object");
    assertThat(e.remedy()).contains(remedy);
    assertThat(e.line()).as(e.getMessage()).isEqualTo(4);
    assertThat(e.column()).as(e.getMessage()).isEqualTo(column);
  }

  @ParameterizedTest
  @CsvSource({"(,1,),9000", "[,1,],9000", "+1,'','',40000"})
  void whatIsNestedTooDeeplyIsToldWhereItIs(String open, String middle, String close, int deep) {
    ScriptException e =
        fault("design('T');\nconst x = " + open.repeat(deep) + middle + close.repeat(deep) + ";");
    assertThat(e.getMessage()).startsWith("this is nested too deeply, or too long in one piece");
    assertThat(e.remedy()).contains("in parts");
    assertThat(e.line()).isEqualTo(2);
    assertThat(e.column()).isPositive();
  }

  @ParameterizedTest
  @CsvSource({"-90,90", "-45.5,45.5"})
  void aFoldBelowNothingIsMended(String typed, String mended) {
    ScriptException e =
        fault(
            "design('T');\npanel('a', { width: 40, height: 40 }).attach('top', 'b', { depth: 9,"
                + " fold: "
                + typed
                + " });");
    assertThat(e.getMessage()).contains("sense: \"mountain\" or \"valley\"");
    assertThat(e.mends()).singleElement().asString().contains("value=" + mended);
  }
}
