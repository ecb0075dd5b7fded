package facetwright.cli;

import facetwright.aim.Mend;
import facetwright.script.Design;
import facetwright.script.WhatIf;
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
final class CheckCommand implements Callable<Integer> {
  @Mixin private DesignFile design;

  @Mixin private Json json;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws Exception {
    WhatIf what = design.whatIf();
    Design made = what.design();
    Optional<Mend> mend = design.ask(what::mend);
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
