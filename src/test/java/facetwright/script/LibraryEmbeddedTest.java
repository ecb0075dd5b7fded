package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.fold.Embedding;
import facetwright.fold.pose.Closure;
import facetwright.net.Opening;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every library design as it comes: no two facets in one place, all wound once about its inside.
 */
class LibraryEmbeddedTest {
  static Stream<Path> scripts() throws IOException {
    return LibraryDesigns.files().stream();
  }

  @ParameterizedTest
  @MethodSource("scripts")
  void isEmbedded(Path script) throws Exception {
    Design design =
        Facetwright.evaluate(
            script.getFileName().toString(), LibraryDesigns.text(script), Map.of(), Budget.USUAL);
    assertThat(design.folded().closure()).isEqualTo(Closure.CLOSES);
    Embedding embedding = new Embedding(design.net(), design.folded());
    assertThat(embedding.through()).isEmpty();
    // A card that is only folded has no inside.
    if (!design.net().joins().isEmpty()) {
      List<String> through =
          design.net().panels().stream()
              .filter(p -> p.openings().stream().anyMatch(Opening.Slot.class::isInstance))
              .map(p -> p.name() + ":")
              .toList();
      // A base that walls stand on by tongues goes on beyond them: one card with no inside.
      assertThat(embedding.notOnce())
          .allMatch(told -> through.stream().anyMatch(told.toString()::startsWith));
    }
  }
}
