package facetwright.cli.desk;

import facetwright.adjust.write.Written;
import facetwright.export.file.PaperFolder;
import facetwright.export.file.WholeFiles;
import facetwright.script.design.Design;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.SequencedMap;
import picocli.CommandLine.Option;

/** Files that a command writes, all of them or none, the words that say so, and its option. */
public final class Output {
  @Option(
      names = "--replace",
      description =
          "replace files that are not earlier papers of this design, too; they are kept in a"
              + " folder replaced-files beside them")
  private boolean isReplacing;

  /**
   * Writes papers of a design into a folder, made where missing, and tells people where they are.
   *
   * @return where other files that were replaced are kept; empty where none was
   * @throws Trouble.WrongCall where other files would be replaced unasked
   */
  public Optional<Path> papers(
      Path folder, SequencedMap<String, byte[]> files, Asked asked, Design made) {
    PaperFolder into = asked.design().papers(folder, made);
    List<String> others = isReplacing ? List.of() : into.others(files);
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
    say(folder, files, kept, asked);
    String earlier = into.ofEarlier(files);
    if (!earlier.isEmpty()) {
      asked.tell(earlier);
    }
    return kept;
  }

  private static void say(
      Path folder, SequencedMap<String, byte[]> files, Optional<Path> kept, Asked asked) {
    asked.tell("");
    asked.tell("Written to " + folder.toAbsolutePath().normalize() + ":");
    files.keySet().forEach(name -> asked.tell("  " + name));
    if (kept.isPresent()) {
      asked.tell(
          "What stood there is kept in "
              + kept.get().toAbsolutePath().normalize()
              + " until it is replaced again.");
    }
  }

  /**
   * Writes a script, and tells people where it is.
   *
   * @throws Trouble.WrongCall where there is none to write, or another would be replaced unasked
   */
  public void script(Path file, Written written, Asked asked) {
    if (!written.isThere()) {
      throw new Trouble.WrongCall(
          "--script: the script " + written.why() + ". Take the --set line instead.");
    }
    Path whole = file.toAbsolutePath().normalize();
    byte[] bytes = written.text().getBytes(StandardCharsets.UTF_8);
    boolean isOther = isOther(whole, bytes);
    if (!isReplacing && isOther) {
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
    say(whole.getParent(), files, kept, asked);
  }

  private static boolean isOther(Path file, byte[] bytes) {
    try {
      return Files.exists(file) && !Arrays.equals(Files.readAllBytes(file), bytes);
    } catch (IOException e) {
      return true;
    }
  }
}
