package facetwright;

import facetwright.workbench.Workbench;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * Where the program begins: the window for those who name no command, or {@code open} a file; the
 * command line for the rest, and where no window can be opened.
 */
public final class Start {
  private Start() {}

  /** Starts the window or the command line. */
  public static void main(String[] words) {
    if (asksForWindow(words)) {
      Optional<String> hindrance =
          hasScreen() ? Workbench.open(words) : Optional.of("there is no display");
      if (hindrance.isEmpty()) {
        return;
      }
      System.err.println(
          "facetwright: the window can't be opened here: "
              + hindrance.get()
              + (words.length == 0 ? ". Making the demo's papers instead ..." : "."));
    }
    facetwright.cli.Main.main(words);
  }

  /** No words at all, or "open" and one file. */
  static boolean asksForWindow(String[] words) {
    return words.length == 0
        || (words.length == 2
            && words[0].equals("open")
            && Arrays.stream(words).noneMatch(w -> w.startsWith("-")));
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
