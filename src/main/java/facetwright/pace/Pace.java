package facetwright.pace;

/**
 * How a piece of long work goes. The work itself only says {@link #step} in its loops and {@link
 * #doing} as it begins something; it need not be handed the pace, which is bound to the work for as
 * long as it runs. Where work runs outside of any pace, both do nothing.
 *
 * <p>Stopping is cooperative: work ends at its next step. It does not end what never steps.
 */
public final class Pace {
  /** A paper takes at most so many steps: a minute or two on a usual machine. */
  public static final long MOST = 100_000_000;

  private static final ScopedValue<Pace> NOW = ScopedValue.newInstance();

  private final long most;
  private volatile long steps;
  private volatile boolean isStopped;
  private volatile String doing = "";

  /** Work of no more than the usual bound. */
  public Pace() {
    this(MOST);
  }

  /**
   * @param most steps it may take, over 0
   */
  public Pace(long most) {
    if (most < 1) {
      throw new IllegalArgumentException("work takes 1 step or more, not " + most);
    }
    this.most = most;
  }

  /**
   * Does the work on this thread.
   *
   * @throws Stopped where it was asked to stop
   * @throws TooMuch where it came to its bound, or to the end of memory
   */
  public <R, X extends Throwable> R of(ScopedValue.CallableOp<? extends R, X> work) throws X {
    try {
      return ScopedValue.where(NOW, this).<R, X>call(work);
    } catch (OutOfMemoryError | StackOverflowError e) {
      throw tooMuch(" takes more memory than there is.");
    }
  }

  /** Asks the work to stop; from any thread. */
  public void stop() {
    isStopped = true;
  }

  /** What the work does now, such as "laying copies on the sheet"; empty where it did not say. */
  public String doing() {
    return doing;
  }

  /** How much of its bound the work has used, 0 to 1. */
  public double part() {
    return Math.min(1, steps / (double) most);
  }

  /** How many steps the work has taken. Tests watch by it. */
  public long steps() {
    return steps;
  }

  /** Says what the work under way does from here on, for who watches, and as what was too much. */
  public static void doing(String what) {
    if (NOW.isBound()) {
      NOW.get().doing = what;
      step(1);
    }
  }

  /** One step of the work under way. */
  public static void step() {
    step(1);
  }

  /**
   * Some steps of the work under way.
   *
   * @param count 0 or more
   */
  public static void step(long count) {
    if (NOW.isBound()) {
      NOW.get().count(count);
    }
  }

  // Only the thread of the work writes; others only read.
  @SuppressWarnings("NonAtomicVolatileUpdate")
  private void count(long count) {
    if (isStopped) {
      throw new Stopped();
    }
    steps += count;
    if (steps > most) {
      throw tooMuch(" is more work than one paper may take.");
    }
  }

  private TooMuch tooMuch(String how) {
    String what = doing;
    return new TooMuch(
        (what.isEmpty() ? "This" : Character.toUpperCase(what.charAt(0)) + what.substring(1))
            + how
            + " Fewer openings, panels or pieces take less.");
  }
}
