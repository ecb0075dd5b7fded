package facetwright.script.beside;

import facetwright.script.sandbox.ScriptLength;
import facetwright.script.text.FileNames;
import facetwright.script.text.Gathered;
import facetwright.script.text.Piece;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A plain text file of a folder: no link out of it, no folder, no pipe, and not too long. */
final class OneFile {
  /** So many names of a folder are looked at for the one that was meant. */
  private static final int MOST_NAMES = 400;

  private static final String MARK = "\uFEFF";

  private OneFile() {}

  /**
   * A file by its name, which is spelt as the folder spells it.
   *
   * @return what it holds or why that can't be had; empty where there is none
   */
  static Optional<Piece> in(Path folder, String name) {
    Path file = folder.resolve(name);
    try {
      BasicFileAttributes is =
          Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
      if (is.isSymbolicLink()) {
        return lacking(name, " is a link to another place");
      }
      if (is.isDirectory()) {
        return lacking(name, " is a folder");
      }
      if (!is.isRegularFile()) {
        return lacking(name, " is a pipe or a device");
      }
      Path spelt = file.toRealPath(LinkOption.NOFOLLOW_LINKS).getFileName();
      if (spelt == null || !spelt.toString().equals(name)) {
        return lacking(name, " is spelt " + spelt + " in its folder");
      }
      return is.size() > ScriptLength.MOST ? tooLong(name) : read(file, name);
    } catch (NoSuchFileException e) {
      return Optional.empty();
    } catch (IOException | SecurityException e) {
      return lacking(name, " can't be read");
    }
  }

  private static Optional<Piece> read(Path file, String name) throws IOException {
    byte[] bytes;
    try (InputStream in = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
      // It may have grown since it was looked at.
      bytes = in.readNBytes(ScriptLength.MOST + 1);
    }
    if (bytes.length > ScriptLength.MOST) {
      return tooLong(name);
    }
    try {
      String raw = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      String text = raw.startsWith(MARK) ? raw.substring(1) : raw;
      text = text.replace("\r\n", "\n").replace('\r', '\n');
      if (text.indexOf('\0') >= 0) {
        return lacking(name, " is not text");
      }
      return Gathered.of(text).pieces().isEmpty()
          ? Optional.of(new Piece(name, Piece.State.READ, text))
          : lacking(name, " has other files gathered in: take it apart first");
    } catch (CharacterCodingException e) {
      return lacking(name, " is not text in UTF-8");
    }
  }

  /** The names in a folder that a script could use. */
  static List<String> names(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .limit(MOST_NAMES)
          .map(f -> f.getFileName().toString())
          .filter(n -> FileNames.fault(n).isEmpty())
          .sorted()
          .toList();
    } catch (IOException | SecurityException e) {
      return List.of();
    }
  }

  private static Optional<Piece> tooLong(String name) {
    return lacking(name, ScriptLength.WRONG);
  }

  private static Optional<Piece> lacking(String name, String why) {
    return Optional.of(Beside.lacking(name, name + why));
  }
}
