package facetwright.cli;

import picocli.CommandLine.Option;

/** The option of commands that answer other programs. */
final class Json {
  @Option(names = "--json", description = "one JSON object instead of words")
  private boolean asked;

  /** Whether an object is wanted instead of words. */
  boolean isAsked() {
    return asked;
  }
}
