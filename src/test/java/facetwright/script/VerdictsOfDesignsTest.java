package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.Verdict;
import facetwright.check.finding.Finding;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Small designs that close, that close by a hair or a bend, and that can't close: each with the
 * verdict that is true of it, the errors there are, and the number or word that tells what mends
 * it. A design of no error is sound, one of any is not.
 */
class VerdictsOfDesignsTest {
  private static final String NONE = "-";

  static Stream<Arguments> designs() throws IOException {
    try (InputStream in = VerdictsOfDesignsTest.class.getResourceAsStream("verdicts.txt")) {
      String all = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return Arrays.stream(all.split("(?m)^#### "))
          .filter(part -> !part.isBlank())
          .map(
              part -> {
                String[] head = part.lines().findFirst().orElseThrow().split(" \\| ");
                String script = part.substring(part.indexOf('\n') + 1);
                return Arguments.of(head[0], head[1], head[2], head[3], script);
              });
    }
  }

  @ParameterizedTest(name = "{0}: {1}")
  @MethodSource("designs")
  void isTold(String name, String start, String rules, String key, String script)
      throws ScriptException {
    Design design = Facetwright.evaluate("design.js", script, Map.of(), Budget.USUAL);
    String verdict =
        Verdict.of(design.laid(), design.folded(), design.findings()).text(design.unit());
    assertThat(verdict).startsWith(start);
    assertThat(verdict.startsWith("Closes if")).isEqualTo(start.startsWith("Closes if"));
    List<Finding> errors =
        design.findings().stream().filter(f -> f.severity() == Finding.Severity.ERROR).toList();
    assertThat(errors.stream().map(Finding::rule).collect(Collectors.joining(" ")))
        .as(verdict)
        .isEqualTo(rules.equals(NONE) ? "" : rules);
    assertThat(design.isSound()).isEqualTo(errors.isEmpty());
    if (!key.equals(NONE)) {
      String told = errors.stream().map(f -> f.message() + f.fix()).collect(Collectors.joining());
      assertThat(verdict + told).contains(key);
    }
  }
}
