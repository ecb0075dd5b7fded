package facetwright.cli;

import facetwright.aim.Goal;
import facetwright.aim.GoalReader;
import facetwright.aim.Grid;
import facetwright.aim.OutcomeText;
import facetwright.draw.CopyPages;
import facetwright.export.PdfWriter;
import facetwright.export.WholeFiles;
import facetwright.fold.Closure;
import facetwright.fold.Measures;
import facetwright.geom.Decimals;
import facetwright.geom.Unit;
import facetwright.net.SheetSize;
import facetwright.script.Design;
import facetwright.script.WhatIf;
import facetwright.turn.fit.Fitting;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Makes a design as large as a sheet takes it, and lays as many as go on one. */
@Command(
    name = "fit",
    mixinStandardHelpOptions = true,
    description = {
      "Finds the dials that make a design as large as a sheet takes it, on your ruler's marks, and"
          + " how many lie on one sheet.",
      "With --count 4 four of it shall lie there. Exit code 1 says that they don't at any setting."
    })
final class FitCommand implements Callable<Integer> {
  @Mixin private DesignFile design;

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

  @Option(
      names = "--ruler",
      paramLabel = "1/16in|0.5mm|none",
      description = "the ruler they are set by (usual: 1/16 in for designs in inches, else 0.5 mm)")
  private String ruler = "";

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "write layout.pdf into this folder: how they lie, and the sheet at true size")
  private Path out;

  @Mixin private Json json;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws Exception {
    WhatIf what = design.whatIf();
    Unit unit = what.design().unit();
    SheetSize size = size(unit);
    Grid grid = grid(unit);
    Fitting fitting;
    try {
      List<String> names = turn.stream().map(String::strip).toList();
      fitting = design.ask(() -> Fitting.of(what, size, count, names, grid));
    } catch (IllegalArgumentException e) {
      throw new Trouble.WrongCall(e.getMessage() + ".");
    }
    String command = Calls.make(design.path(), what.settings(fitting.outcome()));
    PrintWriter print = spec.commandLine().getOut();
    if (json.isAsked()) {
      print.println(FitJson.of(what.design(), fitting, command));
    } else {
      lines(what.design(), fitting).forEach(print::println);
      print.println("  " + command);
    }
    if (out != null) {
      write(what.design(), fitting);
      if (!json.isAsked()) {
        print.println("  Written to " + out + ": layout.pdf");
      }
    }
    print.flush();
    return fitting.isMet() ? Exit.SOUND : Exit.ERROR_FOUND;
  }

  private SheetSize size(Unit unit) {
    try {
      return ((Goal.Fit) GoalReader.read("fits", sheet, unit)).sheet();
    } catch (IllegalArgumentException e) {
      throw new Trouble.WrongCall(
          "--sheet: " + e.getMessage() + (e.getMessage().endsWith("?") ? "" : "."));
    }
  }

  private Grid grid(Unit unit) {
    try {
      return ruler.isEmpty() ? Grid.usual(unit) : Grid.read(ruler, unit);
    } catch (IllegalArgumentException e) {
      throw new Trouble.WrongCall("--ruler: " + e.getMessage() + ".");
    }
  }

  private static List<String> lines(Design was, Fitting fitting) {
    List<String> lines = new ArrayList<>();
    Unit unit = was.unit();
    String name = fitting.sheet().name();
    lines.add(was.title() + " on " + name);
    lines.add("  As it stands, " + counted(fitting.before().count(), name) + ".");
    if (was.dials().isEmpty()) {
      lines.add("  It has no dials to turn.");
      return lines;
    }
    OutcomeText.turns(fitting.outcome()).forEach(t -> lines.add("  " + t));
    if (fitting.isMet()) {
      lines.add("  So turned, " + counted(fitting.after().count(), name) + ".");
    } else {
      lines.add(
          "  "
              + (fitting.copies() == 1 ? "It does" : fitting.copies() + " of it do")
              + " not fit "
              + name
              + " at any setting found; so turned, "
              + counted(fitting.after().count(), name)
              + ".");
      OutcomeText.hurdles(fitting.outcome()).forEach(h -> lines.add("  " + h));
    }
    if (fitting.design().folded().closure() != Closure.NOT_SOLVED) {
      Measures m = fitting.design().folded().measures();
      lines.add(
          "  Made, it is "
              + Report.shown(m.height(), unit)
              + " tall, "
              + Report.shown(m.width(), unit)
              + " wide and "
              + Report.shown(m.depth(), unit)
              + " deep, "
              + Decimals.places(100 * fitting.scale(was), 0)
              + " % of what it was.");
    }
    List<String> atEnd = fitting.atEnd();
    if (fitting.isMet() && !atEnd.isEmpty()) {
      lines.add(
          "  The script lets "
              + String.join(" and ", atEnd)
              + " go no further; the sheet may take more.");
    }
    String own = was.laid().stock().name();
    if (fitting.isMet() && !name.equals(own)) {
      lines.add(
          "  The script names "
              + own
              + "; write sheet(\""
              + name
              + "\") there to have its papers made for this sheet.");
    }
    lines.add("  Tried " + fitting.outcome().trials() + " settings.");
    return lines;
  }

  private static String counted(int count, String sheet) {
    return switch (count) {
      case 0 -> "it does not fit " + sheet;
      case 1 -> "one lies on a sheet of " + sheet;
      default -> count + " lie on a sheet of " + sheet;
    };
  }

  private void write(Design was, Fitting fitting) {
    SequencedMap<String, byte[]> files = new LinkedHashMap<>();
    files.put(
        "layout.pdf",
        PdfWriter.write(
            was.title(),
            was.header().author(),
            CopyPages.of(was.title(), was.unit(), fitting.after().laid(), fitting.after().plan())));
    WholeFiles.write(out, files);
  }
}
