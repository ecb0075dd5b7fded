package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.language.Language;
import facetwright.workbench.Places.Place;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The language of papers is chosen beside the ruler, and is the same the next time. */
class LanguageKeptTest {
  @TempDir private Path folder;

  @Test
  void itIsRemembered() throws Exception {
    Files.writeString(folder.resolve("state.json"), "{\"tour.seen\":\"yes\"}");
    Visit visit = Visit.start(folder, Path.of("").toAbsolutePath(), null);
    House house = visit.house;
    Fx.until("the design is made", () -> house.desk().design().get() != null);
    assertThat(Fx.get(() -> house.papers().order().language().get())).isEqualTo(Language.ENGLISH);
    Fx.run(() -> house.places().now().set(Place.PAPERS));
    Fx.until("a page is shown", () -> Fx.says(house.papers(), "Page 1 of"));
    Fx.run(() -> house.papers().order().language().set(Language.GERMAN));
    Fx.until("a page is shown", () -> Fx.says(house.papers(), "Page 1 of"));
    visit.close();

    Visit again = Visit.start(folder, Path.of("").toAbsolutePath(), null);
    assertThat(Fx.get(() -> again.house.papers().order().language().get()))
        .isEqualTo(Language.GERMAN);
    again.close();
  }
}
