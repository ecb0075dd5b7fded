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
