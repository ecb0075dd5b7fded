package facetwright.workbench.file;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A script in a folder, and what sittings over it leave there. */
abstract class InFolder {
  static final String BEFORE = "design(\"Before\");\n";
  static final String AFTER = "design(\"After\");\n// \"quotes\", \\ and ü\n";

  @TempDir Path folder;
  Path unsaved;
  Path file;

  @BeforeEach
  void aFile() throws Exception {
    unsaved = folder.resolve("state").resolve("unsaved");
    file = Files.writeString(folder.resolve("mine.js"), BEFORE);
  }

  Sitting sit() {
    return new Sitting(folder.resolve("state"), folder.resolve("library"));
  }

  /** What a program that is killed leaves: its files, but no lock on them. */
  void leaveBehind(Kept kept, int number) throws Exception {
    Files.createDirectories(unsaved);
    Files.writeString(unsaved.resolve("unsaved-" + number + ".lock"), "");
    Files.writeString(unsaved.resolve("unsaved-" + number + ".json"), kept.json());
  }

  List<Path> files() throws Exception {
    try (Stream<Path> all = Files.list(unsaved)) {
      return all.toList();
    }
  }

  /** Another program that keeps a text. */
  Process start(String text) throws Exception {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            System.getProperty("java.class.path"),
            KeepingProgram.class.getName(),
            unsaved.toString(),
            text)
        .start();
  }
}
