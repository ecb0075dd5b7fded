package facetwright.cli.command;

import facetwright.adjust.sweep.Sweep;
import facetwright.adjust.sweep.SweepText;
import facetwright.adjust.sweep.SweepValues;
import facetwright.cli.desk.Asked;
import facetwright.cli.desk.Columns;
import facetwright.cli.desk.Drawn;
import facetwright.cli.desk.Exit;
import facetwright.cli.desk.PrinterOptions;
import facetwright.cli.desk.Trouble;
import facetwright.cli.json.SweepJson;
import facetwright.draw.Drawing;
import facetwright.draw.page.ComparingPages;
import facetwright.export.PdfWriter;
import facetwright.export.SvgWriter;
import facetwright.geom.RoundOff;
import facetwright.language.Language;
import facetwright.measure.Unit;
import facetwright.papers.order.Named;
import facetwright.papers.order.Order;
import facetwright.script.design.Design;
import facetwright.script.design.Dial;
import facetwright.script.design.DialText;
import facetwright.words.NearName;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Shows one dial of a design over its range. */
@Command(
    name = "sweep",
    mixinStandardHelpOptions = true,
    description = {
      "Shows what a design comes to as one dial is turned over its range: whether it closes, its"
          + " size, its gap, whether it fits its sheet, how many measures it takes, what is found.",
      "With --out the folded forms are drawn side by side."
    })
public final class SweepCommand implements Callable<Integer> {
  @Mixin private Asked asked;

  @Option(names = "--dial", required = true, paramLabel = "name", description = "the dial to turn")
  private String name;

  @Option(names = "--from", paramLabel = "value", description = "where to begin (usual: its least)")
  private String from = "";

  @Option(names = "--to", paramLabel = "value", description = "where to end (usual: its greatest)")
  private String to = "";

  @Option(
      names = "--step",
      paramLabel = "value",
      description =
          "from value to value (usual: the dial's own steps, or a few marks of the ruler)")
  private String step = "";

  @Mixin private PrinterOptions printer;

  @Mixin private Drawn drawn;

  @Override
  public Integer call() throws Exception {
    printer.check();
    Design now = asked.design().evaluate();
    Unit unit = now.unit();
    Order order = printer.order(unit);
    Dial dial = dial(now);
    List<Double> values = values(dial, unit);
    String source = asked.design().source();
    Sweep sweep =
        asked
            .design()
            .ask(
                () ->
                    Sweep.of(
                        dial, unit, values, v -> asked.design().evaluate(source, dial.name(), v)));
    asked.answer(() -> SweepJson.of(now, sweep), () -> lines(now, sweep));
    drawn.write(asked, now, () -> files(now, sweep, order));
    return Exit.SOUND;
  }

  private Dial dial(Design now) {
    List<String> known = now.dials().stream().map(Dial::name).toList();
    return now.dials().stream()
        .filter(d -> d.name().equals(name.strip()))
        .findFirst()
        .orElseThrow(
            () ->
                new Trouble.WrongCall(
                    "--dial: there is no dial called \""
                        + name
                        + "\". "
                        + NearName.nearest(name, known)
                            .map(n -> "Did you mean \"" + n + "\"? ")
                            .orElse("")
                        + (known.isEmpty()
                            ? "The design has no dials."
                            : "Its dials are " + String.join(", ", known) + ".")));
  }

  private List<Double> values(Dial dial, Unit unit) {
    double start = from.isEmpty() ? dial.from() : read(dial, "--from", from, unit);
    double end = to.isEmpty() ? dial.to() : read(dial, "--to", to, unit);
    double slack = RoundOff.PART * (dial.to() - dial.from());
    if (start < dial.from() - slack || end > dial.to() + slack || start > end) {
      throw new Trouble.WrongCall(
          dial.name()
              + " goes from "
              + text(dial, dial.from(), unit)
              + " to "
              + text(dial, dial.to(), unit)
              + ": take --from and --to within that, the lesser first.");
    }
    if (step.isEmpty()) {
      return from.isEmpty() && to.isEmpty()
          ? SweepValues.of(dial, unit)
          : SweepValues.between(dial, start, end, unit);
    }
    try {
      return SweepValues.stepping(start, end, read(dial, "--step", step, unit));
    } catch (IllegalArgumentException e) {
      throw new Trouble.WrongCall("--step: " + e.getMessage() + ".");
    }
  }

  private static String text(Dial dial, double value, Unit unit) {
    return DialText.text(dial, value, unit);
  }

  private static double read(Dial dial, String option, String text, Unit unit) {
    try {
      return DialText.typed(dial, text, unit);
    } catch (IllegalArgumentException e) {
      throw new Trouble.WrongCall(option + ": " + e.getMessage() + ".");
    }
  }

  private static List<String> lines(Design now, Sweep sweep) {
    SweepText text = new SweepText(sweep.unit());
    List<String> lines = new ArrayList<>();
    lines.add(now.title() + ": " + sweep.dial().name() + " over its range");
    List<List<String>> rows = new ArrayList<>(List.of(SweepText.head(sweep.dial().name())));
    sweep.steps().forEach(s -> rows.add(text.row(sweep, s)));
    lines.addAll(Columns.aligned(rows));
    for (Sweep.Sample s : sweep.steps()) {
      if (s.design().isEmpty()) {
        lines.add("  " + s.typed() + ": " + s.why());
      }
    }
    return lines;
  }

  private static SequencedMap<String, byte[]> files(Design now, Sweep sweep, Order order) {
    SweepText text = new SweepText(sweep.unit());
    List<ComparingPages.Form> forms = new ArrayList<>();
    for (Sweep.Sample s : sweep.steps()) {
      s.design()
          .ifPresent(
              d ->
                  forms.add(
                      new ComparingPages.Form(
                          sweep.dial().name()
                              + " "
                              + s.typed()
                              + (SweepText.isNow(sweep, s) ? " (now)" : ""),
                          text.below(s),
                          d.net(),
                          d.folded().whole())));
    }
    String title = now.title() + ": " + sweep.dial().name();
    List<Drawing> pages = ComparingPages.of(title, order.page(), forms);
    SequencedMap<String, byte[]> files = new LinkedHashMap<>();
    Named named = new Named(now.title());
    String told = named.title("Sweep of " + sweep.dial().name());
    files.put(
        named.file("sweep.pdf"),
        PdfWriter.write(told, now.header().author(), Language.ENGLISH, pages));
    for (int i = 0; i < pages.size(); i++) {
      files.put(named.file("sweep.svg", i + 1), SvgWriter.write(told, pages.get(i)));
    }
    return files;
  }
}
