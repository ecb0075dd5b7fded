package facetwright.pace;

/** Work ended because it was asked to. */
public final class Stopped extends RuntimeException {
  private static final long serialVersionUID = 1L;

  Stopped() {
    super("stopped", null, false, false);
  }
}
