package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import javafx.scene.control.ScrollPane;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A finding of two lines stands under two lines of dials, and none of them has to be scrolled. */
class DialsSeenTest {
  private static final String BOX =
      """
      design("Dials", { units: "mm" });
      const side = dial("side", 30, { from: 20, to: 60 });
      for (const name of ["a", "b", "c"]) dial(name, 3, { from: 1, to: 9 });
      const box = prism({ sides: 6, side, height: 40 });
      box.label("top", "Tidewell", { size: 60 }).unfold();
      sheet("A4");
      """;

  @TempDir private Path folder;

  @Test
  void whileSomethingIsFound() throws Exception {
    Visit visit = Visit.at(folder, "dials.js", BOX);
    try {
      Fx.until("its size is told", () -> Fx.says(visit.house.room(), "Made, it is"));
      for (int i = 0; i < 4; i++) {
        Fx.pulse();
      }
      assertThat(Fx.get(() -> visit.house.desk().design().get().findings())).isNotEmpty();
      ScrollPane dials =
          Fx.get(
              () ->
                  visit.house.room().lookupAll(".tray").stream()
                      .map(ScrollPane.class::cast)
                      .filter(tray -> tray.getContent().lookup(".drawer") != null)
                      .findFirst()
                      .orElseThrow());
      assertThat(Fx.get(() -> dials.getContent().getLayoutBounds().getHeight()))
          .isGreaterThan(60)
          .isLessThanOrEqualTo(Fx.get(() -> dials.getViewportBounds().getHeight()) + 0.5);
    } finally {
      visit.close();
    }
  }
}
