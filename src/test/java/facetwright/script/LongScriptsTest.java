package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Scripts nearly as long as may be, of nothing that takes long, are read and run. */
class LongScriptsTest {
  private static final int LONG = 198_000;

  private static final String END = "panel(\"p\", { width: 20, height: 30 });\n";

  static Stream<Named<IntFunction<String>>> lines() {
    return Stream.of(
        Named.of("constants", i -> "const width" + i + " = " + (i % 90 + 10) + ".5;\n"),
        Named.of("functions", i -> "function f" + i + "(a, b) { return a * b + " + i + "; }\n"),
        Named.of(
            "lists", i -> "const p" + i + " = [[0, " + i + "], [1, 2], [3, 4]].map(String);\n"),
        Named.of("questions", i -> "if (" + i + " < 0) { throw new Error(\"below\"); }\n"),
        Named.of("remarks", i -> "// Remark " + i + ", of no use at all.\n"));
  }

  private static String script(IntFunction<String> line, String end) {
    StringBuilder text = new StringBuilder("design(\"Long\");\n");
    for (int i = 0; text.length() < LONG; i++) {
      text.append(line.apply(i));
    }
    return text.append(end).toString();
  }

  @ParameterizedTest
  @MethodSource("lines")
  void isRun(IntFunction<String> line) throws ScriptException {
    Design design = Facetwright.evaluate("long.js", script(line, END), Map.of(), Budget.USUAL);
    assertThat(design.net().panels()).hasSize(1);
  }

  @ParameterizedTest
  @MethodSource("lines")
  void aLoopAtItsEndIsStoppedStill(IntFunction<String> line) {
    String script = script(line, "while (true) {}\n");
    assertThatThrownBy(() -> Facetwright.evaluate("long.js", script, Map.of(), Budget.USUAL))
        .isInstanceOfSatisfying(
            ScriptException.class, e -> assertThat(e.kind()).isEqualTo(ScriptException.Kind.TIME));
  }
}
