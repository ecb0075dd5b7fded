package facetwright;

import facetwright.workbench.Workbench;
import java.util.Locale;

/**
 * Where the program begins: the window for those who name no command, or {@code open} a file; the
 * command line for the rest, and where there is no screen.
 */
public final class Start {
  private Start() {}

  /** Starts the window or the command line. */
  public static void main(String[] words) {
    boolean asksForWindow = words.length == 0 || words[0].equals("open");
    if (asksForWindow && hasScreen()) {
      Workbench.open(words);
    } else {
      facetwright.cli.Main.main(words);
    }
  }

  private static boolean hasScreen() {
    if (System.getProperty("glass.platform") != null) {
      return true;
    }
    String system = System.getProperty("os.name").toLowerCase(Locale.ROOT);
    boolean always = system.contains("mac") || system.contains("windows");
    String display = System.getenv("DISPLAY");
    return always || (display != null && !display.isBlank());
  }
}
