package facetwright.script.sandbox;

import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import org.graalvm.polyglot.Context;

/**
 * Contexts for the next runs, made ready while nobody waits. A process that runs one script and
 * ends makes none; one that runs script after script has one ready for each, and a worker that has
 * just answered makes a few more, for a script with an aim runs several times.
 */
final class Spare {
  private static final ConcurrentLinkedQueue<Made> READY = new ConcurrentLinkedQueue<>();
  private static final AtomicInteger TAKEN = new AtomicInteger();
  private static final AtomicBoolean MAKING = new AtomicBoolean();

  /** Runs before this one are taken for a warming up and a single script. */
  private static final int SINGLE = 2;

  private Spare() {}

  /** A shut-in context, not entered by any thread, with its prelude run. */
  record Made(Context context, Prelude prelude) {}

  /** A spare one, or else a new one. */
  static Made take() {
    TAKEN.incrementAndGet();
    Made made = READY.poll();
    return made == null ? make() : made;
  }

  /** Makes one ready in the background where there is none and more runs are to be expected. */
  static void refill() {
    if (TAKEN.get() > SINGLE) {
      refill(1);
    }
  }

  /** Makes so many ready in the background. */
  static void refill(int wanted) {
    if (READY.size() >= wanted || !MAKING.compareAndSet(false, true)) {
      return;
    }
    Thread maker =
        new Thread(
            () -> {
              try {
                while (READY.size() < wanted) {
                  READY.add(make());
                }
              } finally {
                MAKING.set(false);
              }
            },
            "facetwright-spare");
    maker.setDaemon(true);
    maker.start();
  }

  private static Made make() {
    Context context = Guest.newContext();
    context.enter();
    try {
      return new Made(context, new Prelude(context));
    } finally {
      context.leave();
    }
  }
}
