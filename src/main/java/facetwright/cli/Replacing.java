package facetwright.cli;

import picocli.CommandLine.Option;

/** The option of commands that write files where others may stand. */
final class Replacing {
  @Option(
      names = "--replace",
      description =
          "replace files that are not earlier papers of this design, too; they are kept in a"
              + " folder replaced-files beside them")
  private boolean asked;

  /** Whether whatever stands there may be replaced. */
  boolean isAsked() {
    return asked;
  }
}
