package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.workbench.Places.Place;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.css.CssParser;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The style sheets are read without error, and every colour they name is found. */
class StyleSheetsTest {
  private final StyleWarnings warnings = new StyleWarnings();
  @TempDir private Path folder;

  @BeforeEach
  void listen() throws Exception {
    Fx.start();
    warnings.listen();
  }

  @AfterEach
  void leave() {
    warnings.leave();
  }

  @Test
  void nothingIsWarnedAboutInAnyPlace() throws Exception {
    Files.writeString(folder.resolve("state.json"), "{\"tour.seen\":\"yes\"}");
    Visit visit = Visit.start(folder, Path.of("").toAbsolutePath(), null);
    Fx.until("the design is made", () -> visit.house.desk().design().get() != null);
    for (boolean dark : new boolean[] {false, true}) {
      Fx.run(() -> visit.house.room().dark().set(dark));
      for (Place place : Place.values()) {
        Fx.run(() -> visit.house.places().now().set(place));
        Fx.pulse();
      }
      Fx.run(() -> visit.house.places().now().set(Place.TABLE));
      for (String command : new String[] {"keys", "about", "fold-script", "larger", "replace"}) {
        Fx.run(() -> visit.house.commands().named(command).run());
        Fx.pulse();
        Fx.run(() -> visit.house.pages().close());
      }
      Fx.run(() -> Fx.button(visit.house.room(), "Compare").fire());
      Fx.pulse();
    }
    Fx.run(() -> visit.house.desk().text().set("wrup()"));
    Fx.until("the fault is told", () -> visit.house.desk().fault().get() != null);
    Fx.run(() -> visit.house.quit());
    Fx.pulse();
    Fx.run(() -> Fx.button(visit.house, "Don't save").fire());
    visit.close();
    assertThat(CssParser.errorsProperty()).isEmpty();
    assertThat(warnings.said()).isEmpty();
  }
}
