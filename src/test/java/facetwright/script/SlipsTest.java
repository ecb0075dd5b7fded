package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What a beginner gets wrong, one slip a script, with the words he reads: where it is, what is
 * wrong and, where the first sentence does not tell it, what to do; "…" stands for names that may
 * become more. A script without a first line of its own counts in millimetres.
 */
class SlipsTest {
  /** Words of whoever made the program, which say nothing to who uses it. */
  private static final Pattern INTERNAL =
      Pattern.compile(
          "\\b(?:null|undefined|object|exception|argument|parameter|array|string|boolean|integer"
              + "|invoke\\w*|polyglot|token|operand|identifier|statement)s?\\b",
          Pattern.CASE_INSENSITIVE);

  static Stream<Arguments> slips() throws IOException {
    try (InputStream in = SlipsTest.class.getResourceAsStream("slips.txt")) {
      String all = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return Arrays.stream(all.split("(?m)^#### "))
          .filter(part -> !part.isBlank())
          .map(
              part -> {
                int script = part.indexOf('\n') + 1;
                int told = part.indexOf("\n! ") + 1;
                return Arguments.of(
                    part.substring(0, script).strip(),
                    part.substring(script, told),
                    part.substring(told).strip());
              });
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("slips")
  void isTold(String name, String script, String told) {
    boolean isWhole = Pattern.compile("^(?:design|desing)\\(").matcher(script).find();
    String source = isWhole ? script : "design(\"T\");\n" + script;
    ScriptException e =
        catchThrowableOfType(
            ScriptException.class,
            () -> Facetwright.evaluate("slip.js", source, Map.of(), Budget.USUAL));
    assertThat(e).as("%s is no slip", name).isNotNull();
    String words =
        "! %d:%d %s\n> %s".formatted(e.line(), e.column(), e.getMessage(), e.remedy()).strip();
    assertThat(words).matches(Pattern.quote(told).replace("…", "\\E.*\\Q"));
    assertThat(words).doesNotContainPattern(INTERNAL);
  }
}
