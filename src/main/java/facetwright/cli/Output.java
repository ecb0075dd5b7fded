package facetwright.cli;

import facetwright.export.WholeFiles;
import facetwright.turn.write.Written;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.SequencedMap;

/** Files that commands write, all of them or none, and the words that say so. */
final class Output {
  private Output() {}

  /**
   * Writes files into a folder, made where missing.
   *
   * @param words told where they are; null to say nothing
   */
  static void write(Path folder, SequencedMap<String, byte[]> files, PrintWriter words) {
    WholeFiles.write(folder, files);
    if (words != null) {
      words.println();
      words.println("Written to " + folder.toAbsolutePath().normalize() + ":");
      files.keySet().forEach(name -> words.println("  " + name));
    }
  }

  /**
   * Writes a script.
   *
   * @param words told where it is; null to say nothing
   * @throws Trouble.WrongCall where there is none to write
   */
  static void write(Path file, Written written, PrintWriter words) {
    if (!written.isThere()) {
      throw new Trouble.WrongCall(
          "--script: the script " + written.why() + ". Take the --set line instead.");
    }
    Path whole = file.toAbsolutePath().normalize();
    SequencedMap<String, byte[]> files = new LinkedHashMap<>();
    files.put(whole.getFileName().toString(), written.text().getBytes(StandardCharsets.UTF_8));
    write(whole.getParent(), files, words);
  }
}
