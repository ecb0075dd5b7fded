package facetwright.workbench.file;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** A keeper for whom time passes when a test says so. */
public final class HeldKeeper implements Keeper {
  private final List<Runnable> waiting = new ArrayList<>();

  @Override
  public synchronized void now(Runnable work) {
    work.run();
  }

  @Override
  public synchronized void after(Duration time, Runnable work) {
    waiting.add(work);
  }

  @Override
  public void end() {}

  /** What waits is done. */
  public synchronized void pass() {
    List<Runnable> due = List.copyOf(waiting);
    waiting.clear();
    due.forEach(Runnable::run);
  }

  /** How much waits. */
  synchronized int waiting() {
    return waiting.size();
  }
}
