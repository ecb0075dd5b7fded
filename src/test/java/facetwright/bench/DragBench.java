package facetwright.bench;

import facetwright.workbench.Room;
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
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.stage.Stage;

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
    CountDownLatch started = new CountDownLatch(1);
    Platform.startup(started::countDown);
    started.await();
    int exit = 1;
    try {
      new DragBench().run(Path.of(words[0]));
      exit = 0;
    } finally {
      // Threads of the toolkit would keep a failed run alive.
      Runtime.getRuntime().halt(exit);
    }
  }

  private static <T> T onStage(Callable<T> work) throws Exception {
    FutureTask<T> task = new FutureTask<>(work);
    Platform.runLater(task);
    return task.get(60, TimeUnit.SECONDS);
  }

  private void run(Path file) throws Exception {
    var _ =
        Executors.newScheduledThreadPool(1)
            .scheduleAtFixedRate(this::count, 0, 5, TimeUnit.MILLISECONDS);
    String script = Files.readString(file);
    var aside = Executors.newSingleThreadExecutor();
    onStage(
        () -> {
          desk = new Desk(this::ask, Platform::runLater);
          Room room = new Room(desk, aside, Platform::runLater);
          Stage stage = new Stage();
          stage.setScene(new Scene(room, 1280, 800));
          stage.show();
          desk.lay(file, Work.of(script));
          return room;
        });
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
    onStage(
        () -> {
          desk.hold(true);
          return null;
        });
    for (int i = 0; i < TURNS; i++) {
      // To and fro over 40 mm, on the half millimetre.
      double value = 60 + 0.5 * (40 - Math.abs(80 - i % 160));
      onStage(
          () -> {
            desk.turn("wall", String.valueOf(value));
            return null;
          });
      Thread.sleep(BETWEEN_TURNS_MILLIS);
    }
    onStage(
        () -> {
          desk.hold(false);
          return null;
        });
    end(name);
  }

  private void type(String name, String script) throws Exception {
    begin();
    String words =
        "// " + "a lantern for the harbour wall and the quay of the ferry boats".repeat(2);
    for (int i = 1; i <= LETTERS; i++) {
      String typed = script + "\n" + words.substring(0, i);
      onStage(
          () -> {
            desk.text().set(typed);
            return null;
          });
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
    while (onStage(() -> desk.working().get())) {
      Thread.sleep(5);
    }
    // A spare is hired when nobody asks for a while.
    Thread.sleep(REST_MILLIS);
  }
}
