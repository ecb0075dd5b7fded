package facetwright;

import facetwright.cli.Training;
import facetwright.workbench.Workbench;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;

/**
 * A run over everything, from which the start-up cache learns what is used: the commands, then the
 * window, which is shown to nobody. Where the window can't be opened the commands alone will do.
 */
public final class Rehearsal {
  private Rehearsal() {}

  /**
   * Runs it.
   *
   * @param words the library's folder
   */
  public static void main(String[] words) throws Exception {
    Training.main(words);
    System.setProperty("glass.platform", "Headless");
    System.setProperty("prism.order", "sw");
    Path state = Files.createTempDirectory("facetwright");
    System.setProperty("facetwright.state", state.toString());
    Optional<String> hindrance = Workbench.rehearse();
    hindrance.ifPresent(h -> System.err.println("facetwright: without the window: " + h));
    try (var files = Files.walk(state)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}
