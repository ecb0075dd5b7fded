package facetwright.workbench.file;

import facetwright.export.file.ExportException;
import facetwright.export.file.WholeFiles;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What is remembered between two sittings, in one small file. A file that can't be read counts as
 * empty and is replaced; where it can't be written, nothing is remembered and nobody is bothered.
 * Several windows may share it: each writes only what it changed itself.
 */
public final class State {
  /** The file's name in the state folder. */
  public static final String FILE = "state.json";

  private static final int MOST_RECENT = 10;
  private static final String RECENT = "recent.";
  private static final long LARGEST = 200_000;

  private final Path folder;
  private Map<String, String> values;

  private State(Path folder) {
    this.folder = folder;
    this.values = onDisk(folder);
  }

  /** What the state folder remembers. */
  public static State in(Path folder) {
    return new State(folder);
  }

  /** The folder it is kept in. */
  public Path folder() {
    return folder;
  }

  public Optional<String> text(String key) {
    return Optional.ofNullable(values.get(key));
  }

  public boolean isOn(String key) {
    return "yes".equals(values.get(key));
  }

  /** A number between two bounds; empty where there is none or it lies outside. */
  public Optional<Double> number(String key, double least, double most) {
    try {
      return text(key).map(Double::valueOf).filter(n -> n >= least && n <= most);
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  /** A file or folder. */
  Optional<Path> path(String key) {
    return text(key).filter(t -> !t.isBlank()).flatMap(State::of);
  }

  /** Empty for what is no path on this system. */
  private static Optional<Path> of(String path) {
    try {
      return Optional.of(Path.of(path));
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  /** Remembers texts by key; an empty text forgets its key. */
  public void remember(Map<String, String> changes) {
    Map<String, String> next = onDisk(folder);
    changes.forEach(
        (key, value) -> {
          if (value.isEmpty()) {
            next.remove(key);
          } else {
            next.put(key, value);
          }
        });
    write(next);
  }

  public void remember(String key, String value) {
    remember(Map.of(key, value));
  }

  public void remember(String key, boolean on) {
    remember(key, on ? "yes" : "no");
  }

  /** The files worked on last, the newest first. */
  public List<Path> recent() {
    return recent(values);
  }

  /** Puts a file first among the recent ones. */
  void opened(Path file) {
    Map<String, String> next = onDisk(folder);
    List<Path> files = new ArrayList<>(recent(next));
    Path whole = file.toAbsolutePath().normalize();
    files.remove(whole);
    files.addFirst(whole);
    putRecent(next, files);
    next.put("last", whole.toString());
    write(next);
  }

  /** Leaves a file out of the recent ones. */
  void forget(Path file) {
    Map<String, String> next = onDisk(folder);
    List<Path> files = new ArrayList<>(recent(next));
    files.remove(file.toAbsolutePath().normalize());
    putRecent(next, files);
    write(next);
  }

  private static void putRecent(Map<String, String> into, List<Path> files) {
    into.keySet().removeIf(k -> k.startsWith(RECENT));
    for (int i = 0; i < Math.min(files.size(), MOST_RECENT); i++) {
      into.put(RECENT + i, files.get(i).toString());
    }
  }

  private static List<Path> recent(Map<String, String> from) {
    List<Path> files = new ArrayList<>();
    for (int i = 0; i < MOST_RECENT; i++) {
      String file = from.get(RECENT + i);
      if (file != null) {
        of(file).ifPresent(files::add);
      }
    }
    return List.copyOf(files);
  }

  private void write(Map<String, String> next) {
    values = next;
    LinkedHashMap<String, byte[]> files = new LinkedHashMap<>();
    files.put(FILE, FlatJson.write(next).getBytes(StandardCharsets.UTF_8));
    try {
      WholeFiles.write(folder, files);
    } catch (ExportException e) {
      // It lasts for this sitting only.
      return;
    }
  }

  private static Map<String, String> onDisk(Path folder) {
    Path file = folder.resolve(FILE);
    try {
      if (Files.isRegularFile(file) && Files.size(file) <= LARGEST) {
        return FlatJson.read(Files.readString(file)).map(TreeMap::new).orElseGet(TreeMap::new);
      }
    } catch (IOException e) {
      return new TreeMap<>();
    }
    return new TreeMap<>();
  }
}
