package facetwright.workbench.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import facetwright.workbench.key.Key;
import javafx.beans.property.SimpleBooleanProperty;
import org.junit.jupiter.api.Test;

class CommandsTest {
  @Test
  void keysAndNamesAreNotGivenTwice() {
    Commands commands = new Commands().act("save", "Save", Key.SAVE, "", () -> {});
    assertThatThrownBy(() -> commands.act("keep", "Keep", Key.SAVE, "", () -> {}))
        .hasMessageContaining("S");
    assertThatThrownBy(() -> commands.act("save", "Keep", null, "", () -> {}))
        .hasMessageContaining("save");
    assertThat(commands.all()).hasSize(1);
    assertThatThrownBy(() -> commands.named("sail")).hasMessageContaining("sail");
  }

  @Test
  void tickingTurnsOnAndOff() {
    SimpleBooleanProperty dark = new SimpleBooleanProperty();
    Commands commands = new Commands().in(Command.In.VIEW).tick("dark", "Dark", null, "", dark);
    commands.named("dark").run();
    assertThat(dark.get()).isTrue();
    commands.named("dark").run();
    assertThat(dark.get()).isFalse();
  }
}
