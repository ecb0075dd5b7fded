package facetwright.worker;

import java.io.File;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/**
 * How a workshop starts its workers and how long it waits for them.
 *
 * @param mainClass the worker's main class
 * @param heapMegabytes how much memory a worker may have
 * @param overtaken processor time that a design may take, at least, while a newer ask waits for it
 *     to end
 * @param patience processor time that a worker may take to answer a cancel; it needs 0.4 s to find
 *     that a script can't be stopped
 * @param longest how long it waits for an answer at all, and for a worker to start
 */
public record Settings(
    String mainClass, int heapMegabytes, Duration overtaken, Duration patience, Duration longest) {

  public static final Settings USUAL =
      new Settings(
          WorkerMain.class.getName(),
          768,
          Duration.ofSeconds(4),
          Duration.ofSeconds(2),
          Duration.ofSeconds(60));

  /** Flags of this process that are for its workers too: start-up cache, who goes first. */
  private static final List<String> HANDED_ON =
      List.of(
          "-XX:AOTCache=",
          "-XX:SharedArchiveFile=",
          "-XX:ThreadPriorityPolicy=",
          "-XX:CompilerThreadPriority=",
          "-XX:-PrintWarnings");

  /**
   * Room for what soon goes again, the same on all machines, and for classes, so that none of the
   * first answers waits for a sweep of everything.
   */
  private static final List<String> ROOM = List.of("-Xmn192m", "-XX:MetaspaceSize=96m");

  /** The same Java and class path as this process, with those of its flags that hold for both. */
  ProcessBuilder command() {
    List<String> words = new ArrayList<>();
    words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    words.add("-Xmx" + heapMegabytes + "m");
    words.add("-XX:+UseSerialGC");
    words.addAll(ROOM);
    words.add("-XX:-CreateCoredumpOnCrash");
    words.add("-XX:+DisplayVMOutputToStderr");
    words.add("-Xlog:disable");
    words.add("--enable-native-access=ALL-UNNAMED");
    words.add("--sun-misc-unsafe-memory-access=allow");
    words.add("-Djava.awt.headless=true");
    ManagementFactory.getRuntimeMXBean().getInputArguments().stream()
        .filter(flag -> HANDED_ON.stream().anyMatch(flag::startsWith))
        .forEach(words::add);
    words.add("-cp");
    words.add(classPath());
    words.add(mainClass);
    return new ProcessBuilder(words).redirectError(ProcessBuilder.Redirect.DISCARD);
  }

  /** Absolute, so that it holds wherever the child stands. */
  private static String classPath() {
    List<String> parts = new ArrayList<>();
    for (String part : System.getProperty("java.class.path").split(File.pathSeparator)) {
      parts.add(Path.of(part).toAbsolutePath().toString());
    }
    return String.join(File.pathSeparator, parts);
  }
}
