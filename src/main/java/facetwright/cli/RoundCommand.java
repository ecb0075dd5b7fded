package facetwright.cli;

import facetwright.aim.Measure;
import facetwright.export.WholeFiles;
import facetwright.geom.Decimals;
import facetwright.geom.Ruler;
import facetwright.geom.Unit;
import facetwright.papers.chart.ChartNotes;
import facetwright.papers.chart.ToSet;
import facetwright.script.Design;
import facetwright.script.Dial;
import facetwright.script.WhatIf;
import facetwright.turn.round.Rewriting;
import facetwright.turn.round.Rounding;
import facetwright.turn.round.RoundingText;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Turns a design's dials so that what its maker sets lies on the marks of a ruler. */
@Command(
    name = "round",
    mixinStandardHelpOptions = true,
    description = {
      "Turns a design's dials, each by little, so that the measures its maker sets lie on the marks"
          + " of a ruler. A ruler of the other unit converts a metric design to inches and back.",
      "What no dial can put on a mark is told, with what it does to the form."
    })
final class RoundCommand implements Callable<Integer> {
  private static final int MOST_SHOWN = 24;
  private static final int MOST_MARKS = 20;
  private static final double SAME_MM = 0.05;
  private static final Ruler FINEST = new Ruler(Unit.INCH, 64);

  @Mixin private DesignFile design;

  @Option(
      names = "--ruler",
      paramLabel = "1/16in|1mm",
      description = "the ruler you own (usual: 1/16 in for designs in inches, else 0.5 mm)")
  private String ruler = "";

  @Option(
      names = "--within",
      paramLabel = "N",
      description =
          "turn no dial by more than so many marks, nor by more than a fifth of its value"
              + " (usual: 1)")
  private int within = 1;

  @Option(
      names = "--constants",
      description = "change numbers of the script, too, where no dial moves a measure")
  private boolean constants;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "write the script with its dials so into this file")
  private Path out;

  @Mixin private Json json;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws Exception {
    if (within < 1 || within > MOST_MARKS) {
      throw new Trouble.WrongCall("--within: 1 to " + MOST_MARKS + " marks, not " + within + ".");
    }
    if (constants && out == null) {
      throw new Trouble.WrongCall(
          "--constants changes the script: name the file to write it to with --out.");
    }
    WhatIf what = design.whatIf();
    Unit unit = what.design().unit();
    Ruler marks = ChartCommand.ruler(ruler, unit);
    Rounding rounding = design.ask(() -> Rounding.of(what, marks, within));
    Map<String, String> settings = new LinkedHashMap<>(what.settings());
    rounding.turns().stream()
        .filter(Rounding.Turn::isTurned)
        .forEach(t -> settings.put(t.knob().name(), t.typed(marks, unit)));
    String command = Calls.make(design.path(), settings);
    PrintWriter print = spec.commandLine().getOut();
    if (json.isAsked()) {
      print.println(RoundJson.of(what.design(), rounding, command));
    } else {
      lines(what.design().title(), rounding, unit).forEach(print::println);
      print.println("  " + command);
    }
    if (out != null) {
      write(what, rounding, unit);
      if (!json.isAsked()) {
        print.println("  Written to " + out + ".");
      }
    }
    print.flush();
    return Exit.SOUND;
  }

  private static List<String> lines(String title, Rounding rounding, Unit unit) {
    RoundingText text = new RoundingText(rounding, unit);
    List<String> lines = new ArrayList<>();
    lines.add(title + " for a ruler of " + ChartNotes.name(rounding.ruler()));
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("dial", "now", "becomes", ""));
    for (Rounding.Turn turn : rounding.turns()) {
      double was = turn.knob().now() * unit.mm();
      double is = turn.value() * unit.mm();
      rows.add(
          List.of(
              turn.knob().name(),
              reads(was, unit == Unit.INCH ? FINEST : rounding.ruler(), unit),
              turn.isTurned() ? reads(is, rounding.ruler(), unit) : "stays",
              turn.isTurned() ? signed(is - was) : ""));
    }
    if (!rounding.turns().isEmpty()) {
      lines.addAll(Columns.aligned(rows));
    }
    lines.add("  " + text.count());
    text.drawn().ifPresent(d -> lines.add("  " + d));
    lines.addAll(measures(rounding));
    text.left().forEach(l -> lines.add("  " + l));
    text.effect().forEach(e -> lines.add("  " + e));
    text.constants().forEach(c -> lines.add("  " + c));
    lines.add("  Tried " + rounding.trials() + " other settings.");
    return lines;
  }

  /** Every measure, with what it was where that can be told. */
  private static List<String> measures(Rounding rounding) {
    List<facetwright.papers.chart.Measure> was = rounding.before().toSet().all();
    List<facetwright.papers.chart.Measure> is = rounding.after().toSet().all();
    int form = rounding.after().toSet().form().size();
    boolean alike = areAlike(rounding);
    List<List<String>> table = new ArrayList<>();
    table.add(row(alike, "for", "mm now", alike ? "becomes" : "mm", "reads", "off"));
    List<facetwright.papers.chart.Measure> sorted =
        ToSet.distinct(is).stream().sorted(Comparator.comparingDouble(m -> m.mm())).toList();
    for (facetwright.papers.chart.Measure m : sorted.stream().limit(MOST_SHOWN).toList()) {
      int at = is.indexOf(m);
      table.add(
          row(
              alike,
              at < form ? "form" : "cuts",
              alike ? Decimals.places(was.get(at).mm(), 2) : "",
              Decimals.places(m.mm(), 2),
              m.text(),
              m.isOnRuler() ? "" : signed(m.reading().errorMm())));
    }
    List<String> lines = new ArrayList<>(Columns.aligned(table));
    if (sorted.size() > MOST_SHOWN) {
      lines.add("  " + (sorted.size() - MOST_SHOWN) + " more; --json has all.");
    }
    return lines;
  }

  private static List<String> row(
      boolean withNow, String what, String now, String becomes, String reads, String off) {
    return withNow ? List.of(what, now, becomes, reads, off) : List.of(what, becomes, reads, off);
  }

  /** Whether both list the same measures in the same order: each changes as the dials do. */
  private static boolean areAlike(Rounding rounding) {
    List<facetwright.papers.chart.Measure> was = rounding.before().toSet().all();
    List<facetwright.papers.chart.Measure> is = rounding.after().toSet().all();
    double part =
        rounding.turns().stream()
            .mapToDouble(t -> Math.abs(t.value() / t.knob().now() - 1))
            .max()
            .orElse(0);
    return was.size() == is.size()
        && IntStream.range(0, is.size())
            .allMatch(
                i ->
                    Math.abs(is.get(i).mm() - was.get(i).mm())
                        <= SAME_MM + 3 * part * was.get(i).mm());
  }

  private static String reads(double mm, Ruler ruler, Unit unit) {
    facetwright.papers.chart.Measure m = facetwright.papers.chart.Measure.of(mm, ruler);
    return m.isOnRuler() ? m.text() : Measure.HEIGHT.text(mm, unit);
  }

  private static String signed(double mm) {
    String text = Decimals.places(mm, 2);
    return (text.startsWith("-") ? "" : "+") + text + " mm";
  }

  private void write(WhatIf what, Rounding rounding, Unit unit) throws Exception {
    List<Dial> dials = what.design().dials();
    String text =
        Rewriting.of(what.source(), dials, rounding, unit, constants)
            .orElseThrow(() -> cannotWrite("does not write a dial's value as a plain number"));
    Optional<Design> written = design.ask(() -> what.written(text));
    if (written.isEmpty() || !Rewriting.isAsRounded(written.get().dials(), dials, rounding)) {
      throw cannotWrite("does not take the new values where they would be written");
    }
    SequencedMap<String, byte[]> file = new LinkedHashMap<>();
    file.put(out.getFileName().toString(), text.getBytes(StandardCharsets.UTF_8));
    WholeFiles.write(out.toAbsolutePath().getParent(), file);
  }

  private static Trouble.WrongCall cannotWrite(String why) {
    return new Trouble.WrongCall("--out: the script " + why + ". Take the --set line instead.");
  }
}
