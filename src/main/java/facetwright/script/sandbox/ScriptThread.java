package facetwright.script.sandbox;

import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.locks.LockSupport;
import org.graalvm.polyglot.management.ExecutionEvent;

/**
 * A thread that runs scripts, one after the other, and notes the statement each is at. To begin a
 * thread can take longer than a small script, so one that is through with its run waits for
 * another.
 */
final class ScriptThread extends Thread {
  private static final long STACK_BYTES = 4L << 20;
  private static final ConcurrentLinkedQueue<ScriptThread> IDLE = new ConcurrentLinkedQueue<>();

  private Position position = new Position(Where.NOWHERE);
  private volatile Runnable work;

  private ScriptThread(Runnable first) {
    super(null, null, "facetwright-script", STACK_BYTES, false);
    work = first;
    setDaemon(true);
  }

  /**
   * Does some work on a script's thread.
   *
   * @param position where the statements of the script are noted
   * @return the thread
   */
  static ScriptThread run(Position position, Runnable work) {
    ScriptThread thread = IDLE.poll();
    Runnable noted = () -> ((ScriptThread) Thread.currentThread()).begin(position, work);
    if (thread == null) {
      thread = new ScriptThread(noted);
      thread.start();
    } else {
      thread.work = noted;
      LockSupport.unpark(thread);
    }
    return thread;
  }

  private void begin(Position of, Runnable script) {
    position = of;
    // A stop of the run before does not reach this one.
    boolean _ = Thread.interrupted();
    script.run();
  }

  @Override
  public void run() {
    while (true) {
      Runnable now = work;
      if (now == null) {
        LockSupport.park(this);
        boolean _ = Thread.interrupted();
      } else {
        now.run();
        work = null;
        position = new Position(Where.NOWHERE);
        IDLE.add(this);
      }
    }
  }

  /** Called by the engine at every statement of every file that a script uses. */
  static void noteInFile(ExecutionEvent event) {
    if (Thread.currentThread() instanceof ScriptThread thread) {
      thread.position.noteInFile(event);
    }
  }

  /** Called by the engine at every statement of every script. */
  static void note(ExecutionEvent event) {
    if (Thread.currentThread() instanceof ScriptThread thread) {
      thread.position.note(event);
    }
  }
}
