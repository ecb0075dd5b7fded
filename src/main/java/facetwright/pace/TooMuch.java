package facetwright.pace;

/** Work came to its bound; the message names what there is too much of and what to do. */
public final class TooMuch extends RuntimeException {
  private static final long serialVersionUID = 1L;

  TooMuch(String message) {
    super(message);
  }
}
