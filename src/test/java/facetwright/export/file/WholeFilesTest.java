package facetwright.export.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
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

  /** Read, write and run for each of three. */
  @Test
  void whatIsReplacedKeepsItsRights() throws IOException {
    Path one = Files.writeString(folder.resolve("one.txt"), "old");
    for (String rights : List.of("rw-------", "rwxr-xr-x", "rw-rw-rw-", "rw-r-----", "r--r--r--")) {
      Files.setPosixFilePermissions(one, PosixFilePermissions.fromString(rights));
      WholeFiles.write(folder, files("one.txt", rights));
      assertThat(one).hasContent(rights);
      assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(one)))
          .isEqualTo(rights);
    }
    assertThat(listing(folder)).containsExactly("one.txt");
  }

  /** While it is written, nobody may read it who may not read what it replaces. */
  @Test
  void whatIsWrittenBesideIsNoMoreOpenThanWhatItReplaces() throws IOException {
    Path one = Files.writeString(folder.resolve("one.txt"), "old");
    Files.setPosixFilePermissions(one, PosixFilePermissions.fromString("rw-------"));
    List<String> rights = new ArrayList<>();
    new WholeFiles(
            (file, bytes) -> {
              rights.add(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
              Files.write(file, bytes);
            })
        .put(folder, files("one.txt", "new"));
    assertThat(rights).containsExactly("rw-------");
  }

  @Test
  void aFileOfSeveralNamesKeepsThem() throws IOException {
    Path one = Files.writeString(folder.resolve("one.txt"), "old and longer");
    Path other = Files.createLink(folder.resolve("other.txt"), one);
    WholeFiles.write(folder, files("one.txt", "new", "two.txt", "2"));
    assertThat(other).hasContent("new");
    assertThat(Files.isSameFile(one, other)).isTrue();
    assertThat(listing(folder)).containsExactly("one.txt", "other.txt", "two.txt");
  }

  /** Half written in its own place, it is put back as it was, and so is all the rest. */
  @Test
  void aFileOfSeveralNamesIsPutBackWhenTheDiskIsFull() throws IOException {
    Path zero = Files.writeString(folder.resolve("zero.txt"), "nought");
    Path one = Files.writeString(folder.resolve("one.txt"), "old");
    Path other = Files.createLink(folder.resolve("other.txt"), one);
    WholeFiles full =
        new WholeFiles(
            (file, bytes) -> {
              if (file.endsWith("one.txt")) {
                Files.writeString(file, "ne");
                throw new IOException("No space left on device");
              }
              Files.write(file, bytes);
            });
    assertThatThrownBy(() -> full.put(folder, files("zero.txt", "0", "one.txt", "newer")))
        .hasMessageContaining("disk is full");
    assertThat(zero).hasContent("nought");
    assertThat(one).hasContent("old");
    assertThat(Files.isSameFile(one, other)).isTrue();
    assertThat(listing(folder)).containsExactly("one.txt", "other.txt", "zero.txt");
  }

  /** A link stays one, wherever it leads, and be it to nothing yet. */
  @Test
  void aSymbolicLinkStaysOne() throws IOException {
    Path away = Files.createDirectory(folder.resolve("away"));
    Path kept = Files.createDirectory(folder.resolve("kept"));
    Path real = Files.writeString(away.resolve("real.txt"), "old");
    Path link = Files.createSymbolicLink(kept.resolve("one.txt"), Path.of("two.txt"));
    Files.createSymbolicLink(kept.resolve("two.txt"), Path.of("..", "away", "real.txt"));
    Path loose = Files.createSymbolicLink(kept.resolve("loose.txt"), away.resolve("later.txt"));
    WholeFiles.write(kept, files("one.txt", "new", "loose.txt", "first"));
    assertThat(real).hasContent("new");
    assertThat(away.resolve("later.txt")).hasContent("first");
    assertThat(Files.isSymbolicLink(link)).isTrue();
    assertThat(Files.isSymbolicLink(loose)).isTrue();
    assertThat(listing(kept)).containsExactly("loose.txt", "one.txt", "two.txt");
    assertThat(listing(away)).containsExactly("later.txt", "real.txt");
  }

  /** Only root may give a file to somebody else; for others it stays theirs anyway. */
  @Test
  void whatIsReplacedKeepsItsOwner() throws IOException {
    Path one = Files.writeString(folder.resolve("one.txt"), "old");
    boolean root = Files.getOwner(one).getName().equals("root");
    if (root) {
      Files.setAttribute(one, "unix:uid", 54321);
      Files.setAttribute(one, "unix:gid", 54322);
    }
    Object owner = Files.getAttribute(one, "unix:uid");
    Object group = Files.getAttribute(one, "unix:gid");
    WholeFiles.write(folder, files("one.txt", "new"));
    assertThat(one).hasContent("new");
    assertThat(Files.getAttribute(one, "unix:uid")).isEqualTo(owner);
    assertThat(Files.getAttribute(one, "unix:gid")).isEqualTo(group);
  }
}
