package facetwright.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFilesTest {
  @TempDir Path folder;

  private static SequencedMap<String, byte[]> files(String... namesAndTexts) {
    SequencedMap<String, byte[]> files = new LinkedHashMap<>();
    for (int i = 0; i < namesAndTexts.length; i += 2) {
      files.put(namesAndTexts[i], namesAndTexts[i + 1].getBytes(StandardCharsets.UTF_8));
    }
    return files;
  }

  private static List<String> listing(Path folder) throws IOException {
    try (Stream<Path> found = Files.list(folder)) {
      return found.map(p -> p.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void writesAllIntoANewFolder() throws IOException {
    Path deep = folder.resolve("a/b");
    WholeFiles.write(deep, files("one.txt", "1", "two.txt", ""));
    assertThat(listing(deep)).containsExactly("one.txt", "two.txt");
    assertThat(deep.resolve("one.txt")).hasContent("1");
  }

  @Test
  void replacesWhatStoodThere() throws IOException {
    WholeFiles.write(folder, files("one.txt", "old and longer"));
    WholeFiles.write(folder, files("one.txt", "new"));
    assertThat(folder.resolve("one.txt")).hasContent("new");
    assertThat(listing(folder)).containsExactly("one.txt");
  }

  @Test
  void failingHalfwayLeavesOldFilesAsTheyWere() throws IOException {
    Files.writeString(folder.resolve("one.txt"), "old");
    // No system takes a name of 300 letters: the second file can be written beside, not moved.
    assertThatThrownBy(
            () ->
                WholeFiles.write(
                    folder, files("one.txt", "new", "fresh.txt", "f", "n".repeat(300), "x")))
        .isInstanceOf(ExportException.class)
        .hasMessageContaining("nothing was written");
    assertThat(listing(folder)).containsExactly("one.txt");
    assertThat(folder.resolve("one.txt")).hasContent("old");
  }

  @Test
  void fullDiskIsSaidAndLeavesNothing() throws IOException {
    Files.writeString(folder.resolve("one.txt"), "old");
    WholeFiles full =
        new WholeFiles(
            (file, bytes) -> {
              Files.write(file, new byte[bytes.length / 2]);
              throw new IOException("No space left on device");
            });
    assertThatThrownBy(() -> full.put(folder, files("one.txt", "new")))
        .isInstanceOf(ExportException.class)
        .hasMessageContaining("disk is full")
        .hasMessageContaining("nothing was written");
    assertThat(listing(folder)).containsExactly("one.txt");
    assertThat(folder.resolve("one.txt")).hasContent("old");
  }

  @Test
  void takesAwayTheFolderItMadeInVain() throws IOException {
    WholeFiles full =
        new WholeFiles(
            (file, bytes) -> {
              throw new IOException("No space left on device");
            });
    assertThatThrownBy(() -> full.put(folder.resolve("x/y"), files("one.txt", "1")))
        .isInstanceOf(ExportException.class);
    assertThat(listing(folder)).isEmpty();
  }

  @Test
  void saysThatAFileIsInTheFoldersPlace() throws IOException {
    Path file = Files.writeString(folder.resolve("papers"), "mine");
    assertThatThrownBy(() -> WholeFiles.write(file, files("one.txt", "1")))
        .isInstanceOf(ExportException.class)
        .hasMessageContaining("is a file, not a folder");
    assertThat(file).hasContent("mine");
    assertThatThrownBy(() -> WholeFiles.write(file.resolve("below"), files("one.txt", "1")))
        .isInstanceOf(ExportException.class);
  }

  @Test
  void saysThatAFolderIsInAFilesPlace() throws IOException {
    Files.createDirectory(folder.resolve("two.txt"));
    assertThatThrownBy(() -> WholeFiles.write(folder, files("one.txt", "1", "two.txt", "2")))
        .isInstanceOf(ExportException.class)
        .hasMessageContaining("is a folder");
    assertThat(listing(folder)).containsExactly("two.txt");
  }

  /** Linux lets nobody, not even root, make a folder under /proc. */
  @Test
  void saysThatAFolderCannotBeWritten() {
    assertThatThrownBy(() -> WholeFiles.write(Path.of("/proc/papers"), files("one.txt", "1")))
        .isInstanceOf(ExportException.class)
        .hasMessageContaining("/proc/papers");
  }

  @Test
  void refusesNamesThatLeaveTheFolder() throws IOException {
    for (String name : List.of("../one.txt", "/one.txt", "a/b", "", "..", "a\\b")) {
      assertThatThrownBy(() -> WholeFiles.write(folder, files(name, "1")))
          .isInstanceOf(ExportException.class)
          .hasMessageContaining("file name");
    }
    assertThat(listing(folder)).isEmpty();
  }
}
