package facetwright.workbench.file;

import java.time.Duration;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/** Whoever does the keeping: one thing after another, and nothing else. */
public interface Keeper {
  /** Does something as soon as what came before is done. */
  void now(Runnable work);

  /** Does something a while from now. */
  void after(Duration time, Runnable work);

  /** Does what is still to be done at once, then ends; what waits for its time is left. */
  void end();

  /**
   * A thread of its own, so that keeping waits neither for a paper that is being drawn nor for the
   * window.
   */
  static Keeper onItsOwnThread() {
    ScheduledThreadPoolExecutor thread =
        new ScheduledThreadPoolExecutor(
            1, Thread.ofPlatform().daemon().name("facetwright-keeper").factory());
    thread.setExecuteExistingDelayedTasksAfterShutdownPolicy(false);
    return new Keeper() {
      @Override
      public void now(Runnable work) {
        thread.execute(work);
      }

      @Override
      public void after(Duration time, Runnable work) {
        var _ = thread.schedule(work, time.toMillis(), TimeUnit.MILLISECONDS);
      }

      @Override
      public void end() {
        thread.shutdown();
        try {
          boolean _ = thread.awaitTermination(2, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
          Thread.currentThread().interrupt();
        }
      }
    };
  }
}
