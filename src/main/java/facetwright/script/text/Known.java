package facetwright.script.text;

import java.util.LinkedHashMap;
import java.util.SequencedMap;
import java.util.function.Function;

/**
 * What is read of scripts without running them, kept for those asked of last: one script is
 * evaluated again for every turn of a dial. May be asked from any thread.
 *
 * @param <T> what is read; it has to be immutable
 */
public final class Known<T> {
  /** Scripts kept. */
  private static final int MOST = 16;

  private final Function<String, T> read;
  private final SequencedMap<String, T> known = new LinkedHashMap<>(MOST, 0.75f, true);

  /**
   * @param read gives it for a script's text, the same each time
   */
  public Known(Function<String, T> read) {
    this.read = read;
  }

  /** What is read of a script. */
  public T of(String script) {
    synchronized (known) {
      T before = known.get(script);
      if (before != null) {
        return before;
      }
      T now = read.apply(script);
      known.put(script, now);
      if (known.size() > MOST) {
        known.pollFirstEntry();
      }
      return now;
    }
  }
}
