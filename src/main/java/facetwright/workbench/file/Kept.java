package facetwright.workbench.file;

import facetwright.workbench.desk.Work;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Unsaved work put aside.
 *
 * @param file where it is to be saved; null when it has no file yet
 * @param name what to call it when one speaks of it
 * @param base the script in the file when the changes were begun
 * @param work the script and its dials
 */
public record Kept(Path file, String name, String base, Work work) {
  /** What the keys of dials begin with. */
  static final String DIAL = "dial.";

  String json() {
    Map<String, String> values = new TreeMap<>();
    values.put("file", file == null ? "" : file.toAbsolutePath().toString());
    values.put("name", name);
    values.put("base", base);
    values.put("text", work.text());
    FlatJson.put(values, DIAL, work.dials());
    return FlatJson.write(values);
  }

  /** Reads what was kept; empty where it is anything else. */
  public static Optional<Kept> of(String json) {
    Optional<Map<String, String>> read = FlatJson.read(json);
    if (read.isEmpty() || read.get().get("text") == null) {
      return Optional.empty();
    }
    Map<String, String> values = read.get();
    Path file;
    try {
      String where = values.getOrDefault("file", "");
      file = where.isEmpty() ? null : Path.of(where);
    } catch (InvalidPathException e) {
      file = null;
    }
    return Optional.of(
        new Kept(
            file,
            values.getOrDefault("name", "a script"),
            values.getOrDefault("base", ""),
            new Work(values.get("text"), FlatJson.part(values, DIAL))));
  }
}
