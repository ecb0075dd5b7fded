package facetwright.script.sandbox;

import java.io.Serializable;
import java.time.Duration;

/**
 * What one run of a script may take. Time is processor time of the run; a run on a busy machine is
 * given {@link #PATIENCE} times as long by the clock.
 *
 * @param script time for the script's own work
 * @param host time for the work its calls ask for
 * @param bytes memory the script may ask for in all, in bytes, whether or not it is let go again
 */
public record Budget(Duration script, Duration host, long bytes) implements Serializable {
  /**
   * How much longer than the processor time a run may take by the clock. A script can't wait for
   * anything, so only a busy machine makes it late; the bound is there for one that gives it next
   * to nothing.
   */
  public static final int PATIENCE = 25;

  /** What reading a letter takes at most, the first time, when nothing is compiled yet. */
  private static final long NANOS_A_LETTER = 15_000;

  /** Generous for a design on a slow or busy machine, short for a runaway. */
  public static final Budget USUAL =
      new Budget(Duration.ofMillis(1500), Duration.ofSeconds(20), 256L << 20);

  /**
   * @throws IllegalArgumentException when a bound is not over 0
   */
  public Budget {
    if (!script.isPositive() || !host.isPositive() || bytes <= 0) {
      throw new IllegalArgumentException("a budget's bounds must be over 0");
    }
  }

  /** The same with the time added that it takes to read a script of so many letters. */
  Budget reading(int letters) {
    return new Budget(script.plusNanos(letters * NANOS_A_LETTER), host, bytes);
  }
}
