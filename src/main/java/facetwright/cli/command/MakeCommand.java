package facetwright.cli.command;

import facetwright.cli.desk.Asked;
import facetwright.cli.desk.Exit;
import facetwright.cli.desk.Output;
import facetwright.cli.desk.PapersFor;
import facetwright.cli.desk.Progress;
import facetwright.cli.desk.Report;
import facetwright.cli.desk.Trouble;
import facetwright.cli.json.CheckJson;
import facetwright.export.Exporters;
import facetwright.json.JsonText;
import facetwright.script.design.Design;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Makes everything a maker needs, into a folder. */
@Command(
    name = "make",
    mixinStandardHelpOptions = true,
    description = "Makes the papers and models of a design, into a folder.")
public final class MakeCommand implements Callable<Integer> {
  @Mixin private Asked asked;

  @Mixin private PapersFor papers;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description =
          "the folder; made where missing (usual: one beside you, named after the design)")
  private Path out;

  @Option(
      names = "--only",
      paramLabel = "pdf,svg,…",
      split = ",",
      description = "just these: ${COMPLETION-CANDIDATES}",
      completionCandidates = Formats.class)
  private List<String> only = List.of();

  @Mixin private Output output;

  /** The formats by name and what a maker calls them, for help. */
  static final class Formats implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return Exporters.all().sequencedValues().stream()
          .map(
              e -> e.format() + " (" + e.name() + (e.when().isEmpty() ? "" : ", " + e.when()) + ")")
          .iterator();
    }
  }

  @Override
  public Integer call() throws Exception {
    List<String> wanted = only.stream().map(String::strip).toList();
    papers.check();
    for (String name : wanted) {
      if (!PapersFor.formats().contains(name)) {
        throw new Trouble.WrongCall(
            "--only: there is no \""
                + name
                + "\". Choose from "
                + String.join(", ", PapersFor.formats())
                + ".");
      }
    }
    Path folder = out == null ? Path.of(asked.design().stem()) : out;
    Design made = asked.evaluate();
    SequencedMap<String, byte[]> files =
        PapersFor.files(papers.job(made), wanted, new Progress(asked.err()));
    if (asked.isJson()) {
      Optional<Path> kept = output.papers(folder, files, asked, made);
      asked.answer(() -> object(made, folder.toAbsolutePath().normalize(), files, kept), List::of);
    } else {
      Report.lines(made).forEach(asked::tell);
      output.papers(folder, files, asked, made);
    }
    return Exit.of(made.isSound());
  }

  private static String object(
      Design made, Path where, SequencedMap<String, byte[]> files, Optional<Path> kept) {
    return JsonText.object(
        json -> {
          json.writeStringProperty("title", made.title());
          json.writeBooleanProperty("sound", made.isSound());
          json.writeStringProperty("folder", where.toString());
          if (kept.isPresent()) {
            json.writeStringProperty(
                "replaced_kept_in", kept.get().toAbsolutePath().normalize().toString());
          }
          JsonText.objects(
              json,
              "files",
              files.entrySet(),
              file -> {
                json.writeStringProperty("name", file.getKey());
                json.writeNumberProperty("bytes", file.getValue().length);
              });
          CheckJson.findings(json, made.findings());
        });
  }
}
