package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.script.beside.Shipped;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A house with a home of its own on disk, entered as at a start. */
abstract class InHouse {
  static final String BOX =
      """
      /*
       * tags: box
       * setting: Low = tall 20
       */
      design("Plain box", { units: "mm" });
      const tall = dial("tall", 30, { from: 20, to: 40 });
      prism({ sides: 4, side: 30, height: tall }).unfold({ tab: 6 });
      """;

  @TempDir Path folder;
  Path state;
  Path home;
  Visit visit;
  final StyleWarnings warnings = new StyleWarnings();

  @BeforeEach
  void aHome() throws Exception {
    warnings.listen();
    state = folder.resolve("state");
    home = folder.resolve("home");
    Path library = Files.createDirectories(home.resolve("library"));
    for (String name : new String[] {Shipped.DEMO, "fog-drum.js"}) {
      Files.copy(Path.of("library", name), library.resolve(name));
    }
    Files.createDirectories(state);
    Files.writeString(
        state.resolve("state.json"),
        "{\"tour.seen\":\"yes\",\"folder.own\":\""
            + folder.resolve("own").toString().replace("\\", "\\\\")
            + "\"}");
  }

  @AfterEach
  void leave() throws Exception {
    if (visit != null) {
      visit.close();
    }
    warnings.leave();
    assertThat(warnings.said()).as("said of the style sheets").isEmpty();
  }

  void start(Path file) throws Exception {
    visit = Visit.start(state, home, file);
    Fx.until("the first design is made", () -> visit.house.desk().design().get() != null);
  }

  void press(String keys) throws Exception {
    Fx.run(() -> Fx.press(visit.house, keys));
  }

  void click(String button) throws Exception {
    Fx.pulse();
    Fx.run(() -> Fx.button(visit.house, button).fire());
  }

  Path box() throws Exception {
    return Files.writeString(folder.resolve("box.js"), BOX);
  }
}
