package facetwright.cli;

import java.io.PrintWriter;

/** Says on the error stream what is being done, once it has taken longer than a moment. */
final class Progress {
  private static final long MOMENT = 1_000_000_000L;

  private final PrintWriter err;
  private final long start = System.nanoTime();

  Progress(PrintWriter err) {
    this.err = err;
  }

  void step(String what) {
    if (System.nanoTime() - start > MOMENT) {
      err.println(what + " ...");
      err.flush();
    }
  }

  void end() {
    err.flush();
  }
}
