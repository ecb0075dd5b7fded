package facetwright.workbench.card;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.workbench.Fx;
import javafx.event.Event;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Keys with Ctrl, Alt or Meta belong to commands; what a keyboard writes with AltGr is written. */
class LettersTest extends CardRoom {
  private static KeyEvent typed(String character, String with) {
    return new KeyEvent(
        KeyEvent.KEY_TYPED,
        character,
        "",
        KeyCode.UNDEFINED,
        with.contains("Shift"),
        with.contains("Ctrl"),
        with.contains("Alt"),
        with.contains("Meta"));
  }

  private void press(KeyCode code, String character, String with) throws Exception {
    Fx.run(
        () -> {
          Event.fireEvent(
              area,
              new KeyEvent(
                  KeyEvent.KEY_PRESSED,
                  "",
                  "",
                  code,
                  with.contains("Shift"),
                  with.contains("Ctrl"),
                  with.contains("Alt"),
                  with.contains("Meta")));
          Event.fireEvent(area, typed(character, with));
        });
  }

  @ParameterizedTest
  @ValueSource(strings = {"Alt", "Meta", "Ctrl Alt", "Ctrl Alt Shift", "Alt Shift", "Alt Meta"})
  void noLetterIsWrittenWithThem(String with) throws Exception {
    String before = text();
    for (char c = 'A'; c <= 'Z'; c++) {
      String letter = String.valueOf(c);
      KeyCode code = KeyCode.valueOf(letter);
      press(code, letter, with);
      press(code, letter.toLowerCase(java.util.Locale.ROOT), with);
    }
    for (char c = '0'; c <= '9'; c++) {
      press(KeyCode.valueOf("DIGIT" + c), String.valueOf(c), with);
    }
    assertThat(text()).isEqualTo(before);
  }

  /** Keys of German, French, Polish and Spanish keyboards; AltGr is told as Ctrl and Alt or not. */
  @ParameterizedTest
  @CsvSource({
    "Q, @",
    "E, €",
    "DIGIT7, {",
    "DIGIT0, }",
    "MINUS, '\\'",
    "Z, ż",
    "A, ą",
    "DIGIT8, [",
    "N, ~",
  })
  void whatAKeyWritesWithAltGrIsWritten(KeyCode code, String character) {
    assertThat(Letters.isWritten(typed(character, "Ctrl Alt"), code, false)).isTrue();
    assertThat(Letters.isWritten(typed(character, ""), code, false)).isTrue();
  }

  @Test
  void aLetterMadeWithADeadKeyIsWritten() throws Exception {
    Fx.run(() -> area.moveTo(0));
    press(KeyCode.DEAD_ACUTE, "", "");
    press(KeyCode.E, "é", "");
    press(KeyCode.Q, "@", "Ctrl Alt");
    assertThat(text()).startsWith("é@design");
  }

  @Test
  void theOptionKeyWritesOnAMacOnly() {
    assertThat(Letters.isWritten(typed("[", "Alt"), KeyCode.DIGIT5, true)).isTrue();
    assertThat(Letters.isWritten(typed("[", "Alt"), KeyCode.DIGIT5, false)).isFalse();
    assertThat(Letters.isWritten(typed("v", "Meta"), KeyCode.V, true)).isFalse();
  }
}
