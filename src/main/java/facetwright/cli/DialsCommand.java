package facetwright.cli;

import facetwright.aim.Slopes;
import facetwright.script.WhatIf;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Lists a design's dials and what turning each does. */
@Command(
    name = "dials",
    mixinStandardHelpOptions = true,
    description = "Lists a design's dials and what turning each by one mark of the ruler does.")
final class DialsCommand implements Callable<Integer> {
  @Mixin private DesignFile design;

  @Mixin private Json json;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws Exception {
    WhatIf what = design.whatIf();
    Slopes slopes = design.ask(what::slopes);
    PrintWriter out = spec.commandLine().getOut();
    if (json.isAsked()) {
      out.println(DialsJson.of(what.design(), slopes));
    } else {
      DialsTable.lines(what.design(), slopes).forEach(out::println);
    }
    out.flush();
    return Exit.SOUND;
  }
}
