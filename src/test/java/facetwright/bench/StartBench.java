package facetwright.bench;

import facetwright.workbench.Room;
import facetwright.workbench.Workbench;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import javafx.animation.AnimationTimer;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.TextArea;
import javafx.stage.Stage;
import javafx.stage.Window;

/**
 * From the start of a process to a window one can work in, beside a bare JavaFX window with a text
 * area, turn and turn about in one run. Ours counts twice: when the script stands in the window,
 * and when its net does. Needs the packed program and a display.
 *
 * <p>{@code scripts/bench start} runs it.
 */
public final class StartBench {
  private StartBench() {}

  /**
   * Prints the medians.
   *
   * @param words the program's folder, how often, then more flags for every process
   */
  public static void main(String[] words) throws Exception {
    Path home = Path.of(words[0]).toAbsolutePath();
    int rounds = Integer.parseInt(words[1]);
    List<String> more = Arrays.asList(words).subList(2, words.length);
    Path state = Files.createTempDirectory("facetwright-start");
    List<String> flags =
        new ArrayList<>(
            List.of(Files.readString(home.resolve("scripts/jvm-flags")).trim().split(" ")));
    flags.addAll(more);
    String packed = Files.readString(home.resolve("target/class-path")).trim();
    Map<String, List<String>> kinds = new LinkedHashMap<>();
    String tests = home.resolve("target/test-classes").toString();
    String cache = "-XX:AOTCache=" + home.resolve("target/facetwright.aot");
    List<String> ours =
        List.of("-Dfacetwright.home=" + home, "-Dfacetwright.state=" + state.resolve("state"));
    kinds.put("bare window", with(flags, List.of(), packed + ":" + tests, Bare.class));
    List<String> cached = new ArrayList<>(ours);
    cached.add(cache);
    kinds.put("ours", with(flags, cached, packed + ":" + tests, Ours.class));
    kinds.put("ours, no cache", with(flags, ours, packed + ":" + tests, Ours.class));
    Map<String, List<Double>> times = new LinkedHashMap<>();
    for (int i = 0; i < rounds; i++) {
      for (Map.Entry<String, List<String>> kind : kinds.entrySet()) {
        run(kind.getValue())
            .forEach(
                (step, time) ->
                    times
                        .computeIfAbsent(kind.getKey() + ": " + step, _ -> new ArrayList<>())
                        .add(time));
      }
    }
    double bare = median(times.values().iterator().next());
    times.forEach(
        (what, all) ->
            System.out.printf(
                Locale.ROOT, "%-28s %7.0f ms   %.2f%n", what, median(all), median(all) / bare));
  }

  private static List<String> with(
      List<String> flags, List<String> more, String path, Class<?> main) {
    return Stream.of(
            List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()),
            flags,
            more,
            List.of("-cp", path, main.getName()))
        .flatMap(List::stream)
        .toList();
  }

  private static Map<String, Double> run(List<String> command) throws IOException {
    long begin = System.nanoTime();
    Process process =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
    Map<String, Double> seen = new LinkedHashMap<>();
    try (BufferedReader lines =
        new BufferedReader(
            new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        seen.put(line, (System.nanoTime() - begin) / 1e6);
      }
    }
    if (seen.isEmpty()) {
      throw new IOException("no window came: " + String.join(" ", command));
    }
    return seen;
  }

  private static double median(List<Double> all) {
    return all.stream().sorted().skip(all.size() / 2).findFirst().orElseThrow();
  }

  /** Says something, as soon as the next frame after this one begins. */
  private static void sayShown(String what, Runnable then) {
    new AnimationTimer() {
      private int frames;

      @Override
      public void handle(long now) {
        if (++frames == 2) {
          stop();
          System.out.println(what);
          System.out.flush();
          then.run();
        }
      }
    }.start();
  }

  private static void end() {
    Runtime.getRuntime().halt(0);
  }

  /** A window with a text area and nothing else. */
  public static final class Bare {
    public static void main(String[] words) {
      Application.launch(TextWindow.class, words);
    }
  }

  /** What is bare. */
  public static final class TextWindow extends Application {
    @Override
    public void start(Stage stage) {
      stage.setScene(new Scene(new TextArea("a text"), 1280, 800));
      stage.show();
      sayShown("shown", StartBench::end);
    }
  }

  /** The program's window, watched from inside. */
  public static final class Ours {
    public static void main(String[] words) {
      Thread watch = new Thread(Ours::watch);
      watch.setDaemon(true);
      watch.start();
      Workbench.open(words);
    }

    private static void watch() {
      boolean[] seen = new boolean[2];
      while (true) {
        try {
          Thread.sleep(5);
          Platform.runLater(() -> look(seen));
        } catch (IllegalStateException e) {
          // The toolkit has not started yet.
        } catch (InterruptedException e) {
          return;
        }
      }
    }

    private static void look(boolean[] seen) {
      Window.getWindows().stream()
          .map(Window::getScene)
          .filter(Objects::nonNull)
          .flatMap(scene -> scene.getRoot().lookupAll(".room").stream())
          .filter(Room.class::isInstance)
          .map(Room.class::cast)
          .forEach(room -> look(room, seen));
    }

    private static void look(Room room, boolean[] seen) {
      if (!seen[0] && !room.card().area().getText().isEmpty()) {
        seen[0] = true;
        sayShown("script", () -> {});
      }
      // The dials come with the net.
      if (!seen[1] && !room.drawer().lookupAll(".slider").isEmpty()) {
        seen[1] = true;
        sayShown("net", StartBench::end);
      }
    }
  }
}
