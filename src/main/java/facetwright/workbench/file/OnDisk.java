package facetwright.workbench.file;

import facetwright.export.file.ExportException;
import facetwright.export.file.WholeFiles;
import facetwright.script.sandbox.ScriptLength;
import facetwright.words.Sentence;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;

/**
 * A script's text as it lay on disk. Line ends are single line feeds inside the program and are
 * written as they were read.
 *
 * @param text with line feeds
 * @param windowsEnds whether lines end in a carriage return and a line feed on disk
 * @param mark whether the file begins with a byte-order mark
 */
record OnDisk(String text, boolean windowsEnds, boolean mark) {
  private static final String MARK = "\uFEFF";

  /**
   * Why a file was not read or written, and what to do about it, for a person to read. The message
   * begins as it is written: a file's name keeps its letters.
   */
  static final class Refused extends Exception {
    private static final long serialVersionUID = 1L;
    private final String remedy;

    Refused(String message, String remedy) {
      super(message);
      this.remedy = remedy;
    }

    String remedy() {
      return remedy;
    }
  }

  /** A text that comes from no file. */
  static OnDisk fresh(String text) {
    return new OnDisk(text, false, false);
  }

  /** The same habits of the file, with another text. */
  OnDisk with(String newText) {
    return new OnDisk(newText, windowsEnds, mark);
  }

  static OnDisk read(Path file) throws Refused {
    String name = name(file);
    try {
      if (Files.isDirectory(file)) {
        throw new Refused(name + " is a folder", "Choose a script in it.");
      }
      String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
      if (!ending.equals("js") && !ending.equals("mjs") && !ending.equals("txt")) {
        throw new Refused(
            name + " is not a design's script",
            "A design is a text file whose name ends in .js; choose one of those.");
      }
      if (Files.exists(file) && !Files.isRegularFile(file)) {
        throw new Refused(name + " is no plain file", "Choose a script.");
      }
      if (Files.size(file) > ScriptLength.MOST) {
        throw new Refused(name + ScriptLength.WRONG, ScriptLength.REMEDY + ".");
      }
      byte[] bytes = Files.readAllBytes(file);
      for (byte b : bytes) {
        if (b == 0) {
          throw new Refused(name + " is not text", "Choose a script; this holds something else.");
        }
      }
      return of(StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
    } catch (NoSuchFileException e) {
      throw new Refused(
          name + " is not there any more",
          "It may have been moved or renamed: look for it with Open, or in " + folder(file) + ".");
    } catch (CharacterCodingException e) {
      throw new Refused(
          name + " is not text in UTF-8", "Save it as UTF-8 in the program it comes from.");
    } catch (AccessDeniedException e) {
      throw new Refused(
          "There is no leave to read " + name, "Change the file's rights, or copy it elsewhere.");
    } catch (IOException e) {
      throw new Refused(name + " could not be read: " + e.getMessage(), "Try again.");
    }
  }

  private static OnDisk of(String raw) {
    boolean mark = raw.startsWith(MARK);
    String text = mark ? raw.substring(1) : raw;
    boolean ends = text.contains("\r\n");
    return new OnDisk(text.replace("\r\n", "\n").replace('\r', '\n'), ends, mark);
  }

  /** Replaces the file whole, or not at all. */
  void write(Path file) throws Refused {
    if (Files.exists(file) && !Files.isWritable(file)) {
      throw new Refused(name(file) + " is write-protected", "Save it under another name.");
    }
    String ends = windowsEnds ? text.replace("\n", "\r\n") : text;
    LinkedHashMap<String, byte[]> files = new LinkedHashMap<>();
    files.put(name(file), ((mark ? MARK : "") + ends).getBytes(StandardCharsets.UTF_8));
    try {
      WholeFiles.write(folder(file), files);
    } catch (ExportException e) {
      throw new Refused(
          name(file) + " was not saved",
          Sentence.capital(e.getMessage()) + ". Your text is still here, unsaved.");
    }
  }

  static String name(Path file) {
    Path last = file.getFileName();
    return last == null ? file.toString() : last.toString();
  }

  private static Path folder(Path file) {
    Path folder = file.toAbsolutePath().getParent();
    return folder == null ? file : folder;
  }
}
