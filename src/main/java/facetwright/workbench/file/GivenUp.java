package facetwright.workbench.file;

import facetwright.export.file.ExportException;
import facetwright.export.file.WholeFiles;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Work that an answer gave up, the latest {@value #MOST} of it, in a folder of its own: changes
 * that were not saved, and what was replaced in a file. Whatever was answered can so be undone.
 */
final class GivenUp {
  static final int MOST = 20;

  private static final String BEGIN = "given-up-";
  private static final String END = ".json";
  private static final long LARGEST = 8_000_000;

  private final Path folder;

  /**
   * One piece of work given up.
   *
   * @param place the file that holds it
   */
  public record Piece(Path place, Kept kept) {}

  /**
   * @param folder made where it is missing, when something is given up
   */
  GivenUp(Path folder) {
    this.folder = folder;
  }

  /**
   * Puts work here.
   *
   * @return why it is not safe on disk; empty where it is
   */
  Optional<String> put(Kept kept) {
    try {
      List<Path> before = pieces();
      int number = before.isEmpty() ? 1 : number(before.getLast()) + 1;
      LinkedHashMap<String, byte[]> files = new LinkedHashMap<>();
      files.put(
          String.format(Locale.ROOT, "%s%09d%s", BEGIN, number, END),
          kept.json().getBytes(StandardCharsets.UTF_8));
      WholeFiles.write(folder, files);
      for (int i = 0; i <= before.size() - MOST; i++) {
        Files.deleteIfExists(before.get(i));
      }
      return Optional.empty();
    } catch (ExportException e) {
      return Optional.of(e.getMessage());
    } catch (IOException e) {
      return Optional.of(WholeFiles.failure(folder, e).getMessage());
    }
  }

  /** What was given up last; empty where there is nothing. */
  Optional<Piece> last() {
    return all().stream().findFirst();
  }

  /** All that was given up, the latest first. */
  List<Piece> all() {
    List<Piece> all = new ArrayList<>();
    try {
      for (Path place : pieces().reversed()) {
        if (Files.size(place) < LARGEST) {
          Kept.of(Files.readString(place)).ifPresent(kept -> all.add(new Piece(place, kept)));
        }
      }
    } catch (IOException e) {
      // What was read before can be had.
      return all;
    }
    return all;
  }

  /** Takes a piece away, once it is safe elsewhere. */
  void takeAway(Piece piece) {
    try {
      Files.deleteIfExists(piece.place);
    } catch (IOException e) {
      // It is brought back once more at most.
      return;
    }
  }

  /** The files, the oldest first. */
  private List<Path> pieces() throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(f -> number(f) > 0).sorted().toList();
    }
  }

  /** Nought for a file that is none of these. */
  private static int number(Path place) {
    String name = OnDisk.name(place);
    if (!name.startsWith(BEGIN) || !name.endsWith(END)) {
      return 0;
    }
    try {
      return Integer.parseInt(name.substring(BEGIN.length(), name.length() - END.length()));
    } catch (NumberFormatException e) {
      return 0;
    }
  }
}
