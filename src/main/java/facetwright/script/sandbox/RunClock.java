package facetwright.script.sandbox;

import com.sun.management.ThreadMXBean;
import facetwright.message.Message;
import facetwright.net.NetException;
import facetwright.words.Site;
import java.lang.management.ManagementFactory;
import java.util.Optional;
import java.util.function.Supplier;
import org.graalvm.polyglot.PolyglotException;

/** Counts what one run takes, the script's own and the host's apart. */
final class RunClock implements HostClock {
  /**
   * The beginning of each call that is held against the script, in ns, so that a loop without end
   * that makes small calls is found out as soon as one that makes none.
   */
  private static final long SMALL_CALL = 300_000;

  private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  private final long thread = Thread.currentThread().threadId();
  private final Prelude prelude;
  private int depth;
  private boolean inHost;
  private final long startNanos = THREADS.getCurrentThreadCpuTime();
  private final long startBytes = THREADS.getCurrentThreadAllocatedBytes();
  private long hostNanos;
  private long hostBytes;
  private long enteredNanos;
  private long enteredBytes;
  private volatile ScriptException fault;
  private volatile CallException refused;

  /**
   * What a run has taken so far.
   *
   * @param scriptNanos processor time of the script
   * @param hostNanos processor time of the host
   * @param scriptBytes memory the script asked for
   */
  record Taken(long scriptNanos, long hostNanos, long scriptBytes, boolean inHost) {}

  /** To be made on the run's own thread, at its beginning. */
  RunClock(Prelude prelude) {
    this.prelude = prelude;
  }

  /** May be asked from any thread. */
  synchronized Taken taken() {
    long nanos = THREADS.getThreadCpuTime(thread);
    long bytes = THREADS.getThreadAllocatedBytes(thread);
    long host = hostNanos + (inHost ? Math.max(0, nanos - enteredNanos - SMALL_CALL) : 0);
    long hostAllocated = hostBytes + (inHost ? bytes - enteredBytes : 0);
    return new Taken(nanos - startNanos - host, host, bytes - startBytes - hostAllocated, inHost);
  }

  /** What failed in the program itself, or ran out of memory, inside a host call; or null. */
  ScriptException fault() {
    return fault;
  }

  /** Host work begins. Calls may nest; each needs its {@link #exit}, in a finally block. */
  void enter() {
    if (depth++ == 0) {
      toHost();
    }
  }

  /** Host work ends. */
  void exit() {
    if (--depth == 0) {
      toScript();
    }
  }

  @Override
  public <R> R run(Supplier<R> work) {
    enter();
    try {
      return work.get();
    } catch (CallException e) {
      throw refuse(e);
    } catch (NetException e) {
      throw refuse(new CallException(e.told(), Message.EMPTY, e.mends()));
    } catch (PolyglotException | StackOverflowError e) {
      throw e;
    } catch (RuntimeException | Error e) {
      if (fault == null) {
        Site here = prelude.here();
        fault = e instanceof OutOfMemoryError ? Faults.memory(here) : Faults.internal(e, here);
      }
      throw prelude.fail(Faults.INTERNAL_MESSAGE, Faults.INTERNAL_REMEDY);
    } finally {
      exit();
    }
  }

  private RuntimeException refuse(CallException e) {
    refused = e;
    return prelude.fail(e.getMessage(), e.fix());
  }

  /** The call that was refused with these words, with all that the script does not see of it. */
  Optional<CallException> refused(String message, String fix) {
    return Optional.ofNullable(refused)
        .filter(last -> last.getMessage().equals(message) && last.fix().equals(fix));
  }

  private synchronized void toHost() {
    enteredNanos = THREADS.getCurrentThreadCpuTime();
    enteredBytes = THREADS.getCurrentThreadAllocatedBytes();
    inHost = true;
  }

  private synchronized void toScript() {
    hostNanos += Math.max(0, THREADS.getCurrentThreadCpuTime() - enteredNanos - SMALL_CALL);
    hostBytes += THREADS.getCurrentThreadAllocatedBytes() - enteredBytes;
    inHost = false;
  }
}
