package facetwright.workbench;

import facetwright.draw.Drawing;
import facetwright.script.beside.Shipped;
import facetwright.workbench.desk.Helpers;
import facetwright.workbench.file.Choosing;
import facetwright.workbench.file.HeldKeeper;
import facetwright.workbench.file.State;
import facetwright.workbench.papers.Saving;
import facetwright.worker.Reply;
import facetwright.worker.Request;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.IntConsumer;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.stage.Stage;

/** One run of the whole window without a screen; files are chosen beforehand. */
final class Visit implements Choosing, Saving {
  final Deque<Path> answers = new ArrayDeque<>();
  final ExecutorService papers =
      Executors.newSingleThreadExecutor(Thread.ofPlatform().daemon().factory());
  final HeldKeeper keeper = new HeldKeeper();
  final ExecutorService aside =
      Executors.newSingleThreadExecutor(Thread.ofPlatform().daemon().factory());
  boolean quit;
  volatile boolean holding;
  volatile CompletableFuture<Reply> held;
  private boolean closed;
  House house;
  Stage stage;
  private WindowState windowState;

  private Visit() {}

  /** Starts the program on a state folder and, when it is not null, on a file. */
  static Visit start(Path stateFolder, Path home, Path file) throws Exception {
    Fx.start();
    Visit visit = new Visit();
    Fx.run(() -> visit.open(stateFolder, home, file));
    return visit;
  }

  /** Starts the program anew, the tour seen before, and waits until the demo stands there whole. */
  static Visit atTheDemo(Path stateFolder) throws Exception {
    Visit visit = again(stateFolder, null);
    Fx.until("its size is told", () -> Fx.says(visit.house.room(), "Made, it is"));
    Fx.pulse();
    return visit;
  }

  /** The same on a script, written into the state folder. */
  static Visit at(Path stateFolder, String name, String script) throws Exception {
    return again(stateFolder, Files.writeString(stateFolder.resolve(name), script));
  }

  private static Visit again(Path stateFolder, Path file) throws Exception {
    Files.writeString(stateFolder.resolve("state.json"), "{\"tour.seen\":\"yes\"}");
    Visit visit = start(stateFolder, Path.of("").toAbsolutePath(), file);
    Fx.until("the design is made", () -> visit.house.desk().design().get() != null);
    return visit;
  }

  private void open(Path stateFolder, Path home, Path file) {
    State state = State.in(stateFolder);
    stage = new Stage();
    house =
        new House(
            new Tools(
                Fx::evaluate,
                () -> new InProcess(),
                aside,
                aside,
                papers,
                this::onStage,
                keeper,
                this,
                this,
                state,
                home,
                () -> quit = true));
    windowState = new WindowState(stage, house, state);
    Scene scene = windowState.restore();
    stage.setScene(scene);
    house.filing().begin(file, Shipped.DEMO);
    stage.show();
    house.begin();
  }

  /** What comes in after the end finds no window and is let go. */
  private void onStage(Runnable work) {
    Platform.runLater(
        () -> {
          if (!closed) {
            work.run();
          }
        });
  }

  /** The time until the next keeping passes. */
  void pass() throws Exception {
    Fx.run(keeper::pass);
  }

  String text() throws Exception {
    return Fx.get(() -> house.desk().text().get());
  }

  /** Ends as the program does. */
  public void close() throws Exception {
    Fx.run(
        () -> {
          windowState.remember();
          stage.close();
          closed = true;
        });
    // The thread stays, for what still comes in; it ends with the tests.
    aside.submit(() -> house.close()).get();
  }

  @Override
  public Optional<Path> toOpen(Path startingIn) {
    return Optional.ofNullable(answers.poll());
  }

  @Override
  public Optional<Path> toSave(Path startingIn, String name) {
    return Optional.ofNullable(answers.poll());
  }

  @Override
  public Optional<Path> folder(String title, Path startingIn) {
    return Optional.ofNullable(answers.poll());
  }

  @Override
  public Optional<Path> folder(String title) {
    return Optional.ofNullable(answers.poll());
  }

  @Override
  public boolean canPrint() {
    return false;
  }

  @Override
  public boolean print(String title, List<Drawing> pages) {
    return false;
  }

  /** Answers in this process; a question is held back while the visit holds questions. */
  private final class InProcess implements Helpers {
    @Override
    public CompletableFuture<Reply> ask(Request request) {
      return Fx.evaluate(request);
    }

    @Override
    public CompletableFuture<Reply> ask(Request request, IntConsumer tried) {
      if (holding) {
        held = new CompletableFuture<>();
        tried.accept(7);
        return held;
      }
      return ask(request);
    }

    @Override
    public void stop() {
      if (held != null) {
        held.complete(new Reply.Stopped());
      }
    }

    @Override
    public void close() {}
  }
}
