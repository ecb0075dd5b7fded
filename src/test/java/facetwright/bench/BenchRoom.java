package facetwright.bench;

import facetwright.workbench.Room;
import facetwright.workbench.desk.Asking;
import facetwright.workbench.desk.Desk;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.stage.Stage;

/** The room in a window, for what measures it: how it opens, its thread, and how all ends. */
final class BenchRoom {
  private static final long PATIENCE_SECONDS = 300;

  private final ExecutorService aside = Executors.newSingleThreadExecutor();
  private final Desk desk;
  private final Room room;

  /** What is measured. */
  @FunctionalInterface
  interface Measuring {
    void run() throws Exception;
  }

  /**
   * Opens the room with nothing on the desk.
   *
   * @param asking who makes designs of scripts
   * @param ui runs what was heard of them on the window's thread
   */
  BenchRoom(Asking asking, Executor ui) throws Exception {
    desk = onStage(() -> new Desk(asking, ui));
    room = onStage(() -> new Room(desk, aside, Platform::runLater));
    onStage(
        () -> {
          Stage stage = new Stage();
          stage.setScene(new Scene(room, 1280, 800));
          stage.show();
        });
  }

  /** Starts the toolkit, measures, and ends the process: 0, or 1 where it ended badly. */
  static void measure(Measuring measuring) throws InterruptedException {
    CountDownLatch started = new CountDownLatch(1);
    Platform.startup(started::countDown);
    started.await();
    int exit = 1;
    try {
      measuring.run();
      exit = 0;
    } catch (Exception e) {
      System.err.println("it ended badly: " + e);
    } finally {
      // Threads of the toolkit would keep a failed run alive.
      Runtime.getRuntime().halt(exit);
    }
  }

  /** Does something on the window's thread and waits for it. */
  static <T> T onStage(Callable<T> work) throws Exception {
    FutureTask<T> task = new FutureTask<>(work);
    Platform.runLater(task);
    return task.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
  }

  /** The same where nothing comes of it. */
  static void onStage(Runnable work) throws Exception {
    onStage(Executors.callable(work));
  }

  Desk desk() {
    return desk;
  }

  Room room() {
    return room;
  }
}
