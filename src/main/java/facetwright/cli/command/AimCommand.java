package facetwright.cli.command;

import facetwright.aim.Goal;
import facetwright.aim.GoalReader;
import facetwright.aim.Grid;
import facetwright.aim.Outcome;
import facetwright.aim.OutcomeText;
import facetwright.cli.desk.Asked;
import facetwright.cli.desk.Calls;
import facetwright.cli.desk.Exit;
import facetwright.cli.desk.GridOption;
import facetwright.cli.desk.Trouble;
import facetwright.cli.json.AimJson;
import facetwright.measure.Unit;
import facetwright.message.Refused;
import facetwright.net.sheet.SheetSize;
import facetwright.script.WhatIf;
import facetwright.script.design.Design;
import facetwright.script.design.Dial;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Solves for dials so that a design comes to what is wanted. */
@Command(
    name = "aim",
    mixinStandardHelpOptions = true,
    description = {
      "Finds the dials that make a design come to what you want, on your ruler's marks.",
      "Goals: height=120  width=80  depth=80  volume=250ml  area=300cm2  gap=0  fits=Letter "
          + " ring=8",
      "Put goals before --set. Exit code 1 says that a goal can't be reached."
    })
public final class AimCommand implements Callable<Integer> {
  @Mixin private Asked asked;

  @Parameters(
      index = "1..*",
      paramLabel = "goal",
      description = "what it should come to, such as height=120 or fits=Letter")
  private List<String> goals = List.of();

  @Option(
      names = "--turn",
      paramLabel = "dial",
      split = ",",
      description = "the dials that may be turned (usual: those without steps)")
  private List<String> turn = List.of();

  @Mixin private GridOption grid;

  @Override
  public Integer call() throws Exception {
    if (goals.isEmpty()) {
      throw new Trouble.WrongCall(
          "aim needs a goal, such as height=120 or fits=Letter. Goals stand after the file and"
              + " before --set.");
    }
    WhatIf what = asked.design().whatIf();
    Unit unit = what.design().unit();
    List<Goal> wanted =
        goals.stream().map(g -> read(g, unit, () -> GoalReader.read(g, unit))).toList();
    Grid ruler = grid.of(unit);
    Outcome outcome;
    try {
      List<String> names = turn.stream().map(String::strip).toList();
      outcome = asked.design().ask(() -> what.aim(wanted, names, ruler));
    } catch (IllegalArgumentException e) {
      throw new Trouble.WrongCall("--turn: " + Refused.text(e, unit) + ".");
    }
    String command = Calls.make(asked.design().path(), what.settings(outcome));
    asked.answer(
        () -> AimJson.of(what.design(), outcome, command),
        () -> lines(what.design(), outcome, command));
    return Exit.of(outcome.isMet());
  }

  private static <T> T read(String written, Unit unit, Supplier<T> reader) {
    try {
      return reader.get();
    } catch (IllegalArgumentException e) {
      String end = e.getMessage().endsWith("?") ? "" : ".";
      throw new Trouble.WrongCall(written + ": " + Refused.text(e, unit) + end);
    }
  }

  private static List<String> lines(Design made, Outcome outcome, String command) {
    List<String> lines = new ArrayList<>();
    lines.add(made.title());
    OutcomeText.turns(outcome).forEach(t -> lines.add("  " + t));
    OutcomeText.goals(outcome).forEach(g -> lines.add("  " + g));
    OutcomeText.hurdles(outcome).forEach(h -> lines.add("  " + h));
    String others = others(made, outcome);
    if (!outcome.isMet() && !others.isEmpty()) {
      lines.add("  Other dials may help; let them turn with --turn: " + others + ".");
    }
    for (Outcome.Reached reached : outcome.goals()) {
      if (reached.goal() instanceof Goal.Fit(SheetSize sheet)
          && reached.status() == Outcome.Status.MET
          && !sheet.name().equals(made.laid().stock().name())) {
        lines.add(
            "  The script has its papers made for "
                + made.laid().stock().name()
                + "; facetwright fit --sheet changes that, too.");
      }
    }
    lines.add("  " + OutcomeText.tried(outcome));
    lines.add("  " + command);
    return lines;
  }

  private static String others(Design made, Outcome outcome) {
    List<String> turned = outcome.turns().stream().map(t -> t.knob().name()).toList();
    return made.dials().stream()
        .map(Dial::name)
        .filter(name -> !turned.contains(name))
        .collect(Collectors.joining(", "));
  }
}
