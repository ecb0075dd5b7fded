package facetwright.script.sandbox;

import facetwright.words.Site;
import java.util.concurrent.TimeUnit;

/** Waits for a run and ends it when it takes more than its budget. */
final class Watch {
  private static final long POLL_MILLIS = 3;
  private static final long GRACE_MILLIS = 400;

  /**
   * A call stack that deep, in Java frames, is that of a script that calls itself without end and
   * catches the error of it. The virtual machine reports up to 1024 frames.
   */
  private static final int DEEP_FRAMES = 1000;

  private Watch() {}

  /**
   * Comes back when the run has ended well or badly by itself.
   *
   * @throws ScriptException when it had to be ended
   */
  static void over(Run<?> run, Budget budget) throws ScriptException {
    Closer closer = Closer.take();
    ScriptException why;
    boolean stopped = false;
    try {
      why = watch(run, budget);
    } catch (InterruptedException e) {
      stopped = true;
      why = stopped(run.site());
    } catch (OutOfMemoryError e) {
      why = Faults.memory(run.site());
    }
    if (why == null) {
      closer.leave();
      return;
    }
    closer.end(run);
    boolean ended = awaitEnd(run);
    if (stopped) {
      Thread.currentThread().interrupt();
    }
    Site site = why.site().isKnown() ? why.site() : run.site();
    throw new ScriptException(
        why.kind(), why.getMessage(), site, why.remedy(), why.mends(), !ended);
  }

  private static ScriptException stopped(Site at) {
    return new ScriptException(ScriptException.Kind.STOPPED, "the script was stopped", at, "");
  }

  /** Whether it ends within the time of grace. */
  private static boolean awaitEnd(Run<?> run) {
    long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(GRACE_MILLIS);
    while (true) {
      try {
        return run.ended().await(end - System.nanoTime(), TimeUnit.NANOSECONDS);
      } catch (InterruptedException e) {
        // Being told to stop once more changes nothing.
      }
    }
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
        return Faults.memory(run.site());
      }
      if (taken.scriptNanos() > script) {
        return time(run);
      }
      if (taken.hostNanos() > host) {
        return hostTime(run);
      }
      if (System.nanoTime() - start - taken.hostNanos() * Budget.PATIENCE
          > script * Budget.PATIENCE) {
        return busy(run);
      }
    }
    return null;
  }

  private static ScriptException time(Run<?> run) {
    Site at = run.site();
    if (run.depth() >= DEEP_FRAMES) {
      return Faults.recursion(at);
    }
    return new ScriptException(
        ScriptException.Kind.TIME,
        "the script was stopped because it took too long",
        at,
        "See that every loop here comes to an end");
  }

  private static ScriptException busy(Run<?> run) {
    return new ScriptException(
        ScriptException.Kind.TIME,
        "the script was stopped because the machine is too busy to run it",
        run.site(),
        "Try again when other programs have come to rest");
  }

  private static ScriptException hostTime(Run<?> run) {
    return new ScriptException(
        ScriptException.Kind.TIME,
        "the script was stopped because the work it asks for here took too long",
        run.site(),
        "Ask for less: fewer facets, columns or copies");
  }
}
