package facetwright.workbench.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is said to ship is what the build takes along. */
class ShippedTest {
  /** Written by the build before the tests: the files a running program needs. */
  private static final Path WHAT_SHIPS = Path.of("target/what-ships");

  private static List<String> named() {
    return Shipped.all().stream().map(s -> s.name() + " " + s.version()).toList();
  }

  /** A library lies in its folder, by name and version; several files of it are one. */
  @Test
  void theListIsTheClassPath() throws IOException {
    assertThat(WHAT_SHIPS).as("mvn process-test-resources writes it").exists();
    List<String> taken =
        Arrays.stream(Files.readString(WHAT_SHIPS).strip().split(File.pathSeparator))
            .map(file -> Path.of(file).getParent())
            .map(folder -> folder.getParent().getFileName() + " " + folder.getFileName())
            .distinct()
            .toList();
    assertThat(named())
        .as("scripts/docs writes it anew")
        .containsExactlyInAnyOrderElementsOf(taken);
  }

  @Test
  void theDocsTellTheSame() throws IOException {
    List<String> rows =
        Files.readAllLines(Path.of("docs/licences.md")).stream()
            .filter(line -> line.startsWith("| "))
            .skip(1)
            .map(line -> line.substring(2).split(" \\| "))
            .map(cells -> String.join("\t", cells[0], cells[1], cells[2]))
            .toList();
    assertThat(rows)
        .as("scripts/docs writes them anew")
        .isEqualTo(
            Shipped.all().stream()
                .map(s -> String.join("\t", s.name(), s.version(), s.licences()))
                .toList());
  }

  @Test
  void thePageNamesEach() {
    assertThat(String.join(", ", Shipped.byLicences().values()).split(", "))
        .containsExactlyInAnyOrderElementsOf(named());
  }
}
