package facetwright.cli;

import facetwright.cli.command.MakeCommand;
import facetwright.cli.desk.DesignFile;
import facetwright.cli.desk.Library;
import facetwright.cli.desk.PapersFor;
import facetwright.cli.json.Json;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;

/** The demo design's papers. */
final class Demo {
  private Demo() {}

  static int make(PrintWriter out, PrintWriter err) throws Exception {
    Path script = Library.folder().resolve(Library.DEMO);
    Path folder =
        Path.of(System.getProperty("facetwright.home", ".")).resolve("target/demo-papers");
    return MakeCommand.make(
        new DesignFile(script), folder, new PapersFor(), List.of(), true, new Json(), out, err);
  }
}
