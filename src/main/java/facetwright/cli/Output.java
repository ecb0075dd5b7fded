package facetwright.cli;

import facetwright.export.PaperFolder;
import facetwright.export.WholeFiles;
import facetwright.turn.write.Written;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;

/** Files that commands write, all of them or none, and the words that say so. */
final class Output {
  private Output() {}

  /**
   * Writes papers into a folder, made where missing.
   *
   * @param replace whether what is not an earlier paper of this design may be replaced, too
   * @param words told where they are; null to say nothing
   * @throws Trouble.WrongCall where other files would be replaced unasked
   */
  static void write(
      Path folder,
      SequencedMap<String, byte[]> files,
      PaperFolder into,
      boolean replace,
      PrintWriter words) {
    List<String> others = replace ? List.of() : into.others(files);
    if (!others.isEmpty()) {
      throw new Trouble.WrongCall(
          folder
              + " holds "
              + String.join(", ", others)
              + " already, not as this design wrote "
              + (others.size() == 1 ? "it" : "them")
              + ". Nothing was written. Choose another folder with --out, or say --replace.");
    }
    into.write(files);
    say(folder, files, words);
  }

  private static void say(Path folder, SequencedMap<String, byte[]> files, PrintWriter words) {
    if (words != null) {
      words.println();
      words.println("Written to " + folder.toAbsolutePath().normalize() + ":");
      files.keySet().forEach(name -> words.println("  " + name));
    }
  }

  /**
   * Writes a script.
   *
   * @param replace whether a file that stands there may be replaced
   * @param words told where it is; null to say nothing
   * @throws Trouble.WrongCall where there is none to write, or another would be replaced unasked
   */
  static void write(Path file, Written written, boolean replace, PrintWriter words) {
    if (!written.isThere()) {
      throw new Trouble.WrongCall(
          "--script: the script " + written.why() + ". Take the --set line instead.");
    }
    Path whole = file.toAbsolutePath().normalize();
    byte[] bytes = written.text().getBytes(StandardCharsets.UTF_8);
    if (!replace && isOther(whole, bytes)) {
      throw new Trouble.WrongCall(
          "--script: "
              + file
              + " is there already and holds something else. Choose another name, or say"
              + " --replace.");
    }
    SequencedMap<String, byte[]> files = new LinkedHashMap<>();
    files.put(whole.getFileName().toString(), bytes);
    WholeFiles.write(whole.getParent(), files);
    say(whole.getParent(), files, words);
  }

  private static boolean isOther(Path file, byte[] bytes) {
    try {
      return Files.exists(file) && !Arrays.equals(Files.readAllBytes(file), bytes);
    } catch (IOException e) {
      return true;
    }
  }
}
