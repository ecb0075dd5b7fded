package facetwright.workbench;

import java.io.PrintStream;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * Keeps from the terminal what the toolkit says of itself at every start; its faults go through.
 */
final class ToolkitText {
  private static final Logger LOG = Logger.getLogger("javafx");

  /** How it begins to tell the number of frames a second that it was set to. */
  private static final String PULSE = "Setting PULSE_DURATION";

  private ToolkitText() {}

  /** To be called before the toolkit starts. */
  static void hush() {
    // Its only word at usual starts is about how it was packed.
    LOG.setLevel(Level.SEVERE);
    System.setErr(new Errors(System.err));
  }

  private static final class Errors extends PrintStream {
    Errors(PrintStream behind) {
      super(behind, true, behind.charset());
    }

    @Override
    public void println(String line) {
      if (line == null || !line.startsWith(PULSE)) {
        super.println(line);
      }
    }
  }
}
