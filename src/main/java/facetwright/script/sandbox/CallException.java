package facetwright.script.sandbox;

/**
 * A call that the script got wrong, in a maker's words. Thrown by host functions; the script sees
 * an ordinary error with the same message.
 */
public final class CallException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String fix;

  /**
   * @param message what is wrong
   * @param fix what to do about it, or empty
   */
  public CallException(String message, String fix) {
    super(message);
    this.fix = fix;
  }

  public CallException(String message) {
    this(message, "");
  }

  /** What to do about it, or empty. */
  public String fix() {
    return fix;
  }
}
