package facetwright.workbench.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Scripts in folders. */
public final class Scripts {
  private static final int MOST = 400;

  private Scripts() {}

  /** The scripts of a folder by name, not of folders in it; none where it can't be read. */
  public static List<Path> in(Path folder) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(f -> OnDisk.name(f).endsWith(".js") || OnDisk.name(f).endsWith(".mjs"))
          .filter(f -> !OnDisk.name(f).startsWith("."))
          .sorted()
          .limit(MOST)
          .toList();
    } catch (IOException e) {
      return List.of();
    }
  }

  /** A script's text; empty where it can't be read or is none. */
  public static Optional<String> text(Path file) {
    try {
      return Optional.of(OnDisk.read(file).text());
    } catch (OnDisk.Refused e) {
      return Optional.empty();
    }
  }
}
