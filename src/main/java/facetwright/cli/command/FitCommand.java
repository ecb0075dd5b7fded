package facetwright.cli.command;

import facetwright.adjust.fit.FitWriting;
import facetwright.adjust.fit.Fitting;
import facetwright.adjust.fit.FittingText;
import facetwright.adjust.write.Written;
import facetwright.aim.Goal;
import facetwright.aim.GoalReader;
import facetwright.aim.Grid;
import facetwright.aim.OutcomeText;
import facetwright.cli.desk.Asked;
import facetwright.cli.desk.Calls;
import facetwright.cli.desk.Exit;
import facetwright.cli.desk.GridOption;
import facetwright.cli.desk.Output;
import facetwright.cli.desk.PrinterOptions;
import facetwright.cli.desk.Trouble;
import facetwright.cli.json.FitJson;
import facetwright.draw.GlueMarks;
import facetwright.draw.page.CopyPages;
import facetwright.export.Exporter;
import facetwright.export.Exporters;
import facetwright.export.PdfWriter;
import facetwright.measure.Unit;
import facetwright.message.Refused;
import facetwright.net.sheet.SheetSize;
import facetwright.papers.order.Named;
import facetwright.papers.order.Order;
import facetwright.script.WhatIf;
import facetwright.script.design.Design;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Makes a design as large as a sheet takes it, and lays as many as go on one. */
@Command(
    name = "fit",
    mixinStandardHelpOptions = true,
    description = {
      "Finds the dials that make a design as large as a sheet takes it, on your ruler's marks, and"
          + " how many lie on one sheet.",
      "With --count 4 four of it shall lie there. Exit code 1 says that they don't at any setting."
    })
public final class FitCommand implements Callable<Integer> {
  @Mixin private Asked asked;

  @Option(
      names = "--sheet",
      required = true,
      paramLabel = "Letter|A4|200x300 mm",
      description = "the sheet, by its name or its sides")
  private String sheet;

  @Option(
      names = "--count",
      paramLabel = "N",
      description = "so many shall lie on one sheet (usual: 1)")
  private int count = 1;

  @Option(
      names = "--turn",
      paramLabel = "dial",
      split = ",",
      description = "the dials that may be turned (usual: all lengths, in proportion)")
  private List<String> turn = List.of();

  @Mixin private GridOption ruler;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description =
          "write a document into this folder: how they lie, the cuts that part the sheet, and the"
              + " sheet at true size")
  private Path out;

  @Option(
      names = "--script",
      paramLabel = "FILE",
      description = "write the script with its dials and this sheet into this file")
  private Path script;

  @Mixin private PrinterOptions printer;

  @Mixin private Output output;

  @Override
  public Integer call() throws Exception {
    printer.check();
    WhatIf what = asked.design().whatIf();
    Unit unit = what.design().unit();
    SheetSize size = size(unit);
    Grid grid = ruler.of(unit);
    Order order = order(unit, grid);
    Fitting fitting;
    try {
      List<String> names = turn.stream().map(String::strip).toList();
      fitting = asked.design().ask(() -> Fitting.of(what, size, count, names, grid));
    } catch (IllegalArgumentException e) {
      throw new Trouble.WrongCall(Refused.text(e, unit) + ".");
    }
    String command = Calls.make(asked.design().path(), what.settings(fitting.outcome()));
    asked.answer(
        () -> FitJson.of(what.design(), fitting, command),
        () -> lines(what.design(), fitting, command));
    if (out != null) {
      output.papers(out, layout(what.design(), fitting, order), asked, what.design());
    }
    if (script != null) {
      Written written = asked.design().ask(() -> FitWriting.of(what, fitting, grid));
      output.script(script, written, asked);
    }
    return Exit.of(fitting.isMet());
  }

  private SheetSize size(Unit unit) {
    try {
      return ((Goal.Fit) GoalReader.read("fits", sheet, unit)).sheet();
    } catch (IllegalArgumentException e) {
      throw new Trouble.WrongCall(
          "--sheet: " + Refused.text(e, unit) + (e.getMessage().endsWith("?") ? "" : "."));
    }
  }

  /** The layout is told by the ruler that the dials are set by. */
  private Order order(Unit unit, Grid grid) {
    Order order = printer.order(unit);
    return grid instanceof Grid.Marks marks ? order.by(marks.ruler()) : order;
  }

  private static List<String> lines(Design was, Fitting fitting, String command) {
    List<String> lines = new ArrayList<>();
    String name = fitting.sheet().name();
    lines.add(was.title() + " on " + name);
    FittingText text = new FittingText(was, fitting);
    lines.add("  " + text.before());
    OutcomeText.turns(fitting.outcome()).forEach(t -> lines.add("  " + t));
    text.after().forEach(l -> lines.add("  " + l));
    text.effect().forEach(l -> lines.add("  " + l));
    if (fitting.isMet() && text.isOtherSheet()) {
      lines.add(
          "  The script has its papers made for "
              + was.laid().stock().name()
              + "; --script FILE writes it for "
              + name
              + ".");
    }
    lines.add("  " + OutcomeText.tried(fitting.outcome()));
    lines.add("  " + command);
    return lines;
  }

  private static SequencedMap<String, byte[]> layout(Design was, Fitting fitting, Order order) {
    SequencedMap<String, byte[]> files = new LinkedHashMap<>();
    Named named = new Named(was.title());
    Exporter layout = Exporters.all().get("layout");
    files.put(
        named.file(layout.ending()),
        PdfWriter.write(
            named.title(Named.paper(layout.format(), order.telling()), order.telling()),
            was.header().author(),
            order.language(),
            CopyPages.of(
                was.title(),
                order,
                fitting.after().laid(),
                fitting.after().plan(),
                GlueMarks.of(fitting.design().gluing()))));
    return files;
  }
}
