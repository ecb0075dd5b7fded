package facetwright.script.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HeadTest {
  @Test
  void itsLinesAreReadWithoutStars() {
    Head head = Head.of("\n/** title: Gull\r\n  * notes : a: b\n plain\n **/ design();");
    assertThat(head.lines())
        .extracting(Head.Line::text)
        .containsExactly("", "title: Gull", "notes : a: b", "plain", "");
    assertThat(head.lines())
        .extracting(Head.Line::key)
        .containsExactly("", "title", "notes", "", "");
    assertThat(head.lines().get(2).value()).isEqualTo("a: b");
    assertThat(head.lines())
        .extracting(Head.Line::isWhole)
        .containsExactly(true, false, true, true, false);
  }

  @ParameterizedTest
  @ValueSource(strings = {"/* a */", "/**/", "/* a\n * b */ x", "\t\r\n/* a\r\n\r\n*/"})
  void itsLinesAreAllOfIt(String script) {
    Head head = Head.of(script);
    assertThat(head.end()).isEqualTo(script.indexOf("*/") + 2);
    int at = 0;
    for (Head.Line line : head.lines()) {
      assertThat(line.start()).isEqualTo(at);
      at = line.end();
    }
    assertThat(at).isEqualTo(head.end());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "// a", "x /* a */", "/* open", "/*/", "\"/* a */\""})
  void isNotThere(String script) {
    assertThat(Head.of(script).end()).isZero();
    assertThat(Head.of(script).lines()).isEmpty();
  }
}
