package facetwright.workbench;

import facetwright.script.beside.Beside;
import facetwright.script.beside.Shipped;
import facetwright.workbench.desk.Helpers;
import facetwright.workbench.file.FileWatch;
import facetwright.workbench.file.Folders;
import facetwright.workbench.file.Keeper;
import facetwright.workbench.file.State;
import facetwright.workbench.file.StateFolder;
import facetwright.workbench.file.SystemChoosing;
import facetwright.workbench.papers.SystemSaving;
import facetwright.worker.Reply;
import facetwright.worker.Request;
import facetwright.worker.Settings;
import facetwright.worker.Workshop;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.IntConsumer;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.stage.Stage;

/** The window's program. */
public final class Workbench extends Application {
  /** When it is looked first for work that was left: what is killed may take a while to die. */
  private static final Duration LOOK_FIRST = Duration.ofSeconds(1);

  /** After that it is only looked when the window gets the focus. */
  private static final Duration LOOK_LAST = Duration.ofMinutes(1);

  private static volatile boolean opened;
  private static volatile boolean rehearsing;

  private final Later later = Later.on(Platform::runLater);
  private Workshop workshop;
  private ExecutorService aside;
  private ExecutorService papers;
  private Keeper keeper;
  private ExecutorService slow;
  private House house;
  private WindowState windowState;
  private FileWatch watch;

  /**
   * Opens the window, on the file after the word {@code open} or on the last or demo design, and
   * returns when it is closed.
   *
   * @return why no window could be opened; empty when one was
   */
  public static Optional<String> open(String... words) {
    ToolkitText.hush();
    try {
      Application.launch(Workbench.class, words);
      return Optional.empty();
    } catch (RuntimeException | LinkageError e) {
      if (opened) {
        throw e;
      }
      return Optional.of(Hindrance.of(e));
    }
  }

  /** Opens the window, goes through its places and closes it, all by itself. */
  public static Optional<String> rehearse() {
    rehearsing = true;
    return open();
  }

  @Override
  public void start(Stage stage) {
    opened = true;
    // It starts its worker at the first ask: two processes that start at once hinder each other.
    workshop = new Workshop(Settings.USUAL);
    aside = thread("facetwright-aside", Thread.NORM_PRIORITY);
    keeper = Keeper.onItsOwnThread();
    slow = thread("facetwright-shelf", Thread.MIN_PRIORITY);
    papers = thread("facetwright-papers", Thread.NORM_PRIORITY);
    State state = State.in(StateFolder.find());
    SystemChoosing choosing = new SystemChoosing(() -> stage);
    house =
        new House(
            new Tools(
                new Hired(workshop),
                () -> new Hired(new Workshop(Settings.USUAL)),
                aside,
                slow,
                papers,
                Platform::runLater,
                keeper,
                choosing,
                new SystemSaving(stage, new Folders(state, choosing)::choosePapers),
                state,
                home(),
                stage::close));
    Thread.currentThread().setUncaughtExceptionHandler((_, fault) -> say(fault));
    windowState = new WindowState(stage, house, state);
    Scene scene = windowState.restore();
    stage.setScene(scene);
    Carets.of(scene, later);
    stage.titleProperty().bind(WindowState.title(house.desk()));
    stage.setOnCloseRequest(
        e -> {
          e.consume();
          house.quit();
        });
    stage
        .focusedProperty()
        .addListener(
            (_, _, on) -> {
              if (on) {
                house.filing().lookOutside();
                house.keeping().lookAgain(Platform::runLater);
              }
            });
    watch =
        new FileWatch(
            () -> Platform.runLater(house.filing()::lookOutside),
            Beside.ofLibrary(Tools.library(home())));
    house.desk().file().addListener((_, _, file) -> watch.watch(file));
    List<String> words = getParameters().getRaw();
    house.filing().begin(words.size() > 1 ? Path.of(words.get(1)) : null, Shipped.DEMO);
    stage.show();
    house.begin();
    lookForLeft(LOOK_FIRST);
    if (rehearsing) {
      Rounds.of(house, stage::close);
    }
  }

  /** A fault of the program's own: it is said, and the window goes on. */
  private void say(Throwable fault) {
    fault.printStackTrace();
    house
        .notices()
        .tell(
            "fault",
            "Something went wrong inside the program",
            "It is not your design's doing ("
                + fault.getClass().getSimpleName()
                + "). Your script is still here: save it.");
  }

  /** Again and again, each time after twice as long, until it is time to be quiet. */
  private void lookForLeft(Duration time) {
    if (time.compareTo(LOOK_LAST) <= 0) {
      later.after(
          time,
          () -> {
            house.keeping().lookAgain(Platform::runLater);
            lookForLeft(time.multipliedBy(2));
          });
    }
  }

  @SuppressWarnings(
      "ThreadPriorityCheck") // What nobody waits for leaves the processor to the rest.
  private static ExecutorService thread(String name, int priority) {
    return Executors.newSingleThreadExecutor(
        Thread.ofPlatform().daemon().name(name).priority(priority).factory());
  }

  static Path home() {
    return Path.of(System.getProperty("facetwright.home", "."));
  }

  @Override
  public void stop() throws InterruptedException {
    windowState.remember();
    watch.close();
    workshop.close();
    slow.shutdownNow();
    aside.shutdown();
    papers.shutdown();
    // What is being kept is written to the end, so that nothing stays behind.
    keeper.end();
    house.close();
    // A paper that is being saved may still be finished.
    boolean _ = papers.awaitTermination(2, TimeUnit.SECONDS);
  }

  /** A workshop with workers of its own. */
  private record Hired(Workshop workshop) implements Helpers {
    @Override
    public CompletableFuture<Reply> ask(Request request) {
      return workshop.ask(request);
    }

    @Override
    public CompletableFuture<Reply> ask(Request request, IntConsumer tried) {
      return workshop.ask(request, tried);
    }

    @Override
    public void stop() {
      workshop.cancel();
    }

    @Override
    public void close() {
      workshop.close();
    }
  }
}
