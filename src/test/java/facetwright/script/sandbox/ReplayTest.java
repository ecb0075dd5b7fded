package facetwright.script.sandbox;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Scripts that once ran away, or might. Each file begins with {@code // expect KIND[|KIND…] LINE},
 * or {@code // expect ok}.
 */
class ReplayTest {
  private static final Path SCRIPTS = Path.of("src/test/resources/replay");
  private static final Budget SMALL =
      new Budget(Duration.ofMillis(400), Duration.ofSeconds(5), 96L << 20);

  static List<String> scripts() throws IOException {
    try (Stream<Path> files = Files.list(SCRIPTS)) {
      return files
          .map(f -> f.getFileName().toString())
          .filter(n -> n.endsWith(".js"))
          .sorted()
          .toList();
    }
  }

  @ParameterizedTest
  @MethodSource("scripts")
  void endsAsExpected(String name) {
    String source = read(name);
    String[] expected =
        source.lines().findFirst().orElseThrow().replace("// expect ", "").split(" ");
    Throwable thrown = catchThrowable(() -> Sandbox.run(name, source, SMALL, new Probe()));
    if (expected[0].equals("ok")) {
      assertThat(thrown).isNull();
      return;
    }
    assertThat(thrown)
        .isInstanceOfSatisfying(
            ScriptException.class,
            e -> {
              assertThat(e.kind().name())
                  .as(e.getMessage())
                  .isIn((Object[]) expected[0].split("\\|"));
              assertThat(e.line()).isEqualTo(Integer.parseInt(expected[1]));
              assertThat(e.isStillRunning()).isFalse();
              assertThat(e.getMessage())
                  .isNotBlank()
                  .doesNotContain("facetwright.", "java.", "oracle");
            });
  }

  private static String read(String name) {
    try {
      return Files.readString(SCRIPTS.resolve(name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
