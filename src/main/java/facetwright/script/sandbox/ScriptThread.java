package facetwright.script.sandbox;

import facetwright.net.Site;
import org.graalvm.polyglot.PolyglotException;
import org.graalvm.polyglot.SourceSection;
import org.graalvm.polyglot.management.ExecutionEvent;

/** A thread that runs one script and remembers the statement it is at. */
final class ScriptThread extends Thread {
  private static final long STACK_BYTES = 4L << 20;

  private volatile ExecutionEvent last;

  ScriptThread(Runnable work) {
    super(null, work, "facetwright-script", STACK_BYTES, false);
    setDaemon(true);
  }

  /** Called by the engine at every statement of every script. */
  static void note(ExecutionEvent event) {
    if (Thread.currentThread() instanceof ScriptThread thread) {
      thread.last = event;
    }
  }

  /**
   * Where the last statement begun stands; {@link Site#NONE} before the first one, and when there
   * is no memory left to find out. May be asked from any thread.
   */
  Site lastSite() {
    ExecutionEvent event = last;
    try {
      return event == null ? Site.NONE : site(event.getLocation());
    } catch (PolyglotException | OutOfMemoryError e) {
      return Site.NONE;
    }
  }

  static Site site(SourceSection section) {
    return section == null || !section.isAvailable()
        ? Site.NONE
        : new Site(section.getStartLine(), section.getStartColumn());
  }
}
