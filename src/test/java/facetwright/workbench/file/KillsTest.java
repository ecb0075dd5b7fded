package facetwright.workbench.file;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.workbench.WindowToKill;
import facetwright.workbench.desk.Work;
import facetwright.workbench.file.Worked.What;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The window is killed at random moments of somebody's work. At most one second of it is lost, the
 * turned dials included, and the script on disk is one that was saved, whole. {@code
 * -Dfacetwright.kills=100} kills that often; {@code -Dfacetwright.kills.seed} chooses another hand.
 */
class KillsTest {
  private static final int KILLS = Integer.getInteger("facetwright.kills", 3);
  private static final long SEED = Long.getLong("facetwright.kills.seed", 1);
  private static final long MOST_LOST = 1000;
  private static final int MOST_STEPS = 80;
  private static final int LONGEST = 600;

  private static final String SCRIPT =
      """
      design("Plain box", { units: "mm" });
      const tall = dial("tall", 30, { from: 20, to: 60 });
      const side = dial("side", 30, { from: 20, to: 60 });
      prism({ sides: 4, side, height: tall }).unfold({ tab: 6 });
      """;

  @TempDir private Path folder;

  /** What one kill came to. */
  private record Kill(long lost, int steps, int savings, boolean dialsTurned, boolean offered) {}

  @Test
  void atMostASecondIsLost() throws Exception {
    Random random = new Random(SEED);
    List<Kill> kills = new ArrayList<>();
    for (int i = 0; i < KILLS; i++) {
      kills.add(kill(Files.createDirectory(folder.resolve("kill-" + i)), random));
    }
    List<Long> lost = kills.stream().map(Kill::lost).sorted().toList();
    System.out.printf(
        "%d kills, %d steps, %d savings, %d times dials turned, %d times offered; lost: median %d"
            + " ms, most %d ms%n",
        KILLS,
        kills.stream().mapToInt(Kill::steps).sum(),
        kills.stream().mapToInt(Kill::savings).sum(),
        kills.stream().filter(Kill::dialsTurned).count(),
        kills.stream().filter(Kill::offered).count(),
        lost.get(lost.size() / 2),
        lost.getLast());
    assertThat(kills).extracting(Kill::steps).as("steps of work").allMatch(s -> s > 1);
  }

  private Kill kill(Path at, Random random) throws Exception {
    Path state = at.resolve("state");
    Path log = at.resolve("log");
    Path file = Files.writeString(at.resolve("box.js"), SCRIPT);
    Files.createDirectories(state);
    Files.writeString(state.resolve("state.json"), "{\"tour.seen\":\"yes\"}");
    Process window = start(state, file, log, random.nextLong());
    long killed;
    try (var words = window.inputReader()) {
      for (int step = 1 + random.nextInt(MOST_STEPS); step >= 0; step--) {
        assertThat(words.readLine()).as("a step of work").isNotNull();
      }
      assertThat(window.waitFor(1 + random.nextInt(LONGEST), TimeUnit.MILLISECONDS))
          .as("it ended by itself")
          .isFalse();
      killed = System.currentTimeMillis();
      window.destroyForcibly().waitFor();
    } finally {
      window.destroyForcibly();
    }
    return lookAt(at, state, file, Worked.read(log), killed);
  }

  private static Process start(Path state, Path file, Path log, long seed) throws Exception {
    List<String> words = new ArrayList<>();
    words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    words.addAll(List.of(Files.readString(Path.of("scripts", "jvm-flags")).strip().split(" ")));
    words.add("-XX:TieredStopAtLevel=1");
    words.add("-Dfacetwright.home=" + Path.of("").toAbsolutePath());
    words.add("-D" + StateFolder.PROPERTY + "=" + state);
    words.addAll(List.of("-cp", System.getProperty("java.class.path")));
    words.add(WindowToKill.class.getName());
    words.addAll(List.of(file.toString(), log.toString(), Long.toString(seed)));
    return new ProcessBuilder(words).redirectError(state.resolveSibling("errors").toFile()).start();
  }

  /** Starts anew on what the killed program left, and compares that with what was written down. */
  private static Kill lookAt(Path at, Path state, Path file, List<Worked> steps, long killed)
      throws Exception {
    assertThat(Files.readString(file))
        .as("the script on disk is whole: as it was, or one that was saved")
        .isIn(
            Stream.concat(
                    Stream.of(SCRIPT),
                    steps.stream().filter(s -> s.what() != What.MADE).map(s -> s.work().text()))
                .toList());
    Sitting next = new Sitting(state, at.resolve("library"));
    next.filing.begin(file, "none.js");
    next.keeping.offer();
    boolean offered = next.said().equals("Facetwright ended unexpectedly");
    if (offered) {
      next.choose("Open");
    }
    Work found = next.desk.work();
    next.keeping.close();
    int last = steps.size() - 1;
    while (last >= 0 && !steps.get(last).work().equals(found)) {
      last--;
    }
    assertThat(last).as("%s was never made, in %s", found, at).isNotNegative();
    int missed = last + 1;
    while (missed < steps.size() && steps.get(missed).work().equals(found)) {
      missed++;
    }
    long lost = missed < steps.size() ? killed - steps.get(missed).at() : 0;
    assertThat(lost).as("milliseconds lost in %s", at).isLessThanOrEqualTo(MOST_LOST);
    return new Kill(
        lost,
        steps.size(),
        (int) steps.stream().filter(s -> s.what() == What.SAVED).count(),
        !steps.getLast().work().dials().isEmpty(),
        offered);
  }
}
