package facetwright.workbench.card;

import java.util.Locale;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** Which typed characters are written, and which belong to a command. */
final class Letters {
  /** There, the Option key, told as Alt, writes characters. */
  static final boolean IS_MAC =
      System.getProperty("os.name", "").toLowerCase(Locale.ROOT).startsWith("mac");

  private Letters() {}

  /**
   * Whether a character is to be written. Not with Ctrl, Alt or Meta; but the key AltGr, where it
   * is told as Ctrl and Alt, writes the third character of a key, which is not the key's own.
   *
   * @param typed a key event of a typed character
   * @param pressed the key that was pressed last
   */
  static boolean isWritten(KeyEvent typed, KeyCode pressed, boolean isMac) {
    boolean ctrl = typed.isControlDown();
    boolean alt = typed.isAltDown();
    if (typed.isMetaDown()) {
      return false;
    }
    if (ctrl && alt) {
      return !pressed.getChar().equalsIgnoreCase(typed.getCharacter());
    }
    return !ctrl && (!alt || isMac);
  }
}
