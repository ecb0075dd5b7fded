package facetwright.export.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.TreeMap;

/**
 * A folder that papers are put into, and what is known of the files there: beside them lies a small
 * record of what was written for which design. What a design wrote itself and nobody changed since
 * may be replaced by its newer papers; everything else only when the user says so, and what is
 * replaced then is kept in a folder beside them.
 */
public final class PaperFolder {
  /** The name of the record. */
  public static final String RECORD = ".facetwright-papers";

  /** Where others' files lie that were replaced, each until another of its name is. */
  public static final String KEPT = "replaced-files";

  private static final String HEAD =
      "# What was written here, by whose design: all else is asked about before it is replaced.\n";
  private static final long LARGEST = 1_000_000;

  private final Path folder;
  private final String design;

  /**
   * @param folder need not be there yet
   * @param title of the design
   * @param script what its script is called: designs of one title may be different ones
   */
  public PaperFolder(Path folder, String title, String script) {
    this.folder = folder;
    this.design = digest((title + "\n" + script).getBytes(StandardCharsets.UTF_8));
  }

  /**
   * The names of files that would be lost: they stand there, are not what would be written anyway,
   * and are not this design's own, as it wrote them.
   */
  public List<String> others(SequencedMap<String, byte[]> files) {
    Map<String, String> known = record();
    return files.sequencedEntrySet().stream()
        .filter(file -> !isOurs(file.getKey(), file.getValue(), known))
        .map(Map.Entry::getKey)
        .toList();
  }

  private boolean isOurs(String name, byte[] next, Map<String, String> known) {
    Path place = folder.resolve(name);
    try {
      // A folder in the way is told of when the files are written.
      if (!Files.isRegularFile(place)) {
        return true;
      }
      String now = digest(Files.readAllBytes(place));
      return now.equals(digest(next)) || (design + " " + now).equals(known.get(name));
    } catch (IOException e) {
      return false;
    }
  }

  /**
   * This design's own papers of an earlier making that lie there still, as it wrote them, and are
   * none of these: they may show it as it was.
   */
  List<String> earlier(SequencedMap<String, byte[]> files) {
    List<String> left = new ArrayList<>();
    record()
        .forEach(
            (name, whose) -> {
              if (!files.containsKey(name) && whose.equals(design + " " + onDisk(name))) {
                left.add(name);
              }
            });
    return left;
  }

  /** Tells of papers left from an earlier making, in a sentence; empty where there are none. */
  public String ofEarlier(SequencedMap<String, byte[]> files) {
    List<String> left = earlier(files);
    return left.isEmpty()
        ? ""
        : "From an earlier making, not made anew, and maybe of another shape: "
            + String.join(", ", left)
            + ".";
  }

  private String onDisk(String name) {
    try {
      Path place = folder.resolve(name);
      return Files.isRegularFile(place) ? digest(Files.readAllBytes(place)) : "";
    } catch (IOException e) {
      return "";
    }
  }

  /**
   * Writes the files, all of them or none, and remembers them as this design's. {@link #others}
   * that they replace are kept first.
   *
   * @return the folder where those others are kept; empty where there were none
   * @throws ExportException when nothing was written, saying why
   */
  public Optional<Path> write(SequencedMap<String, byte[]> files) {
    Optional<Path> kept = keep(folder, others(files));
    Map<String, String> known = record();
    files.forEach((name, bytes) -> known.put(name, design + " " + digest(bytes)));
    StringBuilder text = new StringBuilder(HEAD);
    known.forEach((name, whose) -> text.append(whose).append(' ').append(name).append('\n'));
    SequencedMap<String, byte[]> all = new LinkedHashMap<>(files);
    all.put(RECORD, text.toString().getBytes(StandardCharsets.UTF_8));
    WholeFiles.write(folder, all);
    return kept;
  }

  /**
   * Keeps files that are to be replaced in a folder beside them.
   *
   * @param names of files in the folder
   * @return where they are kept; empty where there are none
   * @throws ExportException when nothing was kept, saying why
   */
  public static Optional<Path> keep(Path folder, List<String> names) {
    if (names.isEmpty()) {
      return Optional.empty();
    }
    SequencedMap<String, byte[]> old = new LinkedHashMap<>();
    for (String name : names) {
      try {
        old.put(name, Files.readAllBytes(folder.resolve(name)));
      } catch (IOException e) {
        throw new ExportException(
            name
                + " in "
                + folder
                + " can't be read, so it can't be kept, and is not replaced. Nothing was written.",
            e);
      }
    }
    Path kept = folder.resolve(KEPT);
    WholeFiles.write(kept, old);
    return Optional.of(kept);
  }

  /** Design and contents by name; a record that can't be read knows nothing. */
  private Map<String, String> record() {
    Map<String, String> known = new TreeMap<>();
    Path place = folder.resolve(RECORD);
    try {
      if (Files.isRegularFile(place) && Files.size(place) <= LARGEST) {
        for (String line : Files.readAllLines(place)) {
          String[] words = line.split(" ", 3);
          if (words.length == 3 && !line.startsWith("#")) {
            known.put(words[2], words[0] + " " + words[1]);
          }
        }
      }
    } catch (IOException e) {
      known.clear();
    }
    return known;
  }

  private static String digest(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      // Every Java has it.
      throw new IllegalStateException(e);
    }
  }
}
