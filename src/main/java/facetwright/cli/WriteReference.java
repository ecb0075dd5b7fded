package facetwright.cli;

import facetwright.script.vocabulary.Reference;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes the reference of the script language into a file. */
final class WriteReference {
  private WriteReference() {}

  /** Takes the file's path. */
  public static void main(String[] words) throws IOException {
    Files.writeString(Path.of(words[0]), Reference.markdown());
  }
}
