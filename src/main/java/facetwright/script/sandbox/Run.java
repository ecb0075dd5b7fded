package facetwright.script.sandbox;

import facetwright.script.text.Gathered;
import facetwright.words.Site;
import java.util.List;
import java.util.SequencedMap;
import java.util.concurrent.CountDownLatch;
import org.graalvm.polyglot.Context;
import org.graalvm.polyglot.proxy.ProxyExecutable;

/** One run of one script, on its own thread. */
final class Run<T> {
  private final Where where;
  private final Host<T> host;
  private final Position position;
  private final CountDownLatch ended = new CountDownLatch(1);
  private volatile Thread thread;
  private volatile Context context;
  private volatile RunClock clock;
  private volatile Throwable thrown;
  private volatile T result;

  Run(String source, Host<T> host) {
    this.where = new Where(Gathered.of(source));
    this.host = host;
    this.position = new Position(where);
  }

  void start() {
    thread = ScriptThread.run(position, this::work);
  }

  CountDownLatch ended() {
    return ended;
  }

  /** How deep its calls are, in Java frames; only while it has not ended. */
  int depth() {
    return thread.getStackTrace().length;
  }

  /** Where the statement it is at stands. */
  Site site() {
    return position.site();
  }

  /** Null until the script begins. */
  RunClock clock() {
    return clock;
  }

  /** Ends the script where it stands; comes back when it has ended. */
  void cancel() {
    Context open = context;
    if (open != null) {
      open.close(true);
    }
  }

  /** What the run came to, once it has ended. */
  T result() throws ScriptException {
    Throwable t = clock != null && clock.fault() != null ? clock.fault() : thrown;
    if (t == null) {
      return result;
    }
    throw Faults.of(t, position, host, clock);
  }

  private void work() {
    Spare.Made made = null;
    try {
      made = Spare.take();
      evaluate(made);
    } catch (Throwable t) {
      thrown = t;
    } finally {
      // Nobody has to wait for the tidying up.
      ended.countDown();
    }
    if (made != null) {
      tidy(made);
    }
  }

  private void evaluate(Spare.Made made) throws ScriptException {
    Context own = made.context();
    own.enter();
    Prelude prelude = made.prelude();
    RunClock counter = new RunClock(prelude);
    SequencedMap<String, ProxyExecutable> globals = host.globals(prelude, counter);
    prelude.begin(position);
    ProxyExecutable use = globals.remove(Uses.NAME);
    prelude.dress(own, globals);
    if (use != null) {
      Uses.install(use, where, own, prelude, counter, host);
    }
    clock = counter;
    context = own;
    try {
      own.eval(Guest.script(where.text().main()));
    } catch (Throwable t) {
      // Read while the context is open: an error's message may lie in it.
      throw Faults.of(t, position, host, clock);
    }
    counter.enter();
    try {
      result = host.finish();
    } finally {
      counter.exit();
    }
  }

  private static void tidy(Spare.Made made) {
    // The thread goes on to another run, with another context.
    for (Runnable step :
        List.<Runnable>of(made.context()::leave, () -> made.context().close(true))) {
      try {
        step.run();
      } catch (RuntimeException | Error e) {
        // It was ended from outside, or there is no memory: the run's own fault says so.
      }
    }
    Spare.refill();
  }
}
