package facetwright.cli;

import facetwright.cli.desk.Library;
import facetwright.script.beside.Shipped;
import java.io.PrintWriter;
import java.nio.file.Path;

/** The demo design's papers. */
final class Demo {
  private Demo() {}

  static int make(PrintWriter out, PrintWriter err) {
    Path script = Library.folder().resolve(Shipped.DEMO);
    Path folder =
        Path.of(System.getProperty("facetwright.home", ".")).resolve("target/demo-papers");
    String[] words = {"make", script.toString(), "--out", folder.toString(), "--replace"};
    return Main.run(words, out, err);
  }
}
