package facetwright.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlainTextTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          a\u0001b | a^Ab
          a\u001b[31mred | a^[[31mred
          a\u0007b | a^Gb
          a\u007fb | a^?b
          a\u009b2J | a<U+009B>2J
          a\u202eb | a<U+202E>b
          a\u2066b | a<U+2066>b
          Böllerhütte – 8 × 3 ½ | Böllerhütte – 8 × 3 ½
          עוגן | עוגן
          """)
  void aCommandToATerminalBecomesAMark(String text, String shown) {
    assertThat(PlainText.line(text)).isEqualTo(shown);
    assertThat(PlainText.lines(text)).isEqualTo(shown);
  }

  @Test
  void lineEndsAreBlanksInALineAndStayInLines() {
    assertThat(PlainText.line("a\nb\r\nc\td\u0085e")).isEqualTo("a b c d e");
    assertThat(PlainText.lines("a\nb\r\nc\td")).isEqualTo("a\nb\r\nc\td");
    assertThat(PlainText.lines("over\rwritten")).isEqualTo("over^Mwritten");
  }

  @Test
  void noControlCodeOfAnySetIsLeft() {
    for (int c = 0; c < 0x3000; c++) {
      String shown = PlainText.line("a" + (char) c + "b");
      assertThat(shown.chars())
          .as("U+%04X", c)
          .noneMatch(x -> Character.isISOControl(x) || isTurn(x));
    }
  }

  private static boolean isTurn(int c) {
    byte way = Character.getDirectionality(c);
    return way >= Character.DIRECTIONALITY_LEFT_TO_RIGHT_EMBEDDING
        && way <= Character.DIRECTIONALITY_POP_DIRECTIONAL_ISOLATE
        && way != Character.DIRECTIONALITY_RIGHT_TO_LEFT;
  }

  @Test
  void aLongMessageIsCutAndSaysByHowMuch() {
    String said = PlainText.message("x".repeat(150_000));
    assertThat(said).isEqualTo("x".repeat(500) + "… (149500 more characters)");
    assertThat(PlainText.message("x".repeat(500))).isEqualTo("x".repeat(500));
    assertThat(PlainText.message("x".repeat(499) + "😀 and more"))
        .startsWith("x".repeat(499) + "… (11 more");
  }
}
