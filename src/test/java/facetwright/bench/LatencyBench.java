package facetwright.bench;

import com.sun.javafx.tk.RenderJob;
import com.sun.javafx.tk.Toolkit;
import facetwright.workbench.Room;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.desk.Work;
import facetwright.worker.Reply;
import facetwright.worker.Request;
import facetwright.worker.Settings;
import facetwright.worker.Workshop;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;

/**
 * From a key press to the repainted net, over every library design, with everything warm, ten keys
 * a second as a quick typist has it; where the time goes; and the longest gap between two frames
 * while a script runs that never ends. A frame at 60 Hz lasts 16.7 ms.
 *
 * <p>{@code scripts/bench latency} runs it.
 */
public final class LatencyBench {
  /** So many keys a design, one after the other, until the compiler has little left to do. */
  private static final int WARM = 250;

  /** So long the compiler has after those to work off what it has queued, as when one thinks. */
  private static final long REST_MILLIS = 3000;

  /** So many keys as a typist has them before those that are counted. */
  private static final int AGAIN = 10;

  private static final int COUNTED = 60;
  private static final long BETWEEN_KEYS_MILLIS = 100;

  /** The moments of one key press, in order. */
  private static final List<String> MOMENTS =
      List.of("pressed", "typed", "asked", "answered", "heard", "laid", "pulsed", "painted");

  private final Workshop workshop = new Workshop(Settings.USUAL);
  private final long[] moments = new long[MOMENTS.size()];
  private final List<long[]> keys = new ArrayList<>();
  private Room room;
  private Desk desk;
  private Future<?> painting;

  private LatencyBench() {}

  /** Prints the figures. */
  public static void main(String[] words) throws Exception {
    BenchRoom.measure(
        () ->
            new LatencyBench()
                .run(
                    Path.of(words.length > 0 ? words[0] : "library"),
                    words.length > 1 ? words[1] : ""));
  }

  /**
   * @param part a pattern; only designs with it in their names, two at least
   */
  private void run(Path library, String part) throws Exception {
    BenchRoom open = new BenchRoom(this::ask, this::hear);
    desk = open.desk();
    room = open.room();
    List<Path> designs;
    try (Stream<Path> files = Files.list(library)) {
      designs =
          files
              .filter(f -> f.toString().endsWith(".js"))
              .filter(f -> Pattern.compile(part).matcher(f.getFileName().toString()).find())
              .sorted()
              .toList();
    }
    for (Path design : designs) {
      typing(Files.readString(design), design, 0, WARM, 0);
      Thread.sleep(REST_MILLIS);
    }
    List<Double> all = new ArrayList<>();
    System.out.printf("%-24s %8s %8s%n", "design", "p50 ms", "p95 ms");
    for (Path design : designs) {
      double[] times =
          typing(Files.readString(design), design, BETWEEN_KEYS_MILLIS, AGAIN, COUNTED);
      Arrays.stream(times).forEach(all::add);
      print(design.getFileName().toString(), times);
    }
    print("all", all.stream().mapToDouble(d -> d).toArray());
    for (int m = 1; m < moments.length; m++) {
      int to = m;
      print(
          "  until " + MOMENTS.get(m),
          keys.stream().mapToDouble(k -> (k[to] - k[to - 1]) / 1e6).toArray());
    }
    System.out.printf(
        Locale.ROOT, "longest gap between frames beside a runaway: %.1f ms%n", runaway());
    workshop.close();
  }

  private CompletableFuture<Reply> ask(Request request) {
    note("asked");
    return workshop
        .ask(request)
        .thenApply(
            reply -> {
              note("answered");
              return reply;
            });
  }

  private void hear(Runnable work) {
    Platform.runLater(
        () -> {
          note("heard");
          work.run();
          note("laid");
        });
  }

  private void note(String moment) {
    moments[MOMENTS.indexOf(moment)] = System.nanoTime();
  }

  private static void print(String name, double[] times) {
    double[] sorted = times.clone();
    Arrays.sort(sorted);
    System.out.printf(
        Locale.ROOT,
        "%-24s %8.1f %8.1f%n",
        name,
        sorted[sorted.length / 2],
        sorted[(int) (sorted.length * 0.95)]);
  }

  /** Enter at the head of the script moves all it makes a line down; Delete moves it back. */
  private double[] typing(String script, Path file, long between, int warm, int counted)
      throws Exception {
    shown(() -> desk.lay(file, Work.of(script), Work.of(script)));
    double[] times = new double[counted];
    for (int i = 0; i < warm + counted; i++) {
      boolean add = i % 2 == 0;
      Thread.sleep(between);
      note("pressed");
      shown(
          () -> {
            var area = room.card().area();
            if (add) {
              area.insertText(0, "\n");
            } else {
              area.deleteText(0, 1);
            }
          });
      if (i >= warm) {
        times[i - warm] = (moments[moments.length - 1] - moments[0]) / 1e6;
        keys.add(moments.clone());
      }
    }
    return times;
  }

  /** Does something and waits until the net that comes of it was painted and shown. */
  private void shown(Runnable deed) throws Exception {
    CountDownLatch painted = new CountDownLatch(1);
    BenchRoom.onStage(
        () -> {
          var design = desk.design().get();
          javafx.beans.value.ChangeListener<Object> once =
              new javafx.beans.value.ChangeListener<>() {
                @Override
                public void changed(
                    javafx.beans.value.ObservableValue<?> value, Object before, Object now) {
                  desk.design().removeListener(this);
                  new AnimationTimer() {
                    @Override
                    public void handle(long now) {
                      stop();
                      note("pulsed");
                      afterPainting(painted);
                    }
                  }.start();
                }
              };
          desk.design().addListener(once);
          note("typed");
          deed.run();
          return design;
        });
    if (!painted.await(20, TimeUnit.SECONDS)) {
      throw new IllegalStateException("no net came: " + desk.fault().get());
    }
  }

  /**
   * Counts down when the frame of the running pulse is painted: the toolkit lays it out and hands
   * it to its painter in this pulse, and a painter works in the order it is asked.
   */
  private void afterPainting(CountDownLatch painted) {
    RenderJob after =
        new RenderJob(
            () -> {
              note("painted");
              painted.countDown();
            });
    Platform.runLater(() -> painting = Toolkit.getToolkit().addRenderJob(after));
  }

  private double runaway() throws Exception {
    AtomicLong longest = new AtomicLong();
    AnimationTimer timer =
        new AnimationTimer() {
          private long last;

          @Override
          public void handle(long now) {
            long at = System.nanoTime();
            if (last != 0) {
              longest.accumulateAndGet(at - last, Math::max);
            }
            last = at;
          }
        };
    BenchRoom.onStage(
        () -> {
          timer.start();
          desk.text().set("function f() { try { f(); } catch (e) { f(); } }\nf();\n");
          return null;
        });
    Thread.sleep(6000);
    BenchRoom.onStage(() -> timer.stop());
    return longest.get() / 1e6;
  }
}
