package facetwright.cli.desk;

import facetwright.adjust.write.Written;
import facetwright.export.file.PaperFolder;
import facetwright.export.file.WholeFiles;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.SequencedMap;

/** Files that commands write, all of them or none, and the words that say so. */
public final class Output {
  private Output() {}

  /**
   * Writes papers into a folder, made where missing.
   *
   * @param replace whether what is not an earlier paper of this design may be replaced, too
   * @param words told where they are; null to say nothing
   * @return where other files that were replaced are kept; empty where none was
   * @throws Trouble.WrongCall where other files would be replaced unasked
   */
  public static Optional<Path> write(
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
    Optional<Path> kept = into.write(files);
    say(folder, files, words);
    sayKept(kept, words);
    String earlier = into.ofEarlier(files);
    if (words != null && !earlier.isEmpty()) {
      words.println(earlier);
    }
    return kept;
  }

  private static void sayKept(Optional<Path> kept, PrintWriter words) {
    if (words != null && kept.isPresent()) {
      words.println(
          "What stood there is kept in "
              + kept.get().toAbsolutePath().normalize()
              + " until it is replaced again.");
    }
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
  public static void write(Path file, Written written, boolean replace, PrintWriter words) {
    if (!written.isThere()) {
      throw new Trouble.WrongCall(
          "--script: the script " + written.why() + ". Take the --set line instead.");
    }
    Path whole = file.toAbsolutePath().normalize();
    byte[] bytes = written.text().getBytes(StandardCharsets.UTF_8);
    boolean isOther = isOther(whole, bytes);
    if (!replace && isOther) {
      throw new Trouble.WrongCall(
          "--script: "
              + file
              + " is there already and holds something else. Choose another name, or say"
              + " --replace.");
    }
    String name = whole.getFileName().toString();
    Optional<Path> kept = PaperFolder.keep(whole.getParent(), isOther ? List.of(name) : List.of());
    SequencedMap<String, byte[]> files = new LinkedHashMap<>();
    files.put(name, bytes);
    WholeFiles.write(whole.getParent(), files);
    say(whole.getParent(), files, words);
    sayKept(kept, words);
  }

  private static boolean isOther(Path file, byte[] bytes) {
    try {
      return Files.exists(file) && !Arrays.equals(Files.readAllBytes(file), bytes);
    } catch (IOException e) {
      return true;
    }
  }
}
