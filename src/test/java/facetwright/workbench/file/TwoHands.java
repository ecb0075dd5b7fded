package facetwright.workbench.file;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A script that two hands write: what sits over it, and what comes from outside. */
abstract class TwoHands {
  static final String FIRST = "design(\"First\");\n";
  static final String MINE = "design(\"Mine\");\n";
  static final String THEIRS = "design(\"Theirs\");\n";
  static final Map<String, String> TURNED = Map.of("side", "34.5", "wall", "61");

  @TempDir Path folder;
  Path file;
  Sitting now;

  @BeforeEach
  void sitDown() throws Exception {
    file = Files.writeString(folder.resolve("d.js"), FIRST);
    now = sit();
    now.filing.open(file);
  }

  Sitting sit() {
    return new Sitting(folder.resolve("state"), folder.resolve("library"));
  }

  void writeTheirs() throws Exception {
    Files.writeString(file, THEIRS, StandardCharsets.UTF_8);
    now.filing.lookOutside();
  }
}
