package facetwright.worker;

import java.io.IOException;
import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;

/**
 * Evaluates scripts in a worker process, with a spare one ready. May be used from any thread; never
 * blocks its caller.
 */
public final class Workshop implements AutoCloseable {
  private final Settings settings;
  private final ScheduledThreadPoolExecutor desk =
      new ScheduledThreadPoolExecutor(
          1, Thread.ofPlatform().daemon().name("facetwright-workshop").factory());
  private final AtomicInteger started = new AtomicInteger();

  /** Touched by the desk's thread only. */
  private final Dispatcher dispatcher;

  public Workshop(Settings settings) {
    this.settings = settings;
    // What is called off holds a script and perhaps its design.
    desk.setRemoveOnCancelPolicy(true);
    desk.setExecuteExistingDelayedTasksAfterShutdownPolicy(false);
    this.dispatcher = new Dispatcher(settings, new Processes());
  }

  /**
   * Asks for a design. An ask that waits for its turn gives way, and comes to {@link
   * Reply.Stopped}; one that is under way comes to its end first, unless that takes far longer than
   * usual.
   *
   * @return completed on a thread of the workshop, so do little there; never exceptionally; asks
   *     are answered in the order they came
   */
  public CompletableFuture<Reply> ask(Request request) {
    return ask(request, _ -> {});
  }

  /**
   * The same with word of how it goes on.
   *
   * @param tried told, on a thread of the workshop, how many designs were made so far to answer
   */
  public CompletableFuture<Reply> ask(Request request, IntConsumer tried) {
    Job job = new Job(request, tried);
    if (!tell(() -> dispatcher.accept(job))) {
      job.reply().complete(new Reply.Stopped());
    }
    return job.reply();
  }

  /** Stops the ask under way and the one that waits. */
  public void cancel() {
    tell(dispatcher::stop);
  }

  /** Ends all workers. */
  @Override
  public void close() {
    tell(
        () -> {
          dispatcher.close();
          desk.shutdown();
        });
  }

  /** How many workers were started so far. Tests watch by it. */
  int started() {
    return started.get();
  }

  /** False when the workshop has closed. */
  private boolean tell(Runnable work) {
    try {
      desk.execute(work);
      return true;
    } catch (RejectedExecutionException e) {
      return false;
    }
  }

  private final class Processes implements Staff.World {
    @Override
    public Staff.Worker launch() throws IOException {
      started.incrementAndGet();
      return Child.start(
          settings.command(),
          (child, message) -> tell(() -> dispatcher.heard(child, message)),
          child -> tell(() -> dispatcher.gone(child)));
    }

    @Override
    public Runnable after(Duration time, Runnable work) {
      if (desk.isShutdown()) {
        return () -> {};
      }
      ScheduledFuture<?> due = desk.schedule(work, time.toMillis(), TimeUnit.MILLISECONDS);
      return () -> due.cancel(false);
    }
  }
}
