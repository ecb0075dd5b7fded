package facetwright.workbench.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import javafx.beans.property.SimpleBooleanProperty;
import org.junit.jupiter.api.Test;

class CommandsTest {
  @Test
  void keysAndNamesAreNotGivenTwice() {
    Commands commands = new Commands().act("save", "Save", "Shortcut+S", "", () -> {});
    assertThatThrownBy(() -> commands.act("keep", "Keep", "Shortcut+S", "", () -> {}))
        .hasMessageContaining("S");
    assertThatThrownBy(() -> commands.act("save", "Keep", "", "", () -> {}))
        .hasMessageContaining("save");
    assertThat(commands.all()).hasSize(1);
    assertThatThrownBy(() -> commands.named("sail")).hasMessageContaining("sail");
  }

  @Test
  void versionsAreReadFromFileNames() {
    String folder = String.join(java.io.File.separator, "lib", "");
    assertThat(
            AboutPage.version(
                "jts-core", folder + "jts-core-extra-9.jar", folder + "jts-core-1.20.0.jar"))
        .isEqualTo(" 1.20.0");
    assertThat(AboutPage.version("javafx-graphics", folder + "javafx-graphics-26.0.2-linux.jar"))
        .isEqualTo(" 26.0.2");
    assertThat(AboutPage.version("none", folder + "some-1.jar")).isEmpty();
  }

  @Test
  void keysOfOnePartAreListedOnce() {
    assertThat(HeldKeys.ALL).doesNotHaveDuplicates();
    assertThat(HeldKeys.ALL.stream().map(h -> h.where() + h.keys())).doesNotHaveDuplicates();
  }

  @Test
  void tickingTurnsOnAndOff() {
    SimpleBooleanProperty dark = new SimpleBooleanProperty();
    Commands commands = new Commands().in(Command.In.VIEW).tick("dark", "Dark", "", "", dark);
    commands.named("dark").run();
    assertThat(dark.get()).isTrue();
    commands.named("dark").run();
    assertThat(dark.get()).isFalse();
  }
}
