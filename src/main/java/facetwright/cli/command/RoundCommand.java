package facetwright.cli.command;

import facetwright.adjust.DialChange;
import facetwright.adjust.round.Rewriting;
import facetwright.adjust.round.Rounding;
import facetwright.adjust.round.RoundingText;
import facetwright.adjust.write.Written;
import facetwright.cli.desk.Asked;
import facetwright.cli.desk.Calls;
import facetwright.cli.desk.Columns;
import facetwright.cli.desk.Exit;
import facetwright.cli.desk.Output;
import facetwright.cli.desk.Rulers;
import facetwright.cli.desk.Trouble;
import facetwright.cli.json.RoundJson;
import facetwright.language.Telling;
import facetwright.measure.Length;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.papers.chart.Measure;
import facetwright.papers.chart.ToSet;
import facetwright.script.WhatIf;
import facetwright.script.design.Design;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Turns a design's dials so that what its maker sets lies on the marks of a ruler. */
@Command(
    name = "round",
    mixinStandardHelpOptions = true,
    description = {
      "Turns a design's dials, each by little, so that the measures its maker sets lie on the marks"
          + " of a ruler. A ruler of the other unit converts a metric design to inches and back.",
      "What no dial can put on a mark is told, with what it does to the form."
    })
public final class RoundCommand implements Callable<Integer> {
  private static final int MOST_SHOWN = 24;
  private static final int MOST_MARKS = 20;
  private static final double SAME_MM = 0.05;

  @Mixin private Asked asked;

  @Option(
      names = "--ruler",
      paramLabel = "1/16in|1mm",
      description = "the ruler you own (" + Rulers.USUAL + ")")
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
      names = {"--script", "--out"},
      paramLabel = "FILE",
      description = "write the script with its dials so into this file")
  private Path script;

  @Mixin private Output output;

  @Override
  public Integer call() throws Exception {
    Trouble.unless("--within", "%s marks", 1, MOST_MARKS, within);
    if (constants && script == null) {
      throw new Trouble.WrongCall(
          "--constants changes the script: name the file to write it to with --script.");
    }
    WhatIf what = asked.design().whatIf();
    Unit unit = what.design().unit();
    Ruler marks = Rulers.asked(ruler, unit);
    Rounding rounding = asked.design().ask(() -> Rounding.of(what, marks, within));
    Map<String, String> settings = new LinkedHashMap<>(what.settings());
    rounding.turns().stream()
        .filter(Rounding.Turn::isTurned)
        .forEach(t -> settings.put(t.knob().name(), t.typed(marks, unit)));
    String command =
        marks.equals(Ruler.usual(unit))
            ? Calls.make(asked.design().path(), settings)
            : Calls.make(asked.design().path(), settings, marks);
    asked.answer(
        () -> RoundJson.of(what.design(), rounding, command),
        () -> lines(what.design(), rounding, command));
    if (script != null) {
      Written written = asked.design().ask(() -> Rewriting.of(what, rounding, constants));
      output.script(script, written, asked);
      if (!written.note().isEmpty()) {
        asked.tell(written.note());
      }
    }
    return Exit.SOUND;
  }

  private static List<String> lines(Design was, Rounding rounding, String command) {
    Unit unit = was.unit();
    RoundingText text = new RoundingText(rounding, unit);
    List<String> lines = new ArrayList<>();
    lines.add(was.title() + " for a ruler of " + rounding.ruler().name());
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("dial", "now", "becomes", ""));
    for (DialChange turned : text.dials()) {
      rows.add(List.of(turned.name(), turned.now(), turned.becomes(), turned.change()));
    }
    if (!rounding.turns().isEmpty()) {
      lines.addAll(Columns.aligned(rows));
    }
    lines.add("  " + text.count());
    text.unturned().ifPresent(u -> lines.add("  " + u));
    text.drawn().ifPresent(d -> lines.add("  " + d));
    lines.addAll(measures(rounding, unit));
    text.left().forEach(l -> lines.add("  " + l));
    text.effect().forEach(e -> lines.add("  " + e));
    text.constants().forEach(c -> lines.add("  " + c.words()));
    lines.add(
        "  Tried " + rounding.trials() + (rounding.trials() == 1 ? " setting." : " settings."));
    lines.add("  " + command);
    return lines;
  }

  /** Every measure, with what it was where that can be told. */
  private static List<String> measures(Rounding rounding, Unit unit) {
    List<Measure> was = rounding.before().toSet().all();
    List<Measure> is = rounding.after().toSet().all();
    int form = rounding.after().toSet().form().size();
    boolean alike = areAlike(rounding);
    List<List<String>> table = new ArrayList<>();
    String now = unit.symbol() + " now";
    table.add(row(alike, "for", now, alike ? "becomes" : unit.symbol(), "reads", "off"));
    List<Measure> sorted =
        ToSet.distinct(is).stream().sorted(Comparator.comparingDouble(m -> m.mm())).toList();
    for (Measure m : sorted.stream().limit(MOST_SHOWN).toList()) {
      int at = is.indexOf(m);
      table.add(
          row(
              alike,
              at < form ? "form" : "cuts",
              alike ? number(was.get(at).mm(), unit) : "",
              number(m.mm(), unit),
              m.text(Telling.english(unit, rounding.ruler())),
              m.isOnRuler() ? "" : signed(m.reading().errorMm(), unit)));
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

  private static String number(double mm, Unit unit) {
    return new Length(mm).number(unit);
  }

  /** Whether both list the same measures in the same order: each changes as the dials do. */
  private static boolean areAlike(Rounding rounding) {
    List<Measure> was = rounding.before().toSet().all();
    List<Measure> is = rounding.after().toSet().all();
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

  private static String signed(double mm, Unit unit) {
    String text = new Length(mm).text(unit);
    return (text.startsWith("-") ? "" : "+") + text;
  }
}
