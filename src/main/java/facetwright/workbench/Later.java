package facetwright.workbench;

import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;

/** Runs work on the window's thread after a while. */
@FunctionalInterface
interface Later {
  void after(Duration time, Runnable work);

  /**
   * Not by the toolkit's own pause, which keeps it drawing frames that show nothing new.
   *
   * @param ui runs work on the window's thread
   */
  static Later on(Executor ui) {
    return (time, work) ->
        CompletableFuture.delayedExecutor(time.toMillis(), TimeUnit.MILLISECONDS, ui).execute(work);
  }
}
