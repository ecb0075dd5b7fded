package facetwright.script.sandbox;

import facetwright.net.Mend;
import java.util.List;

/**
 * A call that the script got wrong, in a maker's words. Thrown by host functions; the script sees
 * an ordinary error with the same message.
 */
public final class CallException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String fix;
  private final List<Mend> mends;

  /**
   * @param message what is wrong
   * @param fix what to do about it, or empty
   */
  public CallException(String message, String fix) {
    this(message, fix, List.of());
  }

  /**
   * @param message what is wrong
   * @param fix what to do about it, or empty
   * @param mends changes of the script's text that would put it right
   */
  public CallException(String message, String fix, List<Mend> mends) {
    super(message);
    this.fix = fix;
    this.mends = List.copyOf(mends);
  }

  public CallException(String message) {
    this(message, "");
  }

  /** What to do about it, or empty. */
  public String fix() {
    return fix;
  }

  /** Changes of the script's text that would put it right; often none. */
  public List<Mend> mends() {
    return mends;
  }
}
