package facetwright.cli.command;

import facetwright.cli.desk.Exit;
import facetwright.cli.desk.Library;
import facetwright.script.ScriptHeader;
import facetwright.script.design.Design;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Lists the library. */
@Command(
    name = "shelf",
    mixinStandardHelpOptions = true,
    description = "Lists the library designs, one a line.")
public final class ShelfCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    for (Path file : Library.scripts()) {
      Design.Header header = ScriptHeader.read(Files.readString(file));
      out.printf("%-36s %s%n", Library.shown(file), String.join(", ", header.tags()));
    }
    out.flush();
    return Exit.SOUND;
  }
}
