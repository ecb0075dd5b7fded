package facetwright.workbench;

import facetwright.measure.Unbroken;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import facetwright.worker.Reply;
import facetwright.worker.Request;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import javafx.application.Platform;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;

/** The window's toolkit in tests: no screen, no sleeping, waits with a deadline. */
public final class Fx {
  private static final long DEADLINE = TimeUnit.SECONDS.toNanos(60);

  private Fx() {}

  /** Starts the toolkit, once for all tests of the process. */
  public static void start() throws InterruptedException {
    System.setProperty("glass.platform", "Headless");
    System.setProperty("prism.order", "sw");
    CountDownLatch up = new CountDownLatch(1);
    try {
      Platform.startup(up::countDown);
    } catch (IllegalStateException e) {
      Platform.runLater(up::countDown);
    }
    if (!up.await(60, TimeUnit.SECONDS)) {
      throw new AssertionError("the toolkit did not start");
    }
    Platform.setImplicitExit(false);
  }

  /** Does something on the window's thread and waits for it. */
  public static <T> T get(Callable<T> work) throws Exception {
    FutureTask<T> task = new FutureTask<>(work);
    Platform.runLater(task);
    try {
      return task.get(60, TimeUnit.SECONDS);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof Error fault) {
        throw fault;
      }
      throw (Exception) e.getCause();
    }
  }

  public static void run(Runnable work) throws Exception {
    get(
        () -> {
          work.run();
          return null;
        });
  }

  /** Waits until something holds on the window's thread. */
  public static void until(String what, BooleanSupplier holds) throws Exception {
    long end = System.nanoTime() + DEADLINE;
    while (!get(holds::getAsBoolean)) {
      if (System.nanoTime() > end) {
        throw new AssertionError("it did not come about that " + what);
      }
      pulse();
    }
  }

  /** Lets the toolkit lay out and paint once. */
  public static void pulse() throws Exception {
    CountDownLatch pulsed = new CountDownLatch(1);
    Platform.runLater(
        () -> {
          javafx.animation.AnimationTimer timer =
              new javafx.animation.AnimationTimer() {
                private int left = 2;

                @Override
                public void handle(long now) {
                  if (--left == 0) {
                    stop();
                    pulsed.countDown();
                  }
                }
              };
          timer.start();
        });
    if (!pulsed.await(60, TimeUnit.SECONDS)) {
      throw new AssertionError("no pulse came");
    }
  }

  /** Presses keys where the focus is; for the window's thread. */
  public static void press(Node in, String keys) {
    KeyCombination combination = KeyCombination.valueOf(keys);
    String[] parts = keys.split("\\+");
    KeyCode code = code(parts[parts.length - 1]);
    KeyEvent event =
        new KeyEvent(
            KeyEvent.KEY_PRESSED,
            "",
            "",
            code,
            keys.contains("Shift+"),
            keys.contains("Shortcut+"),
            keys.contains("Alt+"),
            false);
    if (keys.contains("+") && !combination.match(event)) {
      throw new IllegalArgumentException(keys);
    }
    Node owner = in.getScene().getFocusOwner();
    Event.fireEvent(owner == null ? in : owner, event);
  }

  private static KeyCode code(String name) {
    for (KeyCode code : KeyCode.values()) {
      if (code.getName().equalsIgnoreCase(name)) {
        return code;
      }
    }
    throw new IllegalArgumentException(name);
  }

  /** The button that says so and can be seen; for the window's thread. */
  public static ButtonBase button(Node in, String text) {
    Node found = find(in, n -> n instanceof ButtonBase b && text.equals(b.getText()));
    if (found == null) {
      throw new AssertionError("no button says " + text);
    }
    return (ButtonBase) found;
  }

  /** Whether a label or button says so and can be seen. */
  public static boolean says(Node in, String text) {
    return find(
            in,
            n ->
                n instanceof Labeled l
                    && l.getText() != null
                    && Unbroken.plain(l.getText()).contains(text))
        != null;
  }

  private static Node find(Node in, java.util.function.Predicate<Node> wanted) {
    if (!in.isVisible()) {
      return null;
    }
    if (wanted.test(in)) {
      return in;
    }
    if (in instanceof Parent parent) {
      for (Node child : parent.getChildrenUnmodifiable()) {
        Node found = find(child, wanted);
        if (found != null) {
          return found;
        }
      }
    }
    return null;
  }

  /** Evaluates in this process. */
  public static CompletableFuture<Reply> evaluate(Request request) {
    return CompletableFuture.supplyAsync(
        () -> {
          try {
            return request.answer(Budget.USUAL, () -> {});
          } catch (ScriptException e) {
            return new Reply.Failed(
                e.kind(), e.getMessage(), e.site(), e.remedy(), e.mends(), e.said());
          }
        });
  }
}
