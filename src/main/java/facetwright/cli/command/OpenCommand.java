package facetwright.cli.command;

import facetwright.cli.desk.Trouble;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Opens the window; it comes here only where there is none to be had. */
@Command(
    name = "open",
    mixinStandardHelpOptions = true,
    description = "Opens the window on a design.")
public final class OpenCommand implements Callable<Integer> {
  @Parameters(paramLabel = "FILE", description = "the design's script")
  private Path file;

  @Override
  public Integer call() {
    throw new Trouble.WrongCall(
        "no window was opened. Make the papers without one: facetwright make " + file);
  }
}
