package facetwright.cli.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The folder of designs that comes with the program. */
public final class Library {
  private Library() {}

  public static Path folder() {
    return Path.of(System.getProperty("facetwright.home", ".")).resolve("library");
  }

  public static List<Path> scripts() throws IOException {
    if (!Files.isDirectory(folder())) {
      throw new Trouble.WrongCall("the library folder is missing: " + folder());
    }
    try (Stream<Path> files = Files.list(folder())) {
      return files.filter(f -> f.toString().endsWith(".js")).sorted().toList();
    }
  }

  /** The path as a person at the prompt would type it. */
  public static Path shown(Path file) {
    Path here = Path.of("").toAbsolutePath();
    Path whole = file.toAbsolutePath().normalize();
    return whole.startsWith(here) ? here.relativize(whole) : whole;
  }
}
