package facetwright.workbench.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class EntryTest {
  private static Entry entry(String name, String script) {
    return Entry.of(Path.of(name), false, script);
  }

  @Test
  void entriesAreFoundByBeginningsOfWordsAndByTags() {
    Entry lantern =
        entry(
            "harbour.js",
            "/*\n * tags: lantern, walk\n * notes: Plain card.\n */\ndesign(\"Big light\", {});");
    assertThat(lantern.title()).isEqualTo("Big light");
    assertThat(lantern.matches("LIGHT lan", List.of())).isTrue();
    assertThat(lantern.matches("harb plain", List.of("walk"))).isTrue();
    assertThat(lantern.matches("", List.of("box"))).isFalse();
    assertThat(lantern.matches("ight", List.of())).isFalse();
    assertThat(lantern.matches("  ", List.of())).isTrue();
    assertThat(entry("nameless.js", "x").title()).isEqualTo("nameless.js");
  }
}
