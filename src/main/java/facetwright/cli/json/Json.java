package facetwright.cli.json;

import picocli.CommandLine.Option;

/** The option of commands that answer other programs. */
public final class Json {
  @Option(names = "--json", description = "one JSON object instead of words")
  private boolean asked;

  /** Whether an object is wanted instead of words. */
  public boolean isAsked() {
    return asked;
  }
}
