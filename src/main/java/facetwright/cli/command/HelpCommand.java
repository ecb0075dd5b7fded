package facetwright.cli.command;

import facetwright.cli.desk.Exit;
import facetwright.cli.desk.Trouble;
import java.io.PrintWriter;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows what commands there are, or how one is called. */
@Command(
    name = "help",
    mixinStandardHelpOptions = true,
    description = "Shows what commands there are, or how one of them is called.")
public final class HelpCommand implements Callable<Integer> {
  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "COMMAND",
      description = "the command to tell of")
  private String command;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    CommandLine main = spec.commandLine().getParent();
    Map<String, CommandLine> commands = main.getSubcommands();
    if (command != null && !commands.containsKey(command)) {
      throw new Trouble.WrongCall(
          "there is no command \""
              + command
              + "\". There are "
              + String.join(", ", commands.keySet())
              + ".");
    }
    PrintWriter out = spec.commandLine().getOut();
    (command == null ? main : commands.get(command)).usage(out);
    out.flush();
    return Exit.SOUND;
  }
}
