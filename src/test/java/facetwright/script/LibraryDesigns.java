package facetwright.script;

import facetwright.script.beside.Beside;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The designs that come with the program, as tests read them: each with the files that it uses. */
public final class LibraryDesigns {
  /** Where they lie. */
  public static final Path FOLDER = Path.of("library");

  private static final String SCRIPT = ".js";

  private LibraryDesigns() {}

  /** Their files, by name. */
  public static List<Path> files() {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.filter(f -> f.toString().endsWith(SCRIPT)).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The file of a design, such as "fog-drum". */
  public static Path file(String name) {
    return FOLDER.resolve(name + SCRIPT);
  }

  /** A design's script, below it the files that it uses. */
  public static String text(Path file) {
    try {
      return whole(Files.readString(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static String text(String name) {
    return text(file(name));
  }

  /** A script, below it the files of the library that it uses. */
  public static String whole(String script) {
    return new Beside(Optional.empty(), FOLDER).whole(script);
  }

  public static Design design(String name) throws ScriptException {
    return design(file(name));
  }

  public static Design design(Path file) throws ScriptException {
    return Facetwright.evaluate(file.getFileName().toString(), text(file), Map.of(), Budget.USUAL);
  }
}
