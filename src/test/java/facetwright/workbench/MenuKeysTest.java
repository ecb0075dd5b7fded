package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.workbench.command.Command;
import facetwright.workbench.command.CommandBar;
import java.nio.file.Path;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.scene.control.Menu;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.robot.Robot;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Alt and its first letter open a menu, wherever one writes. */
class MenuKeysTest {
  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource(Command.In.class)
  void altAndTheFirstLetterOpenAMenuFromTheScript(Command.In in) throws Exception {
    Visit visit =
        Visit.at(
            folder,
            "card.js",
            "design(\"Card\");\nprism({ sides: 4, side: 20, height: 20 }).unfold();\n");
    try {
      KeyCode letter = KeyCode.valueOf(in.title().substring(0, 1));
      String before = Fx.get(() -> visit.house.desk().text().get());
      Fx.run(
          () -> {
            visit.house.room().card().area().requestFocus();
            Robot robot = new Robot();
            robot.keyPress(KeyCode.ALT);
            robot.keyPress(letter);
            robot.keyRelease(letter);
            robot.keyRelease(KeyCode.ALT);
          });
      CommandBar bar = Fx.get(() -> (CommandBar) visit.house.lookup(".command-bar"));
      Menu menu =
          bar.getMenus().stream()
              .filter(m -> m.getText().replace("_", "").equals(in.title()))
              .findFirst()
              .orElseThrow();
      Fx.until(in.title() + " is open", menu::isShowing);
      assertThat(Fx.get(() -> visit.house.desk().text().get())).isEqualTo(before);
      Fx.run(menu::hide);
    } finally {
      visit.close();
    }
  }

  /**
   * Alt and the letter let go in any order, one after the other, and where a system swallows the
   * press of the letter: P and R are a press and a release, A is Alt and L the letter.
   */
  @ParameterizedTest
  @ValueSource(strings = {"PA PL RL RA", "PA PL RA RL", "PA RA PL RL", "PA RA RL", "PF RF PL RL"})
  void theLetterOpensItsMenuInWhateverOrderKeysAreLetGo(String order) throws Exception {
    Visit visit =
        Visit.at(
            folder, "card.js", "design(\"Card\");\npanel(\"a\", { width: 20, height: 20 });\n");
    try {
      CommandBar bar = Fx.get(() -> (CommandBar) visit.house.lookup(".command-bar"));
      for (Menu menu : bar.getMenus()) {
        KeyCode letter = KeyCode.valueOf(menu.getText().substring(1, 2));
        String before = visit.text();
        Fx.run(
            () -> {
              visit.house.room().card().area().requestFocus();
              boolean alt = false;
              for (String step : order.split(" ")) {
                KeyCode code =
                    switch (step.charAt(1)) {
                      case 'A' -> KeyCode.ALT;
                      case 'F' -> KeyCode.F10;
                      default -> letter;
                    };
                boolean press = step.charAt(0) == 'P';
                alt = code == KeyCode.ALT ? press : alt;
                fire(visit, press ? KeyEvent.KEY_PRESSED : KeyEvent.KEY_RELEASED, code, "", alt);
                if (press && code == letter) {
                  fire(visit, KeyEvent.KEY_TYPED, KeyCode.UNDEFINED, letter.getChar(), alt);
                }
              }
            });
        Fx.until(menu.getText() + " is open", menu::isShowing);
        assertThat(visit.text()).isEqualTo(before);
        Fx.run(menu::hide);
      }
    } finally {
      visit.close();
    }
  }

  private static void fire(
      Visit visit, EventType<KeyEvent> type, KeyCode code, String typed, boolean alt) {
    Event.fireEvent(
        visit.house.getScene().getFocusOwner(),
        new KeyEvent(type, typed, "", code, false, false, alt, false));
  }

  @Test
  void noTwoMenusHaveOneLetter() {
    assertThat(java.util.Arrays.stream(Command.In.values()).map(i -> i.title().charAt(0)))
        .doesNotHaveDuplicates();
  }
}
