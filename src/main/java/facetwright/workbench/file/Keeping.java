package facetwright.workbench.file;

import facetwright.export.file.ExportException;
import facetwright.export.file.WholeFiles;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The unsaved texts of windows, one a window, in a folder of their own. A window holds a lock on
 * its own as long as its program lives; what nobody holds any more was left by a program that ended
 * unexpectedly. Windows therefore never touch each other's.
 */
final class Keeping implements AutoCloseable {
  private static final String BEGIN = "unsaved-";
  private static final String LOCK = ".lock";
  private static final String TEXT = ".json";
  private static final int MOST = 1000;
  private static final long LARGEST = 8_000_000;

  private final Path folder;
  private final List<Left> found = new ArrayList<>();
  private Held own;

  /** A name in the folder, and the lock that makes it ours. */
  private record Held(String name, FileChannel channel) {}

  /** What another program left, ours until it is put away or this program ends. */
  public static final class Left {
    private final Held held;
    private final Kept kept;
    private final Instant when;

    private Left(Held held, Kept kept, Instant when) {
      this.held = held;
      this.kept = kept;
      this.when = when;
    }

    /** What it is called in the folder, as nothing else there is. */
    String name() {
      return held.name;
    }

    /** When it was kept. */
    Instant when() {
      return when;
    }

    Kept kept() {
      return kept;
    }
  }

  /**
   * @param folder made where it is missing, when something is kept
   */
  Keeping(Path folder) {
    this.folder = folder;
  }

  /**
   * Keeps work, in place of what was kept before.
   *
   * @return why it is not safe on disk; empty where it is
   */
  synchronized Optional<String> keep(Kept kept) {
    try {
      // A folder cleared while the window is open holds no lock by which it would be found.
      if (own != null && Files.notExists(folder.resolve(own.name + LOCK))) {
        close(own.channel);
        delete(folder.resolve(own.name + TEXT));
        own = null;
      }
      if (own == null) {
        own = fresh();
      }
      LinkedHashMap<String, byte[]> files = new LinkedHashMap<>();
      files.put(own.name + TEXT, kept.json().getBytes(StandardCharsets.UTF_8));
      WholeFiles.write(folder, files);
      return Optional.empty();
    } catch (ExportException e) {
      return Optional.of(e.getMessage());
    } catch (IOException | RuntimeException e) {
      return Optional.of(WholeFiles.failure(folder, e).getMessage());
    }
  }

  /** Nothing is unsaved any more. */
  synchronized void clear() {
    if (own != null) {
      delete(folder.resolve(own.name + TEXT));
    }
  }

  /**
   * What programs left that ended unexpectedly, as far as it is not put away. A program that is
   * killed may take a while to die: what it holds till then is found by a later look.
   */
  synchronized List<Left> left() {
    for (String name : names()) {
      // A lock that is opened a second time is lost when the second is closed.
      Held held = isOurs(name) ? null : hold(name, StandardOpenOption.CREATE);
      if (held != null) {
        Path text = folder.resolve(name + TEXT);
        Optional<Kept> kept = read(text);
        if (kept.isPresent()) {
          found.add(new Left(held, kept.get(), when(text)));
        } else {
          release(held);
        }
      }
    }
    return List.copyOf(found);
  }

  private boolean isOurs(String name) {
    return (own != null && own.name.equals(name))
        || found.stream().anyMatch(left -> left.held.name.equals(name));
  }

  /** Puts away what was left. */
  synchronized void putAway(Left left) {
    if (found.remove(left)) {
      release(left.held);
    }
  }

  /** Ends in order: nothing is kept. */
  @Override
  public synchronized void close() {
    if (own != null) {
      release(own);
      own = null;
    }
  }

  private Held fresh() throws IOException {
    Files.createDirectories(folder);
    for (int i = 1; i < MOST; i++) {
      String name = BEGIN + i;
      // A text that lost its lock is somebody's still.
      if (Files.exists(folder.resolve(name + TEXT))) {
        continue;
      }
      try {
        Files.createFile(folder.resolve(name + LOCK));
      } catch (FileAlreadyExistsException e) {
        continue;
      }
      Held held = hold(name, StandardOpenOption.WRITE);
      if (held != null) {
        return held;
      }
    }
    throw new IOException("too many unsaved texts in " + folder);
  }

  /** Null where another program holds it. */
  private Held hold(String name, StandardOpenOption how) {
    FileChannel channel = null;
    Path lock = folder.resolve(name + LOCK);
    try {
      channel = FileChannel.open(lock, StandardOpenOption.WRITE, how);
      // A lock on a file that was deleted meanwhile is none that others see.
      if (channel.tryLock() != null && Files.exists(lock)) {
        return new Held(name, channel);
      }
    } catch (IOException | OverlappingFileLockException e) {
      // Somebody holds it, or it has just gone.
    }
    close(channel);
    return null;
  }

  private void release(Held held) {
    delete(folder.resolve(held.name + TEXT));
    delete(folder.resolve(held.name + LOCK));
    close(held.channel);
  }

  /** The names of what lies there: a text may have lost its lock. */
  private List<String> names() {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(OnDisk::name)
          .filter(n -> n.endsWith(LOCK) || n.endsWith(TEXT))
          .map(n -> n.substring(0, n.lastIndexOf('.')))
          .filter(n -> n.startsWith(BEGIN))
          .distinct()
          .sorted()
          .toList();
    } catch (IOException e) {
      return List.of();
    }
  }

  private static Optional<Kept> read(Path file) {
    try {
      return Files.isRegularFile(file) && Files.size(file) < LARGEST
          ? Kept.of(Files.readString(file))
          : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** When a file was written last. */
  static Instant when(Path file) {
    try {
      return Files.getLastModifiedTime(file).toInstant();
    } catch (IOException e) {
      return Instant.EPOCH;
    }
  }

  private static void delete(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      // The next start finds it without a text and clears it.
    }
  }

  private static void close(FileChannel channel) {
    if (channel != null) {
      try {
        channel.close();
      } catch (IOException e) {
        // It is given up either way.
      }
    }
  }
}
