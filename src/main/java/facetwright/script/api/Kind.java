package facetwright.script.api;

import org.graalvm.polyglot.Value;

/**
 * A kind of value that a function takes.
 *
 * @param <T> what the value is read as
 */
public interface Kind<T> {

  /**
   * Reads a script's value.
   *
   * @throws Unfit when the value is not of this kind or out of its range
   */
  T read(Value value, Session session) throws Unfit;

  /** What is wanted, range included, such as "a whole number from 3 to 64". */
  String wanted();

  /** A value that is not what is wanted; {@code got} quotes it and says what is wrong. */
  final class Unfit extends Exception {
    private static final long serialVersionUID = 1L;

    public Unfit(String got) {
      super(got);
    }
  }
}
