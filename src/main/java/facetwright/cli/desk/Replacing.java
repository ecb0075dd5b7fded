package facetwright.cli.desk;

import picocli.CommandLine.Option;

/** The option of commands that write files where others may stand. */
public final class Replacing {
  @Option(
      names = "--replace",
      description =
          "replace files that are not earlier papers of this design, too; they are kept in a"
              + " folder replaced-files beside them")
  private boolean asked;

  /** Whether whatever stands there may be replaced. */
  public boolean isAsked() {
    return asked;
  }
}
