package facetwright.script.sandbox;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicReference;

/**
 * Ends a run from outside, once. Its thread is there beforehand, because there may be no memory for
 * one when it is needed; one that was not needed stands by for the next run.
 */
final class Closer {
  private static final AtomicReference<Closer> BY = new AtomicReference<>();

  private final CountDownLatch told = new CountDownLatch(1);
  private volatile Run<?> doomed;

  private Closer() {
    Thread thread = new Thread(this::stand, "facetwright-stop");
    thread.setDaemon(true);
    thread.start();
  }

  static Closer take() {
    Closer one = BY.getAndSet(null);
    return one == null ? new Closer() : one;
  }

  /** For a run that ended by itself. */
  void leave() {
    if (!BY.compareAndSet(null, this)) {
      // Another stands by already: nothing is ended.
      told.countDown();
    }
  }

  /** Ends a run; comes back at once. */
  void end(Run<?> run) {
    doomed = run;
    told.countDown();
  }

  private void stand() {
    try {
      told.await();
    } catch (InterruptedException e) {
      return;
    }
    if (doomed != null) {
      doomed.cancel();
    }
  }
}
