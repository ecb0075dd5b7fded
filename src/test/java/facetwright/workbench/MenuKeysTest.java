package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.workbench.command.Command;
import facetwright.workbench.command.CommandBar;
import java.nio.file.Path;
import javafx.scene.control.Menu;
import javafx.scene.input.KeyCode;
import javafx.scene.robot.Robot;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

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

  @Test
  void noTwoMenusHaveOneLetter() {
    assertThat(java.util.Arrays.stream(Command.In.values()).map(i -> i.title().charAt(0)))
        .doesNotHaveDuplicates();
  }
}
