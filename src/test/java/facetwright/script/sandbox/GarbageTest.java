package facetwright.script.sandbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever the text, a run comes to a result or a {@link ScriptException}. */
class GarbageTest {
  private static final Budget SMALL =
      new Budget(Duration.ofMillis(300), Duration.ofSeconds(2), 64L << 20);
  private static final List<String> PIECES =
      List.of(
          "say",
          "columns",
          "broken",
          "(",
          ")",
          "{",
          "}",
          "[",
          "]",
          ";",
          ",",
          ".",
          "=>",
          "=",
          "+",
          "-",
          "*",
          "/",
          "%",
          "?",
          ":",
          "!",
          "...",
          "`",
          "${",
          "'",
          "\"",
          "\n",
          " ",
          "const",
          "let",
          "for",
          "while",
          "if",
          "else",
          "function",
          "return",
          "throw",
          "try",
          "catch",
          "finally",
          "class",
          "new",
          "async",
          "await",
          "yield",
          "null",
          "undefined",
          "this",
          "x",
          "y",
          "0",
          "1",
          "1e9",
          "-1",
          "NaN",
          "of",
          "in",
          "Array",
          "Object",
          "Math",
          "toString",
          "constructor",
          "prototype",
          "__proto__",
          "length",
          "arguments",
          "//",
          "/*",
          "\\u{110000}",
          "\uD800",
          "é",
          "#",
          "@");

  @Provide
  Arbitrary<String> pieces() {
    return Arbitraries.of(PIECES).list().ofMaxSize(40).map(list -> String.join(" ", list));
  }

  @Provide
  Arbitrary<String> letters() {
    return Arbitraries.strings().ofMaxLength(120);
  }

  @Property(tries = 400, seed = "20261125")
  void wordsInAnyOrder(@ForAll("pieces") String source) {
    endsWell(source);
  }

  @Property(tries = 150, seed = "20261125")
  void anyLetters(@ForAll("letters") String source) {
    endsWell(source);
  }

  private static void endsWell(String source) {
    try {
      assertThat(Sandbox.run("garbage.js", source, SMALL, new Probe())).isNotNull();
    } catch (ScriptException e) {
      assertThat(e.getMessage()).isNotBlank();
      assertThat(e.line()).isBetween(0, (int) source.lines().count() + 1);
      assertThat(e.isStillRunning()).isFalse();
      assertThat(e.kind() == ScriptException.Kind.INTERNAL).isEqualTo(isHostFault(e));
    }
  }

  /** Only the probe's own {@code broken} may fail inside the program. */
  private static boolean isHostFault(ScriptException e) {
    return e.getCause() instanceof RuntimeException
        && e.kind() == ScriptException.Kind.INTERNAL
        && !(e.getCause() instanceof org.graalvm.polyglot.PolyglotException);
  }
}
