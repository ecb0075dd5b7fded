package facetwright.script.sandbox;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import org.graalvm.polyglot.Context;

/**
 * The next run's context, made ready while nobody waits. A process that runs one script and ends
 * makes none; one that runs script after script has one ready for each.
 */
final class Spare {
  private static final AtomicReference<Made> NEXT = new AtomicReference<>();
  private static final AtomicInteger TAKEN = new AtomicInteger();

  /** Runs before this one are taken for a warming up and a single script. */
  private static final int SINGLE = 2;

  private Spare() {}

  /** A shut-in context, not entered by any thread, with its prelude run. */
  record Made(Context context, Prelude prelude) {}

  /** The spare one, or else a new one. */
  static Made take() {
    TAKEN.incrementAndGet();
    Made made = NEXT.getAndSet(null);
    return made == null ? make() : made;
  }

  /** Makes the next one ready in the background, where more runs are to be expected. */
  static void refill() {
    if (TAKEN.get() <= SINGLE || NEXT.get() != null) {
      return;
    }
    Thread maker =
        new Thread(
            () -> {
              Made made = make();
              if (!NEXT.compareAndSet(null, made)) {
                made.context.close(true);
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
