package facetwright.export.file;

import java.util.concurrent.locks.ReentrantLock;

/**
 * Lets what has begun be finished before the process ends, when that is asked to, as by Ctrl+C. It
 * does nothing against one that is killed.
 */
final class Ending {
  private static final ReentrantLock BUSY = new ReentrantLock();

  static {
    Runtime.getRuntime().addShutdownHook(new Thread(BUSY::lock, "facetwright-ending"));
  }

  private Ending() {}

  static void wait(Runnable work) {
    BUSY.lock();
    try {
      work.run();
    } finally {
      BUSY.unlock();
    }
  }
}
