package facetwright.cli.command;

import facetwright.cli.desk.DesignFile;
import facetwright.cli.desk.Exit;
import facetwright.cli.desk.Output;
import facetwright.cli.desk.Trouble;
import facetwright.script.text.Gathered;
import facetwright.script.text.Piece;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.SequencedMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes one file of a script and all that it uses, to hand it on; or takes such a file apart. */
@Command(
    name = "gather",
    mixinStandardHelpOptions = true,
    description = "Makes one file of a script and the files that it uses, to hand it on.")
public final class GatherCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "FILE", description = "the design's script")
  private Path file;

  @Option(
      names = {"--script", "--out"},
      paramLabel = "FILE",
      description =
          "the file to write, or with --apart the folder; without it, what is to be written is"
              + " shown")
  private Path to;

  @Option(
      names = "--apart",
      description = "the other way: the script and each gathered file into a file of its own")
  private boolean apart;

  @Mixin private Output output;

  @Override
  public Integer call() throws Exception {
    String source = new DesignFile(file).source();
    SequencedMap<String, String> files = apart ? apart(source) : whole(source);
    PrintWriter out = spec.commandLine().getOut();
    if (to == null) {
      files.forEach((name, text) -> out.print(apart ? "// " + name + ":\n" + text : text));
    } else {
      Path whole = to.toAbsolutePath().normalize();
      output.scripts("--out", apart ? whole : whole.getParent(), files, out::println);
    }
    out.flush();
    return Exit.SOUND;
  }

  private SequencedMap<String, String> whole(String source) {
    Gathered all = Gathered.of(source);
    for (Piece piece : all.pieces()) {
      if (piece.state() == Piece.State.LACKING) {
        throw new Trouble.WrongCall(file + " can't be gathered: " + piece.text() + ".");
      }
    }
    if (all.pieces().isEmpty()) {
      throw new Trouble.WrongCall(file + " uses no other files, so there is nothing to gather.");
    }
    SequencedMap<String, String> one = new LinkedHashMap<>();
    one.put((to == null ? file : to).getFileName().toString(), all.gathered().text());
    return one;
  }

  private SequencedMap<String, String> apart(String source) {
    Gathered all = Gathered.of(Gathered.own(source));
    if (all.pieces().isEmpty()) {
      throw new Trouble.WrongCall(
          file + " has no files gathered in, so there is nothing to take apart.");
    }
    SequencedMap<String, String> files = new LinkedHashMap<>();
    files.put(file.getFileName().toString(), all.main());
    for (Piece piece : all.pieces()) {
      if (files.putIfAbsent(piece.name(), piece.text()) != null) {
        throw new Trouble.WrongCall(
            file + " has two files called " + piece.name() + ". Rename one of them in the script.");
      }
    }
    return files;
  }
}
