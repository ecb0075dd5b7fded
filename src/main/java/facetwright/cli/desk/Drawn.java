package facetwright.cli.desk;

import facetwright.script.design.Design;
import java.nio.file.Path;
import java.util.SequencedMap;
import java.util.function.Supplier;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What a command that answers in words draws, too, where it is asked for a folder. */
public final class Drawn {
  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "draw it, too, as PDF, SVG and, of facets, PNG, into this folder")
  private Path out;

  @Mixin private Output output;

  /** Writes what is drawn, where a folder is named; nothing is drawn where none is. */
  public void write(Asked asked, Design made, Supplier<SequencedMap<String, byte[]>> files) {
    if (out != null) {
      output.papers(out, files.get(), asked, made);
    }
  }
}
