package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

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
 * Designs that put together what is seldom put together, or what can't be: each refused in words,
 * or with the verdict that is true of it, the errors and warnings there are, and what mends the
 * first of them.
 */
class OddDesignsTest {
  private static final String NONE = "-";

  static Stream<Arguments> designs() throws IOException {
    try (InputStream in = OddDesignsTest.class.getResourceAsStream("odd-designs.txt")) {
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
  void isTold(String name, String start, String rules, String mends, String script)
      throws ScriptException {
    if (start.equals("Refused")) {
      assertThatThrownBy(() -> Facetwright.evaluate("odd.js", script, Map.of(), Budget.USUAL))
          .isInstanceOf(ScriptException.class)
          .hasMessageContaining(mends);
      return;
    }
    Design design = Facetwright.evaluate("odd.js", script, Map.of(), Budget.USUAL);
    String verdict =
        Verdict.of(design.laid(), design.folded(), design.findings()).text(design.unit());
    assertThat(verdict).startsWith(start);
    assertThat(verdict.startsWith("Closes if")).isEqualTo(start.startsWith("Closes if"));
    List<Finding> told =
        design.findings().stream().filter(f -> f.severity() != Finding.Severity.NOTE).toList();
    assertThat(told.stream().map(Finding::rule).collect(Collectors.joining(" ")))
        .as(verdict)
        .isEqualTo(rules.equals(NONE) ? "" : rules);
    assertThat(told.isEmpty() ? NONE : told.getFirst().fix()).isEqualTo(mends);
    assertThat(verdict.startsWith("Closes")).as(verdict).isEqualTo(design.isSound());
  }
}
