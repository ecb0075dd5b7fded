package facetwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;

/** One call of the program, as its user makes it, and what came of it. */
record Run(int exit, String out, String err) {
  static Run run(String... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int exit = Main.run(words, new PrintWriter(out, true), new PrintWriter(err, true));
    return new Run(exit, out.toString(), err.toString());
  }

  /** All that is said by a call that ends so. */
  static String run(int exit, String... words) {
    Run run = run(words);
    assertThat(run.exit).as(run.err).isEqualTo(exit);
    return run.out + run.err;
  }
}
