package facetwright.cli;

import facetwright.cli.command.AimCommand;
import facetwright.cli.command.ChartCommand;
import facetwright.cli.command.CheckCommand;
import facetwright.cli.command.DialsCommand;
import facetwright.cli.command.FacetsCommand;
import facetwright.cli.command.FitCommand;
import facetwright.cli.command.GatherCommand;
import facetwright.cli.command.HelpCommand;
import facetwright.cli.command.LayersCommand;
import facetwright.cli.command.MakeCommand;
import facetwright.cli.command.MaterialsCommand;
import facetwright.cli.command.OpenCommand;
import facetwright.cli.command.RingCommand;
import facetwright.cli.command.RoundCommand;
import facetwright.cli.command.ShelfCommand;
import facetwright.cli.command.SweepCommand;
import facetwright.cli.desk.Trouble;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The front door of the command line. */
@Command(
    name = "facetwright",
    description = "From a small script to the net, the folded form and the papers to make it.",
    mixinStandardHelpOptions = true,
    versionProvider = Main.Version.class,
    subcommands = {
      OpenCommand.class,
      MakeCommand.class,
      CheckCommand.class,
      DialsCommand.class,
      AimCommand.class,
      RoundCommand.class,
      FitCommand.class,
      SweepCommand.class,
      RingCommand.class,
      ChartCommand.class,
      FacetsCommand.class,
      LayersCommand.class,
      MaterialsCommand.class,
      GatherCommand.class,
      ShelfCommand.class,
      HelpCommand.class
    },
    footer = {
      "",
      "With no words it opens the window on the design worked on last, or on the demo;",
      "where there is no display it makes the papers of the demo design and says where.",
      "Exit codes: 0 sound, 1 an error was found in the design or an aim was missed, 2 the script"
          + " or the call is wrong."
    })
public final class Main implements Callable<Integer> {

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  /** Reads the version that the build wrote into the jar. */
  static final class Version implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
      String version = Main.class.getPackage().getImplementationVersion();
      return new String[] {"Facetwright " + (version == null ? "(not packaged)" : version)};
    }
  }

  /** Starts the command line and ends the process with its exit code. */
  public static void main(String[] words) {
    PrintWriter err = writer(System.err);
    int exit;
    try {
      exit = run(words, writer(System.out), err);
    } catch (Throwable fault) {
      exit = Trouble.inside(fault, Gate.before(err));
    }
    System.exit(exit);
  }

  private static PrintWriter writer(PrintStream stream) {
    return new PrintWriter(stream, true, StandardCharsets.UTF_8);
  }

  /**
   * Runs one command.
   *
   * @return the exit code
   */
  static int run(String[] words, PrintWriter out, PrintWriter err) {
    CommandLine line = new CommandLine(new Main());
    line.setOut(Gate.before(out));
    line.setErr(Gate.before(err));
    line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
    line.registerConverter(int.class, Whole::read);
    line.registerConverter(Integer.class, Whole::read);
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setExecutionExceptionHandler(
        (failure, commandLine, _) -> Trouble.show(failure, commandLine));
    return line.execute(words);
  }

  @Override
  public Integer call() throws Exception {
    return Demo.make(spec.commandLine().getOut(), spec.commandLine().getErr());
  }
}
