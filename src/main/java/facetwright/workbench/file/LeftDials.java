package facetwright.workbench.file;

import facetwright.export.file.ExportException;
import facetwright.export.file.WholeFiles;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.desk.Work;
import facetwright.workbench.notice.Notice;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * How the dials of saved scripts were left, one small file a script, in a folder of their own. The
 * script itself stays as it was written: it says how its dials stand for everyone else.
 */
final class LeftDials {
  private static final String SCRIPT = "script";
  private static final String FILE = "file";
  private static final int NAME = 24;
  private static final long LARGEST = 200_000;

  private final Path folder;

  /**
   * How dials were left.
   *
   * @param values by name, as a person types them
   * @param isOfThis whether the script is still the one they were turned on
   */
  public record Left(Map<String, String> values, boolean isOfThis) {
    /**
     * Dials of a script that is another now may not fit it: they are turned only when asked for.
     */
    Notice question(String about, String name, Desk desk) {
      return new Notice(
          about,
          name + " was changed since you turned its dials",
          "They stand as the script says now. You left them at " + this + ".",
          List.of(
              new Notice.Choice("Turn them so", () -> desk.turnAll(values)),
              new Notice.Choice("Leave them", () -> {})));
    }

    /** Such as "side 34.5, wall 61". */
    @Override
    public String toString() {
      return values.entrySet().stream()
          .map(e -> e.getKey() + " " + e.getValue())
          .sorted()
          .collect(Collectors.joining(", "));
    }
  }

  /**
   * @param folder made where it is missing, when dials are left turned
   */
  LeftDials(Path folder) {
    this.folder = folder;
  }

  /**
   * Remembers how dials are left when work is saved.
   *
   * @return why that could not be written; empty where it was
   */
  Optional<String> leave(Path file, Work work) {
    Path place = place(file);
    try {
      if (work.dials().isEmpty()) {
        Files.deleteIfExists(place);
        return Optional.empty();
      }
      Map<String, String> values = new TreeMap<>();
      values.put(FILE, file.toString());
      values.put(SCRIPT, digest(work.text()));
      FlatJson.put(values, Kept.DIAL, work.dials());
      LinkedHashMap<String, byte[]> files = new LinkedHashMap<>();
      files.put(
          place.getFileName().toString(), FlatJson.write(values).getBytes(StandardCharsets.UTF_8));
      WholeFiles.write(folder, files);
      return Optional.empty();
    } catch (ExportException e) {
      return Optional.of(e.getMessage());
    } catch (IOException e) {
      return Optional.of(WholeFiles.failure(folder, e).getMessage());
    }
  }

  /** How the dials of a script were left; empty where none was turned. */
  Optional<Left> of(Path file, String script) {
    Path place = place(file);
    try {
      if (!Files.isRegularFile(place) || Files.size(place) > LARGEST) {
        return Optional.empty();
      }
      return FlatJson.read(Files.readString(place))
          .map(
              all ->
                  new Left(FlatJson.part(all, Kept.DIAL), digest(script).equals(all.get(SCRIPT))))
          .filter(left -> !left.values.isEmpty());
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** The dials that opening a script turns: none where it is another than they were turned on. */
  Map<String, String> own(Path file, String script) {
    return of(file, script).filter(Left::isOfThis).map(Left::values).orElse(Map.of());
  }

  private Path place(Path file) {
    String whole = file.toAbsolutePath().normalize().toString();
    return folder.resolve(digest(whole).substring(0, NAME) + ".json");
  }

  private static String digest(String text) {
    try {
      byte[] sum =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(sum);
    } catch (NoSuchAlgorithmException e) {
      // Every Java has it.
      throw new IllegalStateException(e);
    }
  }
}
