package facetwright.workbench.file;

import facetwright.workbench.desk.Work;
import java.io.IOException;
import java.nio.file.Path;

/** A program that keeps a text and waits to be killed. */
final class KeepingProgram {
  private KeepingProgram() {}

  /**
   * Keeps.
   *
   * @param words the folder and the text
   */
  public static void main(String[] words) throws IOException {
    Kept kept = new Kept(null, "a text", "", Work.of(words[1]));
    System.out.println(new Keeping(Path.of(words[0])).keep(kept).orElse("kept"));
    int _ = System.in.read();
  }
}
