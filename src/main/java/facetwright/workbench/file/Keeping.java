package facetwright.workbench.file;

import facetwright.export.file.ExportException;
import facetwright.export.file.WholeFiles;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
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
  private static final String LOCK = ".lock";
  private static final String TEXT = ".json";
  private static final int MOST = 1000;
  private static final long LARGEST = 8_000_000;

  private final Path folder;
  private Held own;

  /** A name in the folder, and the lock that makes it ours. */
  private record Held(String name, FileChannel channel) {}

  /** What another program left, ours until it is put away or this program ends. */
  public static final class Left {
    private final Held held;
    private final Kept kept;

    private Left(Held held, Kept kept) {
      this.held = held;
      this.kept = kept;
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
      if (own == null || Files.notExists(folder.resolve(own.name + LOCK))) {
        close();
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

  /** What programs left that ended unexpectedly. */
  synchronized List<Left> left() {
    List<Left> found = new ArrayList<>();
    for (String name : names()) {
      Held held = own != null && own.name.equals(name) ? null : hold(name);
      if (held != null) {
        Optional<Kept> kept = read(folder.resolve(name + TEXT));
        if (kept.isPresent()) {
          found.add(new Left(held, kept.get()));
        } else {
          release(held);
        }
      }
    }
    return found;
  }

  /** Puts away what was left. */
  synchronized void putAway(Left left) {
    release(left.held);
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
      String name = "unsaved-" + i;
      try {
        Files.createFile(folder.resolve(name + LOCK));
      } catch (FileAlreadyExistsException e) {
        continue;
      }
      Held held = hold(name);
      if (held != null) {
        return held;
      }
    }
    throw new IOException("too many unsaved texts in " + folder);
  }

  /** Null where another program holds it. */
  private Held hold(String name) {
    FileChannel channel = null;
    try {
      channel = FileChannel.open(folder.resolve(name + LOCK), StandardOpenOption.WRITE);
      FileLock lock = channel.tryLock();
      if (lock != null) {
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

  private List<String> names() {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(OnDisk::name)
          .filter(n -> n.endsWith(LOCK))
          .map(n -> n.substring(0, n.length() - LOCK.length()))
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
