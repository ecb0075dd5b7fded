package facetwright.export.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SequencedMap;

/**
 * Puts a set of files into a folder, all of them or none: each is written beside its place first
 * and safely on disk before the first one takes its place; when anything fails, the folder is left
 * as it was. A file that is replaced keeps its rights, its owner and its group; a symbolic link
 * stays one, and what it leads to is replaced.
 *
 * <p>Where the process is asked to end meanwhile, as by Ctrl+C, all files are written first. It
 * does not guard against the power failing between two of the last renames. A file that has several
 * names, or another's whose owner we may not give a new file, can only be written in its own place:
 * while that is done, its new contents lie whole beside it, and are found there, named {@code
 * .facetwright-….part}, should the power fail just then.
 */
public final class WholeFiles {
  private static final int MOST_PARTS = 10_000;

  private final Disk disk;

  /** Where bytes go, so that a full disk can be tried out. */
  interface Disk {
    void write(Path file, byte[] bytes) throws IOException;
  }

  private record Move(Path part, Path place, Path old, Standing standing) {}

  WholeFiles(Disk disk) {
    this.disk = disk;
  }

  /**
   * Writes the files; the folder is made where it is missing.
   *
   * @param files contents by plain file name
   * @throws ExportException when nothing was written, saying why
   */
  public static void write(Path folder, SequencedMap<String, byte[]> files) {
    new WholeFiles(WholeFiles::onDisk).put(folder, files);
  }

  void put(Path folder, SequencedMap<String, byte[]> files) {
    Ending.wait(() -> putAll(folder, files));
  }

  private void putAll(Path folder, SequencedMap<String, byte[]> files) {
    Path made = makeFolder(folder);
    List<Move> moves = new ArrayList<>();
    int moved = 0;
    try {
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        Path place = Standing.real(place(folder, file.getKey()));
        Path part = newPart(place.toAbsolutePath().getParent());
        Path old = part.resolveSibling(part.getFileName() + ".old");
        Standing standing = Standing.before(part, place);
        moves.add(new Move(part, place, old, standing));
        disk.write(part, file.getValue());
        standing.finish(part);
      }
      for (Move move : moves) {
        if (Files.exists(move.place)) {
          keep(move);
        }
      }
      for (Move move : moves) {
        // What is written in its own place may be half written when that fails.
        moved += move.standing.isToStay() ? 1 : 0;
        if (move.standing.isToStay()) {
          disk.write(move.place, Files.readAllBytes(move.part));
        } else {
          Files.move(
              move.part,
              move.place,
              StandardCopyOption.ATOMIC_MOVE,
              StandardCopyOption.REPLACE_EXISTING);
          moved++;
        }
      }
    } catch (IOException | RuntimeException e) {
      undo(moves.subList(0, moved));
      clear(moves);
      if (made != null) {
        remove(folder, made);
      }
      throw e instanceof ExportException said ? said : failure(folder, e);
    }
    clear(moves);
    flush(folder);
    moves.forEach(move -> flush(move.part.getParent()));
  }

  /** A new empty file with the rights that new files get here. */
  private static Path newPart(Path folder) throws IOException {
    for (int i = 1; ; i++) {
      try {
        return Files.createFile(folder.resolve(".facetwright-" + i + ".part"));
      } catch (FileAlreadyExistsException e) {
        if (i == MOST_PARTS) {
          throw e;
        }
      }
    }
  }

  /** The file that stands there now, so that it can be put back. */
  private static void keep(Move move) throws IOException {
    if (move.standing.isToStay()) {
      Files.copy(move.place, move.old, StandardCopyOption.COPY_ATTRIBUTES);
      return;
    }
    try {
      Files.createLink(move.old, move.place);
    } catch (IOException | UnsupportedOperationException e) {
      Files.copy(move.place, move.old, StandardCopyOption.COPY_ATTRIBUTES);
    }
  }

  private static void undo(List<Move> done) {
    for (Move move : done.reversed()) {
      try {
        if (Files.exists(move.old) && move.standing.isToStay()) {
          onDisk(move.place, Files.readAllBytes(move.old));
        } else if (Files.exists(move.old)) {
          Files.move(move.old, move.place, StandardCopyOption.ATOMIC_MOVE);
        } else {
          Files.deleteIfExists(move.place);
        }
      } catch (IOException e) {
        throw new ExportException(
            "the file "
                + move.place
                + " could not be put back; its old contents are in "
                + move.old,
            e);
      }
    }
  }

  private static void clear(List<Move> moves) {
    for (Move move : moves) {
      delete(move.part);
      delete(move.old);
    }
  }

  private static void delete(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      // A leftover hidden file harms nobody; the outcome is already settled.
    }
  }

  /** Makes the folder and those above it; returns the topmost one made, null when none was. */
  private static Path makeFolder(Path folder) {
    Path missing = null;
    for (Path p = folder.toAbsolutePath(); p != null && !Files.exists(p); p = p.getParent()) {
      missing = p;
    }
    if (Files.exists(folder) && !Files.isDirectory(folder)) {
      throw new ExportException(
          folder + " is a file, not a folder: choose another folder or move the file away");
    }
    try {
      Files.createDirectories(folder);
    } catch (IOException | RuntimeException e) {
      if (missing != null) {
        remove(folder, missing);
      }
      throw failure(folder, e);
    }
    return missing;
  }

  private static void remove(Path folder, Path topmost) {
    for (Path p = folder.toAbsolutePath(); p != null && p.startsWith(topmost); p = p.getParent()) {
      delete(p);
    }
  }

  private static Path place(Path folder, String name) {
    boolean isStep = name.equals(".") || name.equals("..");
    if (name.isBlank() || isStep || name.contains("/") || name.contains("\\")) {
      throw new ExportException("\"" + name + "\" is not a plain file name");
    }
    Path place = folder.resolve(name);
    if (Files.isDirectory(place)) {
      throw new ExportException(
          place + " is a folder where a file is to be written: move it away or choose another");
    }
    return place;
  }

  /** Why nothing could be written to a folder, and what to do, in words for a person. */
  public static ExportException failure(Path folder, Exception e) {
    if (e instanceof FileAlreadyExistsException || e instanceof NotDirectoryException) {
      return new ExportException(
          folder + " is a file, not a folder: choose another folder or move the file away", e);
    }
    String why = String.valueOf(e.getMessage()).toLowerCase(Locale.ROOT);
    if (why.contains("no space left")
        || why.contains("not enough space")
        || why.contains("quota")) {
      return new ExportException(
          "the disk is full, nothing was written to " + folder + ": make room and try again", e);
    }
    if (e instanceof AccessDeniedException
        || e instanceof ReadOnlyFileSystemException
        || why.contains("read-only")
        || why.contains("not permitted")) {
      return new ExportException(
          "there is no leave to write to "
              + folder
              + ": choose another folder or change its rights",
          e);
    }
    return new ExportException("nothing was written to " + folder + ": " + e.getMessage(), e);
  }

  private static void onDisk(Path file, byte[] bytes) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      ByteBuffer left = ByteBuffer.wrap(bytes);
      while (left.hasRemaining()) {
        channel.write(left);
      }
      channel.truncate(bytes.length);
      channel.force(true);
    }
  }

  /** Where the system lets a folder be flushed, the new names are safe too. */
  private static void flush(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      // Not every system can; the files themselves are on disk.
    }
  }
}
