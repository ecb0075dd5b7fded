package facetwright.cli.command;

import facetwright.aim.KnobMend;
import facetwright.cli.desk.Asked;
import facetwright.cli.desk.Exit;
import facetwright.cli.desk.Report;
import facetwright.cli.json.CheckJson;
import facetwright.script.WhatIf;
import facetwright.script.design.Design;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Measures a design and lists what its maker should know. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = "Measures a design and says what to mend before good paper is cut.")
public final class CheckCommand implements Callable<Integer> {
  @Mixin private Asked asked;

  @Override
  public Integer call() throws Exception {
    WhatIf what = asked.design().whatIf();
    Design made = what.design();
    Optional<KnobMend> mend = asked.design().ask(what::mend);
    asked.said(made);
    asked.answer(() -> CheckJson.of(made, mend), () -> Report.lines(made, mend));
    return Exit.of(made.isSound());
  }
}
