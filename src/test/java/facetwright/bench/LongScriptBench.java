package facetwright.bench;

import facetwright.workbench.Room;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.desk.Work;
import facetwright.worker.Settings;
import facetwright.worker.Workshop;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;

/**
 * How long the window's thread works on laying down a long script, and on each letter typed in its
 * middle and at its end, over the length of the script; in its processor time, so that the figures
 * hold on a busy machine, too. Beside it, when the design came.
 *
 * <p>{@code scripts/bench long} runs it.
 */
public final class LongScriptBench {
  private static final int KEYS = 16;
  private Desk desk;
  private Room room;

  private LongScriptBench() {}

  /** Prints the figures. */
  public static void main(String[] words) throws Exception {
    BenchRoom.measure(
        () ->
            new LongScriptBench()
                .run(
                    Path.of(words[0]),
                    Arrays.stream(words).skip(1).mapToInt(Integer::parseInt).toArray()));
  }

  private void run(Path file, int[] kilos) throws Exception {
    String script = Files.readString(file);
    Workshop workshop = new Workshop(Settings.USUAL);
    BenchRoom open = new BenchRoom(workshop::ask, Platform::runLater);
    desk = open.desk();
    room = open.room();
    BenchRoom.onStage(() -> desk.lay(file, Work.of(script), Work.of(script)));
    System.out.printf(
        "%8s %8s %10s %10s %10s %10s %10s %12s%n",
        "KB", "lines", "lay ms", "key p50", "key max", "end p50", "end max", "answer ms");
    for (int kilo : kilos) {
      String longer = longer(script, kilo << 10);
      long begun = spent();
      long from = System.nanoTime();
      BenchRoom.onStage(() -> desk.lay(file, Work.of(longer), Work.of(longer)));
      pulse();
      double lay = (spent() - begun) / 1e6;
      while (BenchRoom.onStage(() -> desk.working().get())) {
        Thread.sleep(5);
      }
      double answer = (System.nanoTime() - from) / 1e6;
      double[] middle = typed(longer.indexOf('\n', longer.length() / 2));
      double[] end = typed(BenchRoom.onStage(() -> room.card().area().getLength()));
      System.out.printf(
          "%8d %8d %10.0f %10.1f %10.1f %10.1f %10.1f %12.0f %s%n",
          kilo,
          longer.lines().count(),
          lay,
          middle[KEYS / 2],
          middle[KEYS - 1],
          end[KEYS / 2],
          end[KEYS - 1],
          answer,
          BenchRoom.onStage(() -> desk.fault().get() == null ? "" : desk.fault().get().message()));
    }
  }

  /** What each letter took that was typed from a place on, the quickest first, in ms. */
  private double[] typed(int from) throws Exception {
    double[] times = new double[KEYS];
    for (int k = 0; k < KEYS; k++) {
      int at = from + k;
      long pressed = spent();
      BenchRoom.onStage(
          () -> {
            room.card().area().moveTo(at);
            room.card().area().replaceSelection("x");
            room.card().area().requestFollowCaret();
            return null;
          });
      pulse();
      times[k] = (spent() - pressed) / 1e6;
      Thread.sleep(60);
    }
    Arrays.sort(times);
    return times;
  }

  /** Processor time of the window's thread so far, in ns. */
  private static long spent() throws Exception {
    return BenchRoom.onStage(() -> ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime());
  }

  private static String longer(String script, int length) {
    StringBuilder all = new StringBuilder(script);
    for (int i = 0; all.length() < length; i++) {
      all.append("\nfunction part")
          .append(i)
          .append("(wide, tall) { // a part of the harbour\n")
          .append(
              "  const names = [\"quay\", \"wall\", `ferry ${wide}`].map((n) => n + tall * 2.5);\n")
          .append("  return names.length > 2 ? { wide: wide, tall: tall / 2 } : null;\n}\n");
    }
    return all.toString();
  }

  /** Waits until a frame has been laid out. */
  private static void pulse() throws Exception {
    CompletableFuture<Void> done = new CompletableFuture<>();
    Platform.runLater(
        () ->
            new javafx.animation.AnimationTimer() {
              private int frames;

              @Override
              public void handle(long now) {
                if (++frames == 2) {
                  stop();
                  done.complete(null);
                }
              }
            }.start());
    done.get(300, TimeUnit.SECONDS);
  }
}
