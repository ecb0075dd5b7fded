package facetwright.workbench.key;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyCombination.Modifier;

/** How strokes of keys are written in the table, and how they are printed. */
final class Stroke {
  /** Shift does not matter. */
  private static final String ANY = "Any";

  private static final Map<String, Modifier> HELD =
      Map.of(
          "Shift",
          KeyCombination.SHIFT_DOWN,
          ANY,
          KeyCombination.SHIFT_ANY,
          "Alt",
          KeyCombination.ALT_DOWN,
          "Shortcut",
          KeyCombination.SHORTCUT_DOWN);

  /** Keys that say more by a word than by their sign, or the other way round. */
  private static final Map<KeyCode, String> PRINTED =
      Map.ofEntries(
          Map.entry(KeyCode.ENTER, "Enter"),
          Map.entry(KeyCode.ESCAPE, "Esc"),
          Map.entry(KeyCode.SPACE, "Space"),
          Map.entry(KeyCode.TAB, "Tab"),
          Map.entry(KeyCode.LEFT, "Left"),
          Map.entry(KeyCode.RIGHT, "Right"),
          Map.entry(KeyCode.UP, "Up"),
          Map.entry(KeyCode.DOWN, "Down"),
          Map.entry(KeyCode.PAGE_UP, "Page up"),
          Map.entry(KeyCode.PAGE_DOWN, "Page down"),
          Map.entry(KeyCode.PLUS, "+"),
          Map.entry(KeyCode.EQUALS, "="),
          Map.entry(KeyCode.MINUS, "-"),
          Map.entry(KeyCode.SLASH, "/"));

  private Stroke() {}

  /**
   * @param keys such as {@code Shortcut+Shift+S}; several have blanks between them
   */
  static List<KeyCodeCombination> all(String keys) {
    List<KeyCodeCombination> strokes = new ArrayList<>();
    for (String stroke : keys.isEmpty() ? new String[0] : keys.split(" ")) {
      List<String> parts = List.of(stroke.split("\\+"));
      strokes.add(
          new KeyCodeCombination(
              KeyCode.valueOf(parts.getLast()),
              parts.subList(0, parts.size() - 1).stream().map(HELD::get).toArray(Modifier[]::new)));
    }
    return List.copyOf(strokes);
  }

  /** As it is printed on the keys, what is held before what is pressed. */
  static String printed(KeyCodeCombination stroke) {
    // A digit has a sign of its own, so that what stands before it is what is held.
    String held =
        new KeyCodeCombination(
                KeyCode.DIGIT1,
                stroke.getShift(),
                stroke.getControl(),
                stroke.getAlt(),
                stroke.getMeta(),
                stroke.getShortcut())
            .getDisplayText();
    String pressed =
        PRINTED.getOrDefault(stroke.getCode(), stroke.getCode().getName().replace("Digit ", ""));
    return held.substring(0, held.length() - 1) + pressed;
  }
}
