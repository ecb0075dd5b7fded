package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a script throws is told in its own words, at its line, with the word that does it better.
 */
class OwnThrowTest {
  private static ScriptException thrown(String lines) {
    String script = "design(\"T\");\n" + lines;
    ScriptException why =
        catchThrowableOfType(
            ScriptException.class,
            () -> Facetwright.evaluate("t.js", script, Map.of(), Budget.USUAL));
    assertThat(why).as(script).isNotNull();
    return why;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "throw new Error('too tall'); | too tall | 2",
        "throw 'too tall'; | too tall | 2",
        "throw { message: 'too tall' }; | too tall | 2",
        "throw new RangeError('too tall'); | too tall | 2",
        "throw new TypeError('x is not a constructor'); | x is not a constructor | 2",
        "throw new Error('Cannot read property x of null'); | Cannot read property x of null | 2",
        "class My extends Error {} throw new My('too tall'); | too tall | 2",
        "const h = dial('h', 9);\\nif (h > 5)\\n  throw new Error('too tall'); | too tall | 4",
        "const f = () => { throw new Error('too tall'); };\\nf(); | too tall | 2",
        "try { box({ width: -3 }); }\\n"
            + "catch (e) { throw new Error('mine: ' + e.message); } | mine: box: width: -3 mm is"
            + " too small | 3",
      })
  void inItsOwnWords(String lines, String words, int line) {
    ScriptException why = thrown(lines.replace("\\n", "\n"));
    assertThat(why.getMessage()).contains(words);
    assertThat(why.line()).isEqualTo(line);
    assertThat(why.column()).isPositive();
    assertThat(why.remedy()).contains("must(condition, \"what to do\")");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "throw null; | nothing was thrown",
        "throw 42; | 42 was thrown",
        "throw ''; | an empty text was thrown",
        "throw ['a', 'b']; | a list was thrown",
        "throw prism({ sides: 6, side: 9, height: 9 }); | a form was thrown",
        "throw new Error(); | the script throws an error that says nothing",
        "throw new Error(''); | the script throws an error that says nothing",
      })
  void withoutWords(String lines, String told) {
    ScriptException why = thrown(lines);
    assertThat(why.getMessage()).contains(told);
    assertThat(why.line()).isEqualTo(2);
    assertThat(why.remedy()).contains("throw new Error(\"too tall\")");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "Promise.reject(new Error('later')); | later",
        "(async () => { throw 'later'; })(); | later",
        "new Promise((a, b) => b('later')); | later",
        "async function f() { throw new Error('later'); } f(); | later",
      })
  void promises(String lines, String words) {
    ScriptException why = thrown(lines + "\nbox({ width: 9, depth: 9, height: 9 }).unfold();");
    assertThat(why.getMessage()).isEqualTo(words);
    assertThat(why.line()).isEqualTo(2);
  }

  @Test
  void inAFile() {
    ScriptException why =
        thrown(
            """
            const { tub } = use("tubs.js");
            tub(50);
            // ======== gathered in: tubs.js ========
            function tub(side) {
              if (side > 40) throw new Error("the tub is too wide");
            }
            """);
    assertThat(why.getMessage()).isEqualTo("the tub is too wide");
    assertThat(why.site().text()).isEqualTo("line 3 (line 6, in what is gathered in of tubs.js)");
    assertThat(why.remedy()).contains("must(condition, \"what to do\")");
  }

  @Test
  void theConsole() {
    ScriptException error = thrown("\nconsole.error('too tall');");
    assertThat(error.getMessage()).contains("a script has no console to write on: too tall");
    assertThat(error.line()).isEqualTo(3);
    assertThat(error.remedy()).contains("must(condition, \"what to do\")");
    assertThat(thrown("console.log(3);").remedy()).contains("say([\"side\", side])");
  }

  /** What the engine can't carry out keeps its own words. */
  @Test
  void notWhatTheEngineThrows() {
    assertThat(thrown("null.x").remedy()).doesNotContain("must(");
    assertThat(thrown("const a = 1; a = 2;").remedy()).contains("Make it with let");
  }
}
