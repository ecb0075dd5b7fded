package facetwright.cli.desk;

import facetwright.adjust.write.Written;
import facetwright.export.file.PaperFolder;
import facetwright.export.file.WholeFiles;
import facetwright.script.design.Design;
import facetwright.script.text.Gathered;
import facetwright.words.Sentence;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.function.Consumer;
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
              + Sentence.listed(others)
              + " already, not as this design wrote "
              + (others.size() == 1 ? "it" : "them")
              + ". Nothing was written. Choose another folder with --out, or say --replace.");
    }
    Optional<Path> kept = into.write(files);
    say(folder, files, kept, asked::tell);
    String earlier = into.ofEarlier(files);
    if (!earlier.isEmpty()) {
      asked.tell(earlier);
    }
    return kept;
  }

  private static void say(
      Path folder, SequencedMap<String, byte[]> files, Optional<Path> kept, Consumer<String> tell) {
    tell.accept("");
    tell.accept("Written to " + folder.toAbsolutePath().normalize() + ":");
    files.keySet().forEach(name -> tell.accept("  " + name));
    if (kept.isPresent()) {
      tell.accept(
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
    SequencedMap<String, String> files = new LinkedHashMap<>();
    files.put(whole.getFileName().toString(), Gathered.own(written.text()));
    scripts("--script", whole.getParent(), files, asked::tell);
  }

  /**
   * Writes scripts into a folder, and tells people where they are.
   *
   * @param option what asks for it
   * @param texts by the file's name
   * @throws Trouble.WrongCall where others would be replaced unasked
   */
  public void scripts(
      String option, Path folder, SequencedMap<String, String> texts, Consumer<String> tell) {
    SequencedMap<String, byte[]> files = new LinkedHashMap<>();
    texts.forEach((name, text) -> files.put(name, text.getBytes(StandardCharsets.UTF_8)));
    List<String> others =
        files.entrySet().stream()
            .filter(f -> isOther(folder.resolve(f.getKey()), f.getValue()))
            .map(Map.Entry::getKey)
            .toList();
    if (!isReplacing && !others.isEmpty()) {
      throw new Trouble.WrongCall(
          option
              + ": "
              + Sentence.listed(others)
              + (others.size() == 1 ? " is there already and holds" : " are there already and hold")
              + " something else. Choose another name, or say --replace.");
    }
    Optional<Path> kept = PaperFolder.keep(folder, others);
    WholeFiles.write(folder, files);
    say(folder, files, kept, tell);
  }

  private static boolean isOther(Path file, byte[] bytes) {
    try {
      return Files.exists(file) && !Arrays.equals(Files.readAllBytes(file), bytes);
    } catch (IOException e) {
      return true;
    }
  }
}
