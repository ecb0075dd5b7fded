package facetwright.bench;

import facetwright.workbench.desk.Desk;
import facetwright.workbench.desk.Work;
import facetwright.worker.Reply;
import facetwright.worker.Request;
import facetwright.worker.Settings;
import facetwright.worker.Workshop;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import javafx.application.Platform;

/**
 * How the net follows a hand that does not wait for it: a dial dragged to and fro for five seconds,
 * sixty letters typed, ten a second, and the same with every core busy. Tells how many worker
 * processes were started, how many nets came, the longest time without a new one, and when the last
 * came.
 *
 * <p>{@code scripts/bench drag} runs it.
 */
public final class DragBench {
  private static final int TURNS = 300;
  private static final long BETWEEN_TURNS_MILLIS = 16;
  private static final int LETTERS = 60;
  private static final long BETWEEN_LETTERS_MILLIS = 100;

  private final Workshop workshop = new Workshop(Settings.USUAL);
  private final AtomicInteger nets = new AtomicInteger();
  private final AtomicLong lastNet = new AtomicLong();
  private final AtomicLong longest = new AtomicLong();
  private final Set<Long> workers = ConcurrentHashMap.newKeySet();
  private Desk desk;

  private DragBench() {}

  /** Prints the figures. */
  public static void main(String[] words) throws Exception {
    BenchRoom.measure(() -> new DragBench().run(Path.of(words[0])));
  }

  private void run(Path file) throws Exception {
    var _ =
        Executors.newScheduledThreadPool(1)
            .scheduleAtFixedRate(this::count, 0, 5, TimeUnit.MILLISECONDS);
    String script = Files.readString(file);
    desk = new BenchRoom(this::ask, Platform::runLater).desk();
    BenchRoom.onStage(() -> desk.lay(file, Work.of(script), Work.of(script)));
    System.out.printf(
        "%-28s %8s %6s %14s %14s%n", "", "workers", "nets", "longest gap ms", "last after ms");
    atRest();
    for (boolean busy : new boolean[] {false, true}) {
      Thread[] load = busy ? load() : new Thread[0];
      for (int i = 0; i < 2; i++) {
        String with = (i == 0 ? "" : ", again") + (busy ? ", cores busy" : "");
        drag("drag" + with);
        type("letters" + with, script);
      }
      Arrays.stream(load).forEach(Thread::interrupt);
    }
    workshop.close();
  }

  private static Thread[] load() {
    Thread[] all = new Thread[Runtime.getRuntime().availableProcessors()];
    for (int i = 0; i < all.length; i++) {
      all[i] =
          new Thread(
              () -> {
                while (!Thread.currentThread().isInterrupted()) {
                  Thread.onSpinWait();
                }
              });
      all[i].start();
    }
    return all;
  }

  private void count() {
    ProcessHandle.current().children().forEach(child -> workers.add(child.pid()));
  }

  private CompletableFuture<Reply> ask(Request request) {
    return workshop
        .ask(request)
        .thenApply(
            reply -> {
              if (reply instanceof Reply.Done) {
                net();
              }
              return reply;
            });
  }

  private void net() {
    long now = System.nanoTime();
    nets.incrementAndGet();
    longest.accumulateAndGet(now - lastNet.getAndSet(now), Math::max);
  }

  private void drag(String name) throws Exception {
    begin();
    BenchRoom.onStage(() -> desk.hold(true));
    for (int i = 0; i < TURNS; i++) {
      // To and fro over 40 mm, on the half millimetre.
      double value = 60 + 0.5 * (40 - Math.abs(80 - i % 160));
      BenchRoom.onStage(() -> desk.turn("wall", String.valueOf(value)));
      Thread.sleep(BETWEEN_TURNS_MILLIS);
    }
    BenchRoom.onStage(() -> desk.hold(false));
    end(name);
  }

  private void type(String name, String script) throws Exception {
    begin();
    String words =
        "// " + "a lantern for the harbour wall and the quay of the ferry boats".repeat(2);
    for (int i = 1; i <= LETTERS; i++) {
      String typed = script + "\n" + words.substring(0, i);
      BenchRoom.onStage(() -> desk.text().set(typed));
      Thread.sleep(BETWEEN_LETTERS_MILLIS);
    }
    end(name);
  }

  private void begin() {
    workers.clear();
    count();
    lastNet.set(System.nanoTime());
    longest.set(0);
    nets.set(0);
  }

  private void end(String name) throws Exception {
    long let = System.nanoTime();
    atRest();
    System.out.printf(
        "%-28s %8d %6d %14.0f %14.0f%n",
        name,
        workers.size(),
        nets.get(),
        longest.get() / 1e6,
        (System.nanoTime() - let) / 1e6 - REST_MILLIS);
  }

  private static final long REST_MILLIS = 1500;

  private void atRest() throws Exception {
    while (BenchRoom.onStage(() -> desk.working().get())) {
      Thread.sleep(5);
    }
    // A spare is hired when nobody asks for a while.
    Thread.sleep(REST_MILLIS);
  }
}
