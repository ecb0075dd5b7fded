package facetwright.cli.command;

import facetwright.aim.KnobMend;
import facetwright.cli.desk.DesignFile;
import facetwright.cli.desk.Exit;
import facetwright.cli.desk.Report;
import facetwright.cli.json.CheckJson;
import facetwright.cli.json.Json;
import facetwright.script.WhatIf;
import facetwright.script.design.Design;
import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Measures a design and lists what its maker should know. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = "Measures a design and says what to mend before good paper is cut.")
public final class CheckCommand implements Callable<Integer> {
  @Mixin private DesignFile design;

  @Mixin private Json json;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws Exception {
    WhatIf what = design.whatIf();
    Design made = what.design();
    Optional<KnobMend> mend = design.ask(what::mend);
    PrintWriter out = spec.commandLine().getOut();
    made.said().forEach(line -> spec.commandLine().getErr().println(line));
    if (json.isAsked()) {
      out.println(CheckJson.of(made, mend));
    } else {
      Report.lines(made, mend).forEach(out::println);
    }
    out.flush();
    return made.isSound() ? Exit.SOUND : Exit.ERROR_FOUND;
  }
}
