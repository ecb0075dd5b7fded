package facetwright.workbench.file;

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
    boolean kept = new Keeping(Path.of(words[0])).keep(new Kept(null, "a text", "", words[1]));
    System.out.println(kept ? "kept" : "not kept");
    int _ = System.in.read();
  }
}
