package facetwright.script.sandbox;

import facetwright.net.Site;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** Waits for a run and ends it when it takes more than its budget. */
final class Watch {
  private static final long POLL_MILLIS = 3;
  private static final long GRACE_MILLIS = 400;

  private Watch() {}

  /**
   * Comes back when the run has ended well or badly by itself.
   *
   * @throws ScriptException when it had to be ended
   */
  static void over(Run<?> run, Budget budget) throws ScriptException {
    CountDownLatch tripped = new CountDownLatch(1);
    Thread closer = closer(run, tripped);
    try {
      ScriptException why = watch(run, budget);
      if (why == null) {
        closer.interrupt();
        return;
      }
      tripped.countDown();
      boolean ended = run.ended().await(GRACE_MILLIS, TimeUnit.MILLISECONDS);
      throw new ScriptException(why.kind(), why.getMessage(), why.site(), why.remedy(), !ended);
    } catch (InterruptedException e) {
      tripped.countDown();
      Thread.currentThread().interrupt();
      throw new ScriptException(
          ScriptException.Kind.STOPPED, "the script was stopped", run.thread().lastSite(), "");
    }
  }

  /** Made beforehand, because there may be no memory for a thread when it is needed. */
  private static Thread closer(Run<?> run, CountDownLatch tripped) {
    Thread closer =
        new Thread(
            () -> {
              try {
                tripped.await();
                run.cancel();
              } catch (InterruptedException e) {
                // The run ended by itself.
              }
            },
            "facetwright-stop");
    closer.setDaemon(true);
    closer.start();
    return closer;
  }

  private static ScriptException watch(Run<?> run, Budget budget) throws InterruptedException {
    long start = System.nanoTime();
    long script = budget.script().toNanos();
    long host = budget.host().toNanos();
    while (!run.ended().await(POLL_MILLIS, TimeUnit.MILLISECONDS)) {
      RunClock clock = run.clock();
      if (clock == null) {
        continue;
      }
      RunClock.Taken taken = clock.taken();
      if (taken.scriptBytes() > budget.bytes()) {
        return Faults.memory(run.thread().lastSite());
      }
      if (taken.scriptNanos() > script) {
        return time(run);
      }
      if (taken.hostNanos() > host
          || System.nanoTime() - start - taken.hostNanos() * Budget.PATIENCE
              > script * Budget.PATIENCE) {
        return time(run);
      }
    }
    return null;
  }

  private static ScriptException time(Run<?> run) {
    Site at = run.thread().lastSite();
    return new ScriptException(
        ScriptException.Kind.TIME,
        "the script was stopped because it took too long",
        at,
        "See that every loop here comes to an end");
  }
}
