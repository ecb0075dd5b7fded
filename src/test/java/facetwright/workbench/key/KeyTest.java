package facetwright.workbench.key;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.workbench.command.Command;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The one table of keys: nothing is bound twice, and nobody reads keys beside it. */
class KeyTest {
  private static final Path WINDOW = Path.of("src/main/java/facetwright/workbench");

  /** What an inner place has for itself, though a menu has it, too. */
  private static final Set<String> BEFORE_MENUS =
      Set.of(
          "SEARCH before FIND",
          "SCRIPT_LARGER before NEARER",
          "SCRIPT_SMALLER before FARTHER",
          "SCRIPT_USUAL before WHOLE");

  /** Those that look at keys as such: letters written, Alt let go, the caret that went. */
  private static final Set<String> LOOK_AT_CODES =
      Set.of(
          "Key.java",
          "Stroke.java",
          "Keys.java",
          "Letters.java",
          "Linking.java",
          "MenuLetters.java",
          "NumberDrag.java");

  /** Every press of a key there is, with every set of keys held. */
  private static List<KeyEvent> presses() {
    List<KeyEvent> all = new ArrayList<>();
    for (KeyCode code : KeyCode.values()) {
      for (int held = 0; held < 8; held++) {
        all.add(
            new KeyEvent(
                KeyEvent.KEY_PRESSED,
                "",
                "",
                code,
                (held & 1) != 0,
                (held & 2) != 0,
                (held & 4) != 0,
                false));
      }
    }
    return all;
  }

  @Test
  void noPlaceHasAKeyTwice() {
    for (KeyEvent press : presses()) {
      Map<Where, List<Key>> bound = new EnumMap<>(Where.class);
      for (Key key : Key.values()) {
        if (key.is(press)) {
          bound.computeIfAbsent(key.where(), _ -> new ArrayList<>()).add(key);
        }
      }
      for (var place : bound.entrySet()) {
        assertThat(place.getValue()).as("%s in %s", press, place.getKey()).hasSize(1);
      }
    }
  }

  @Test
  void placesTakeFromMenusOnlyWhatIsSaid() {
    Set<String> taken = new TreeSet<>();
    for (KeyEvent press : presses()) {
      List<Key> bound = Stream.of(Key.values()).filter(k -> k.is(press)).toList();
      for (Key menu : bound) {
        bound.stream()
            .filter(k -> menu.where() == Where.MENU && k.where() != Where.MENU)
            .forEach(k -> taken.add(k + " before " + menu));
      }
    }
    assertThat(taken).isEqualTo(new TreeSet<>(BEFORE_MENUS));
  }

  @Test
  void theLettersOfMenusAreThoseOfTheirTitles() {
    assertThat(Key.MENUS.strokes().map(KeyCombination::getDisplayText))
        .containsExactlyElementsOf(
            Stream.of(Command.In.values()).map(in -> "Alt+" + in.title().charAt(0)).toList());
  }

  /** A key that nobody asks for would stand on the page of keys and do nothing. */
  @Test
  void everyKeyIsAskedForAndNobodyReadsKeysBesideTheTable() throws IOException {
    Map<String, String> sources = new TreeMap<>();
    try (Stream<Path> files = Files.walk(WINDOW)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        sources.put(file.getFileName().toString(), Files.readString(file));
      }
    }
    for (Key key : Key.values()) {
      // Menus open by their own titles.
      assertThat(key == Key.MENUS || isAskedFor(key, sources)).as(key.name()).isTrue();
    }
    assertThat(sources.keySet().stream().filter(f -> sources.get(f).contains("KeyCode")))
        .isSubsetOf(LOOK_AT_CODES);
    assertThat(sources.keySet().stream().filter(f -> sources.get(f).contains("KeyCombination")))
        .isSubsetOf(Set.of("Key.java", "Stroke.java"));
  }

  private static boolean isAskedFor(Key key, Map<String, String> sources) {
    return sources.entrySet().stream()
        .filter(file -> !file.getKey().equals("Key.java"))
        .anyMatch(
            file ->
                Stream.of("Key." + key, "case " + key)
                    .anyMatch(word -> file.getValue().matches("(?s).*\\b" + word + "\\b.*")));
  }

  @ParameterizedTest
  @EnumSource(Key.class)
  void saysWhatItDoesOnceAndPrintsItsKeys(Key key) {
    assertThat(key.does().isEmpty()).isEqualTo(key.where() == Where.MENU);
    assertThat(key.does()).doesNotEndWith(".");
    assertThat(key.text()).isNotBlank().doesNotContain("_").doesNotContain("Digit");
  }

  @Test
  void printsKeysAsTheyAreNamedOnThem() {
    assertThat(Key.REDO.text()).isEqualTo("Ctrl+Shift+Z, Ctrl+Y");
    assertThat(Key.TO_SHELF.text()).isEqualTo("Ctrl+1");
    assertThat(Key.TABLE_MOVE.text()).isEqualTo("Arrows");
    assertThat(Key.TABLE_SCORE.text()).isEqualTo("Shift+Page down, Shift+Page up");
    assertThat(Key.TURN_NUMBER.text()).isEqualTo("Ctrl+Alt+Up, Ctrl+Alt+Down");
    assertThat(Key.SCRIPT_LARGER.text()).isEqualTo("Ctrl+=");
    assertThat(Key.TABLE_NEARER.text()).isEqualTo("+");
    assertThat(Key.AWAY.tip("Close")).isEqualTo("Close (Esc)");
  }

  /** What the window says of keys comes from the table, so that it can't say what is no more. */
  @Test
  void nothingNamesAKeyByHand() throws IOException {
    Pattern text = Pattern.compile("\"((?:[^\"\\\\\\n]|\\\\.)*)\"");
    Pattern named =
        Pattern.compile(
            "\\b(Ctrl|Alt|Esc|Enter|Shift|Tab|Page (up|down)|F[1-9][0-2]?)\\b(?! and drag)");
    try (Stream<Path> files = Files.walk(WINDOW)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        if (file.getParent().endsWith("key")) {
          continue;
        }
        String code = Files.readString(file).replaceAll("(?m)^ *(\\*|/\\*\\*|//).*$", "");
        text.matcher(code)
            .results()
            .map(r -> r.group(1))
            .forEach(words -> assertThat(words).as("%s", file).doesNotContainPattern(named));
      }
    }
  }
}
