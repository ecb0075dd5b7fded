package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import javafx.scene.Node;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where one is when a note that was put right has gone. */
class MendedNotesTest {
  /** Two holes, each too near to the edge of the panel that they are in. */
  private static final String TWO =
      """
      design("Two holes", { units: "mm" });
      const foot = panel("foot", { width: 64, height: 50 });
      const front = foot.attach("top", "front", { depth: 50, fold: 90 });
      front.hole({ across: 4, at: [0, 21] });
      front.hole({ across: 4, at: [20, 22] });
      """;

  @TempDir private Path folder;
  private Visit visit;

  @AfterEach
  void leave() throws Exception {
    visit.close();
  }

  private int findings() {
    return visit.house.desk().design().get().findings().size();
  }

  private Node focused() throws Exception {
    return Fx.get(() -> visit.house.getScene().getFocusOwner());
  }

  private void mend(int from, int left) throws Exception {
    Fx.run(
        () -> {
          var button = Fx.button(visit.house.room(), "Write 20 in place of " + from);
          button.requestFocus();
          button.fire();
        });
    Fx.until("it is put right", () -> findings() == left);
    Fx.pulse();
  }

  @Test
  void theNextNoteHasTheFocusAndAfterTheLastTheScript() throws Exception {
    visit = Visit.at(folder, "two.js", TWO);
    assertThat(Fx.get(this::findings)).isEqualTo(2);
    Fx.pulse();
    mend(21, 1);
    assertThat(focused()).isEqualTo(Fx.get(() -> visit.house.lookup(".findings .note")));
    mend(22, 0);
    assertThat(focused()).isEqualTo(visit.house.room().card().area());
  }
}
